-- When an entry reached the installation; null for entries from before, which were logged as they were done.
alter table stage_entry add column received_at timestamp with time zone;

-- Entries that were sent with a key of their own, so that one sent twice is logged once.
create sequence receipt_seq increment by 50;
create table receipt (
  id bigint primary key,
  version bigint not null,
  account varchar(60) not null,
  entry_key varchar(36) not null,
  piece_id bigint not null references piece,
  content varchar(64) not null,
  entry_ordinal integer not null,
  received_at timestamp with time zone not null,
  unique (account, entry_key)
);

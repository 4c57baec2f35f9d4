-- Deliveries of sheet, and which piece was cut of which. A build that records none works as before.

create sequence batch_seq increment by 50;
create table batch (
  id bigint primary key,
  version bigint not null,
  build_id bigint not null references build,
  mark varchar(40) not null,
  alloy varchar(60) not null,
  temper varchar(30) not null,
  thickness varchar(30) not null,
  thickness_mm double precision not null,
  heat_number varchar(60) not null,
  certificate varchar(120) not null,
  supplier varchar(120) not null,
  sheet_width_mm varchar(30),
  sheet_length_mm varchar(30),
  sheets integer,
  received_on date not null,
  place varchar(120) not null,
  note varchar(2000) not null,
  condition varchar(20) not null,
  unique (build_id, mark)
);

-- Who did what to a batch, in order; rows are added and never taken away.
create sequence batch_change_seq increment by 50;
create table batch_change (
  id bigint primary key,
  version bigint not null,
  batch_id bigint not null references batch,
  ordinal integer not null,
  condition varchar(20) not null,
  who varchar(60) not null,
  done_at timestamp with time zone not null,
  words varchar(2000) not null,
  unique (batch_id, ordinal)
);

alter table piece add column batch_id bigint references batch;
create index piece_batch on piece (batch_id);
alter table stage_entry add column batch_id bigint references batch;
-- A finished cut may tell of its batch and of a damaged block at once.
alter table stage_entry alter column said set data type varchar(1000);

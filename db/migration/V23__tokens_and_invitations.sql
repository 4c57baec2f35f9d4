-- What lets a program in under somebody's name; only the digest of the token is kept.
create sequence access_token_seq increment by 50;
create table access_token (
  id bigint primary key,
  version bigint not null,
  account_id bigint not null references account,
  name varchar(60) not null,
  digest varchar(64) not null unique,
  may_change boolean not null,
  made_at timestamp with time zone not null,
  expires_at timestamp with time zone not null,
  last_used_at timestamp with time zone,
  ended_at timestamp with time zone
);
create index access_token_account on access_token (account_id);

-- A link by which somebody makes an account of their own, once.
create sequence invitation_seq increment by 50;
create table invitation (
  id bigint primary key,
  version bigint not null,
  digest varchar(64) not null unique,
  role varchar(20) not null,
  made_by varchar(60) not null,
  made_at timestamp with time zone not null,
  expires_at timestamp with time zone not null,
  used_at timestamp with time zone,
  used_by varchar(60),
  ended_at timestamp with time zone
);

-- Block sets and their blocks. A part names its set by a code that the register file carries, so a set is found by build and code.

create sequence block_set_seq increment by 50;
create table block_set (
  id bigint primary key,
  version bigint not null,
  build_id bigint not null references build,
  code varchar(60) not null,
  hand varchar(20),
  pin_mm double precision,
  place varchar(120) not null,
  note varchar(2000) not null,
  unique (build_id, code)
);

create sequence block_seq increment by 50;
create table block (
  id bigint primary key,
  version bigint not null,
  block_set_id bigint not null references block_set,
  kind varchar(20) not null,
  forming_stage integer not null,
  material varchar(120) not null,
  place varchar(120) not null,
  condition varchar(20) not null
);
create index block_of_set on block (block_set_id);

-- Who brought a block into which condition, in order; rows are added and never taken away.
create sequence block_change_seq increment by 50;
create table block_change (
  id bigint primary key,
  version bigint not null,
  block_id bigint not null references block,
  ordinal integer not null,
  became varchar(20) not null,
  who varchar(60) not null,
  done_at timestamp with time zone not null,
  why varchar(2000) not null,
  unique (block_id, ordinal)
);

-- A set for every code that parts name already. Each takes a whole step of the sequence, so that
-- what Hibernate numbers next lies beyond.
insert into block_set (id, version, build_id, code, place, note)
select nextval('block_set_seq'), 0, named.build_id, named.code, '', ''
from (select distinct build_id, block_set as code from part where trim(block_set) <> '') named;

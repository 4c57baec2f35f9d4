-- Which frame the jig needs first, and jobs of the bench that somebody has passed on for today.
alter table frame add column jig_order integer;

create sequence pass_on_seq increment by 50;
create table pass_on (
  id bigint primary key,
  version bigint not null,
  build_id bigint not null references build,
  part_id bigint not null references part on delete cascade,
  piece_number integer not null,
  log_lines integer,
  who varchar(60) not null,
  reason varchar(200) not null,
  passed_at timestamp with time zone not null,
  unique (part_id, who)
);
create index pass_on_build on pass_on (build_id);

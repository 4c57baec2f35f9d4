-- When a piece was quenched, how long it lay in the freezer, and whether the lead let it be formed too late.
create sequence quench_seq increment by 50;
create table quench (
  id bigint primary key,
  version bigint not null,
  piece_id bigint not null references piece,
  build_id bigint not null references build,
  alloy varchar(60) not null,
  quenched_at timestamp with time zone not null,
  told_by varchar(60) not null,
  told_at timestamp with time zone not null,
  received_at timestamp with time zone not null,
  note varchar(2000) not null,
  log_line integer not null,
  taken_back boolean not null,
  late_at timestamp with time zone,
  late_by varchar(60),
  late_why varchar(2000),
  late_received_at timestamp with time zone
);
create index quench_piece on quench (piece_id);
create index quench_build on quench (build_id);

create sequence cold_stay_seq increment by 50;
create table cold_stay (
  id bigint primary key,
  version bigint not null,
  quench_id bigint not null references quench,
  celsius double precision not null,
  in_at timestamp with time zone not null,
  in_by varchar(60) not null,
  in_received_at timestamp with time zone not null,
  in_note varchar(2000) not null,
  out_at timestamp with time zone,
  out_by varchar(60),
  out_received_at timestamp with time zone,
  out_note varchar(2000)
);
create index cold_stay_quench on cold_stay (quench_id);

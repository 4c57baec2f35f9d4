-- Gauge readings taken on a piece, as they were written, with what the calculation told from them.
create sequence gauge_reading_seq increment by 50;
create table gauge_reading (
  id bigint primary key,
  version bigint not null,
  piece_id bigint not null references piece,
  stage_code varchar(40),
  flange varchar(40) not null,
  gauge varchar(20) not null,
  at_station varchar(30) not null,
  from_station varchar(30) not null,
  to_station varchar(30) not null,
  gap_at varchar(20) not null,
  web_depth_mm varchar(30) not null,
  other_flange varchar(10) not null,
  width_mm varchar(30) not null,
  reading varchar(30) not null,
  answer varchar(300) not null,
  edge_error varchar(20) not null,
  strain double precision not null,
  millimetres double precision not null,
  passes integer not null,
  first_station integer not null,
  last_station integer not null,
  model_version integer not null,
  who varchar(60) not null,
  read_at timestamp with time zone not null
);
create index gauge_reading_piece on gauge_reading (piece_id);

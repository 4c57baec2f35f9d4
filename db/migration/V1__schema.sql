-- One schema for both engines. Sequences step by 50 so that Hibernate can insert in batches.

create sequence account_seq increment by 50;
create table account (
  id bigint primary key,
  version bigint not null,
  username varchar(60) not null unique,
  role varchar(20) not null,
  password_hash varchar(300) not null,
  enabled boolean not null,
  created_at timestamp with time zone not null
);

create sequence build_seq increment by 50;
create table build (
  id bigint primary key,
  version bigint not null,
  name varchar(120) not null unique,
  note varchar(2000) not null,
  register_style varchar(40) not null,
  contours_style varchar(40) not null,
  created_at timestamp with time zone not null
);

create sequence frame_seq increment by 50;
create table frame (
  id bigint primary key,
  version bigint not null,
  build_id bigint not null references build,
  code varchar(40) not null,
  position_mm varchar(30) not null,
  unique (build_id, code)
);

create sequence part_seq increment by 50;
create table part (
  id bigint primary key,
  version bigint not null,
  build_id bigint not null references build,
  frame_id bigint not null references frame,
  part_number varchar(60) not null,
  segment varchar(60) not null,
  hand varchar(10) not null,
  drawing varchar(60) not null,
  drawing_issue varchar(30) not null,
  alloy varchar(60) not null,
  temper varchar(30) not null,
  thickness varchar(30) not null,
  inside_bend_radius_mm varchar(30) not null,
  block_set varchar(60) not null,
  figures_version integer not null,
  figures_problem varchar(500),
  blank_area_mm2 double precision,
  blank_length_mm double precision,
  blank_breadth_mm double precision,
  blank_mass_kg double precision,
  risk_mode varchar(20),
  risk_level varchar(20),
  risk_utilisation double precision,
  unique (build_id, part_number)
);
create index part_frame on part (frame_id);

create sequence flange_seq increment by 50;
create table flange (
  id bigint primary key,
  version bigint not null,
  part_id bigint not null references part,
  name varchar(40) not null,
  kind varchar(10) not null,
  finished_width_mm varchar(30) not null,
  working_width_mm varchar(30) not null,
  edge_condition varchar(30) not null,
  register_order integer not null,
  contour_order integer not null,
  stations varchar(200000) not null,
  peak_edge_strain double precision,
  peak_station integer,
  gather_mm double precision,
  contour_length_mm double precision,
  ruffle_ratio double precision,
  split_utilisation double precision,
  passes integer,
  sketch varchar(2000) not null,
  unique (part_id, name)
);

create sequence route_stage_seq increment by 50;
create table route_stage (
  id bigint primary key,
  version bigint not null,
  build_id bigint not null references build,
  seq integer not null,
  code varchar(40) not null,
  name varchar(80) not null,
  kind varchar(20) not null,
  hold_check varchar(300),
  flanges_needed integer not null,
  unique (build_id, code)
);

create sequence piece_seq increment by 50;
create table piece (
  id bigint primary key,
  version bigint not null,
  part_id bigint not null references part,
  build_id bigint not null references build,
  number integer not null,
  state varchar(20) not null,
  stages_done integer not null,
  stages_total integer not null,
  current_stage_code varchar(40),
  current_stage_name varchar(80),
  current_stage_begun boolean not null,
  held boolean not null,
  created_at timestamp with time zone not null,
  created_by varchar(60) not null,
  unique (part_id, number)
);
create index piece_build on piece (build_id);

create sequence piece_stage_seq increment by 50;
create table piece_stage (
  id bigint primary key,
  version bigint not null,
  piece_id bigint not null references piece,
  seq integer not null,
  code varchar(40) not null,
  name varchar(80) not null,
  kind varchar(20) not null,
  hold_check varchar(300),
  started_at timestamp with time zone,
  started_by varchar(60),
  checked_at timestamp with time zone,
  checked_by varchar(60),
  finished_at timestamp with time zone,
  finished_by varchar(60),
  hours double precision,
  unique (piece_id, code)
);

-- What happened to a piece, in order; rows are added and never taken away.
create sequence stage_entry_seq increment by 50;
create table stage_entry (
  id bigint primary key,
  version bigint not null,
  piece_id bigint not null references piece,
  ordinal integer not null,
  stage_code varchar(40) not null,
  stage_name varchar(80) not null,
  action varchar(20) not null,
  who varchar(60) not null,
  done_at timestamp with time zone not null,
  hours double precision,
  note varchar(2000) not null,
  undone boolean not null,
  unique (piece_id, ordinal)
);

create sequence scrap_cause_seq start with 1001 increment by 50;
create table scrap_cause (
  id bigint primary key,
  version bigint not null,
  seq integer not null,
  code varchar(60) not null unique,
  name varchar(120) not null,
  usual_reason varchar(500) not null,
  prevention varchar(500) not null,
  source varchar(300) not null,
  retired boolean not null
);

create sequence inspection_seq increment by 50;
create table inspection (
  id bigint primary key,
  version bigint not null,
  piece_id bigint not null references piece,
  build_id bigint not null references build,
  outcome varchar(20) not null,
  stage_code varchar(40),
  stage_name varchar(80),
  cause_id bigint references scrap_cause,
  note varchar(2000) not null,
  who varchar(60) not null,
  done_at timestamp with time zone not null
);
create index inspection_build on inspection (build_id);

-- Spring Session's own tables, as its schema files give them, in types that both engines know.
create table spring_session (
  primary_id char(36) not null primary key,
  session_id char(36) not null,
  creation_time bigint not null,
  last_access_time bigint not null,
  max_inactive_interval int not null,
  expiry_time bigint not null,
  principal_name varchar(100)
);
create unique index spring_session_ix1 on spring_session (session_id);
create index spring_session_ix2 on spring_session (expiry_time);
create index spring_session_ix3 on spring_session (principal_name);
create table spring_session_attributes (
  session_primary_id char(36) not null,
  attribute_name varchar(200) not null,
  attribute_bytes bytea not null,
  primary key (session_primary_id, attribute_name),
  foreign key (session_primary_id) references spring_session (primary_id) on delete cascade
);

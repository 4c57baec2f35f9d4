-- Values a build brings along itself: metals by certificate, and shop values in place of the defaults.
-- And the tables for further shipped rows, which the next migration fills.

-- One certificate's values for an alloy and temper. A row is never changed or deleted: a change
-- withdraws it and enters another. Without thicknesses it is for any.
create sequence own_metal_seq increment by 50;
create table own_metal (
  id bigint primary key,
  version bigint not null,
  build_id bigint not null references build,
  alloy varchar(60) not null,
  temper varchar(30) not null,
  from_thickness_mm double precision,
  to_thickness_mm double precision,
  certificate varchar(300) not null,
  density_kg_m3 double precision,
  young_mpa double precision,
  proof_mpa double precision,
  uts_mpa double precision,
  elongation_percent double precision,
  uniform_strain double precision,
  anisotropy double precision,
  min_bend_ratio double precision,
  entered_by varchar(60) not null,
  entered_at timestamp with time zone not null,
  withdrawn_by varchar(60),
  withdrawn_at timestamp with time zone
);
create index own_metal_build on own_metal (build_id);

-- What a build uses in place of a shop default: the latest row of a name counts, one without an
-- amount goes back to the default. Rows are added and never taken away.
create sequence shop_value_entry_seq increment by 50;
create table shop_value_entry (
  id bigint primary key,
  version bigint not null,
  build_id bigint not null references build,
  name varchar(40) not null,
  ordinal integer not null,
  amount double precision,
  source varchar(300) not null,
  reason varchar(500) not null,
  entered_by varchar(60) not null,
  entered_at timestamp with time zone not null,
  unique (build_id, name, ordinal)
);

-- Shipped rows. Each names its source; known_by says whether it was read, recalled or computed.
create table heat_treatment (
  id integer primary key,
  alloys varchar(80) not null,
  step varchar(80) not null,
  applies_to varchar(80),
  low double precision,
  high double precision,
  unit varchar(30),
  source varchar(600) not null,
  known_by varchar(300) not null,
  note varchar(1500)
);
create table hardening (
  id integer primary key,
  alloy varchar(60) not null,
  temper varchar(30) not null,
  proof_typ_mpa double precision not null,
  uts_typ_mpa double precision not null,
  n_value double precision not null,
  k_mpa double precision not null,
  uts_check_mpa double precision not null,
  source varchar(600) not null,
  known_by varchar(300) not null
);
create table sheet_tolerance (
  id integer primary key,
  standard varchar(60) not null,
  alloy_group varchar(10) not null,
  thk_over_mm double precision,
  thk_upto_mm double precision,
  width varchar(40),
  tolerance_mm double precision,
  source varchar(600) not null,
  known_by varchar(300) not null,
  note varchar(1500)
);

-- Several routes for a build, in versions; checks at their stages; clearances of people; pairs.

-- What each account is cleared for. Accounts that are there keep what they could do.
create table account_clearance (
  account_id bigint not null references account,
  clearance varchar(20) not null,
  primary key (account_id, clearance)
);
insert into account_clearance (account_id, clearance)
select a.id, c.clearance
from account a
join (values
  ('LEAD', 'CUT'), ('LEAD', 'FORM_SHRINK'), ('LEAD', 'FORM_STRETCH'), ('LEAD', 'HEAT_TREAT'),
  ('LEAD', 'INSPECT'), ('LEAD', 'MANAGE'),
  ('FITTER', 'CUT'), ('FITTER', 'FORM_SHRINK'), ('FITTER', 'FORM_STRETCH'), ('FITTER', 'HEAT_TREAT'),
  ('VOLUNTEER', 'CUT'), ('VOLUNTEER', 'FORM_SHRINK'), ('VOLUNTEER', 'FORM_STRETCH'),
  ('INSPECTOR', 'INSPECT'),
  ('MANAGER', 'MANAGE')
) as c (role, clearance) on c.role = a.role;

-- A row is one version of a route. This migration gives the ids below 9900.
create sequence route_seq start with 10001 increment by 50;
create table route (
  id bigint primary key,
  version bigint not null,
  build_id bigint not null references build,
  name varchar(60) not null,
  number integer not null,
  state varchar(20) not null,
  based_on_id bigint references route,
  changes integer not null,
  made_at timestamp with time zone not null,
  made_by varchar(60) not null,
  unique (build_id, name, number)
);

-- Which route is taken by the parts of a nature, or by one part.
create sequence route_choice_seq start with 10001 increment by 50;
create table route_choice (
  id bigint primary key,
  version bigint not null,
  build_id bigint not null references build,
  nature varchar(20),
  part_id bigint references part on delete cascade,
  route_name varchar(60) not null,
  unique (build_id, nature),
  unique (part_id)
);

-- A stage belongs to a version of a route, and through it to the build.
alter table route_stage rename to stage_of_build;
create table route_stage (
  id bigint primary key,
  version bigint not null,
  route_id bigint not null references route,
  seq integer not null,
  code varchar(40) not null,
  name varchar(80) not null,
  kind varchar(20) not null,
  hold_check varchar(300),
  flanges_needed integer not null,
  clearance varchar(20),
  expected_minutes integer,
  alongside boolean not null,
  needs_block varchar(20),
  block_stage integer,
  unique (route_id, code)
);

create sequence stage_check_seq start with 10001 increment by 50;
create table stage_check (
  id bigint primary key,
  version bigint not null,
  stage_id bigint not null references route_stage,
  seq integer not null,
  code varchar(40) not null,
  question varchar(200) not null,
  kind varchar(20) not null,
  unit varchar(20) not null,
  nominal double precision,
  tolerance_from double precision,
  tolerance_to double precision,
  unique (stage_id, code)
);

create sequence piece_check_seq increment by 50;
create table piece_check (
  id bigint primary key,
  version bigint not null,
  stage_id bigint not null references piece_stage,
  seq integer not null,
  code varchar(40) not null,
  question varchar(200) not null,
  kind varchar(20) not null,
  unit varchar(20) not null,
  nominal double precision,
  tolerance_from double precision,
  tolerance_to double precision,
  answered_yes boolean,
  answered_number double precision,
  answered_at timestamp with time zone,
  answered_by varchar(60),
  passed_at timestamp with time zone,
  passed_by varchar(60),
  unique (stage_id, code)
);

-- What was there before asks for no clearance.
alter table piece_stage add column clearance varchar(20);
alter table piece_stage add column expected_minutes integer;
alter table piece_stage add column alongside boolean default false not null;
alter table piece_stage add column needs_block varchar(20);
alter table piece_stage add column block_stage integer;

-- A piece names the version it began on. Those that are there began before there were versions.
alter table piece add column route_id bigint references route;
alter table piece add column twin_id bigint references piece;
alter table piece add column log_lines integer default 0 not null;
update piece set log_lines = (select count(*) from stage_entry e where e.piece_id = piece.id);

alter table stage_entry add column check_code varchar(40);
alter table stage_entry add column said varchar(500);

-- The route that a build has becomes version 1 of its first route.
insert into route (id, version, build_id, name, number, state, changes, made_at, made_by)
select row_number() over (order by b.id), 0, b.id, 'Usual route', 1, 'RELEASED', 0, b.created_at, ''
from build b
where exists (select 1 from stage_of_build s where s.build_id = b.id);
insert into route_stage (id, version, route_id, seq, code, name, kind, hold_check, flanges_needed,
  alongside)
select s.id, s.version, r.id, s.seq, s.code, s.name, s.kind, s.hold_check, s.flanges_needed, false
from stage_of_build s join route r on r.build_id = s.build_id;
drop table stage_of_build;

-- Forming is shrinking or stretching now. In a route the first flange shrinks and the others
-- stretch; on a piece the flange that the part is drawn with decides.
update route_stage set kind = 'FORM_SHRINK'
where kind = 'FORM' and seq = (
  select min(s.seq) from route_stage s
  where s.route_id = route_stage.route_id and s.kind in ('FORM', 'FORM_SHRINK'));
update route_stage set kind = 'FORM_STRETCH' where kind = 'FORM';
update piece_stage set kind = coalesce((
  select min(case when f.kind in ('STRETCH', 'MIXED') then 'FORM_STRETCH' else 'FORM_SHRINK' end)
  from piece p join flange f on f.part_id = p.part_id
  where p.id = piece_stage.piece_id
    and (select count(*) from flange g
         where g.part_id = f.part_id and g.register_order < f.register_order)
      = (select count(*) from piece_stage s
         where s.piece_id = piece_stage.piece_id and s.seq < piece_stage.seq
           and s.kind in ('FORM', 'FORM_SHRINK', 'FORM_STRETCH'))), 'FORM_STRETCH')
where kind = 'FORM';

-- Every build gets the routes that a new build has. Their stages have ids below nought, which no
-- sequence gives out; nobody edits a released stage, so nobody meets them.
insert into route (id, version, build_id, name, number, state, changes, made_at, made_by)
select (select count(*) from route) + row_number() over (order by b.id, t.seq), 0, b.id, t.name, 1,
  'RELEASED', 0, b.created_at, ''
from build b
cross join (values
  (1, 'Plain part'), (2, 'One shrink flange'), (3, 'One stretch flange'), (4, 'Two flanges'),
  (5, 'Heat treated')) as t (seq, name);
insert into route_stage (id, version, route_id, seq, code, name, kind, hold_check,
  flanges_needed, clearance, alongside, needs_block)
select -row_number() over (order by r.id, t.seq), 0, r.id, t.seq, t.code, t.name, t.kind,
  case when t.held = 'edges' then
    'Both faces deburred, edge broken 0.1 to 0.4 mm and polished lengthwise,'
    || ' no nick or scratch across it under a 10x glass' end,
  t.flanges, nullif(t.clearance, ''), false, nullif(t.block, '')
from route r
join (values
  ('Plain part', 1, 'lay-out-and-cut', 'Lay out and cut', 'CUT', '', 0, 'CUT', ''),
  ('Plain part', 2, 'tooling-holes', 'Tooling holes', 'DRILL', '', 0, 'CUT', 'DRILL_TEMPLATE'),
  ('Plain part', 3, 'cutouts', 'Cutouts', 'PIERCE', '', 0, 'CUT', ''),
  ('Plain part', 4, 'edges', 'Edges deburred and polished', 'EDGE', 'edges', 0, '', ''),
  ('Plain part', 5, 'bend', 'Bend the straight flanges', 'SET', '', 1, '', 'FORM_BLOCK'),
  ('Plain part', 6, 'final-trim', 'Final trim', 'TRIM', '', 0, 'CUT', ''),
  ('Plain part', 7, 'inspect', 'Inspect', 'INSPECT', '', 0, 'INSPECT', ''),
  ('Plain part', 8, 'accepted', 'Accepted', 'ACCEPT', '', 0, 'INSPECT', ''),
  ('One shrink flange', 1, 'lay-out-and-cut', 'Lay out and cut', 'CUT', '', 0, 'CUT', ''),
  ('One shrink flange', 2, 'tooling-holes', 'Tooling holes', 'DRILL', '', 0, 'CUT', 'DRILL_TEMPLATE'),
  ('One shrink flange', 3, 'cutouts', 'Cutouts', 'PIERCE', '', 0, 'CUT', ''),
  ('One shrink flange', 4, 'edges', 'Edges deburred and polished', 'EDGE', 'edges', 0, '', ''),
  ('One shrink flange', 5, 'first-flange', 'First flange in passes', 'FORM_SHRINK', '', 1, 'FORM_SHRINK', 'FORM_BLOCK'),
  ('One shrink flange', 6, 'trim-to-working-width', 'Trim to working width', 'TRIM', '', 1, 'CUT', ''),
  ('One shrink flange', 7, 'set-to-template', 'Set to template', 'SET', '', 0, '', 'FORM_BLOCK'),
  ('One shrink flange', 8, 'final-trim', 'Final trim', 'TRIM', '', 0, 'CUT', ''),
  ('One shrink flange', 9, 'inspect', 'Inspect', 'INSPECT', '', 0, 'INSPECT', ''),
  ('One shrink flange', 10, 'accepted', 'Accepted', 'ACCEPT', '', 0, 'INSPECT', ''),
  ('One stretch flange', 1, 'lay-out-and-cut', 'Lay out and cut', 'CUT', '', 0, 'CUT', ''),
  ('One stretch flange', 2, 'tooling-holes', 'Tooling holes', 'DRILL', '', 0, 'CUT', 'DRILL_TEMPLATE'),
  ('One stretch flange', 3, 'cutouts', 'Cutouts', 'PIERCE', '', 0, 'CUT', ''),
  ('One stretch flange', 4, 'edges', 'Edges deburred and polished', 'EDGE', 'edges', 0, '', ''),
  ('One stretch flange', 5, 'first-flange', 'First flange in passes', 'FORM_STRETCH', '', 1, 'FORM_STRETCH', 'FORM_BLOCK'),
  ('One stretch flange', 6, 'trim-to-working-width', 'Trim to working width', 'TRIM', '', 1, 'CUT', ''),
  ('One stretch flange', 7, 'set-to-template', 'Set to template', 'SET', '', 0, '', 'FORM_BLOCK'),
  ('One stretch flange', 8, 'final-trim', 'Final trim', 'TRIM', '', 0, 'CUT', ''),
  ('One stretch flange', 9, 'inspect', 'Inspect', 'INSPECT', '', 0, 'INSPECT', ''),
  ('One stretch flange', 10, 'accepted', 'Accepted', 'ACCEPT', '', 0, 'INSPECT', ''),
  ('Two flanges', 1, 'lay-out-and-cut', 'Lay out and cut', 'CUT', '', 0, 'CUT', ''),
  ('Two flanges', 2, 'tooling-holes', 'Tooling holes', 'DRILL', '', 0, 'CUT', 'DRILL_TEMPLATE'),
  ('Two flanges', 3, 'cutouts', 'Cutouts', 'PIERCE', '', 0, 'CUT', ''),
  ('Two flanges', 4, 'edges', 'Edges deburred and polished', 'EDGE', 'edges', 0, '', ''),
  ('Two flanges', 5, 'first-flange', 'First flange in passes', 'FORM_SHRINK', '', 1, 'FORM_SHRINK', 'FORM_BLOCK'),
  ('Two flanges', 6, 'trim-to-working-width', 'Trim to working width', 'TRIM', '', 1, 'CUT', ''),
  ('Two flanges', 7, 'second-flange', 'Second flange', 'FORM_STRETCH', '', 2, 'FORM_STRETCH', 'FORM_BLOCK'),
  ('Two flanges', 8, 'set-to-template', 'Set to template', 'SET', '', 0, '', 'FORM_BLOCK'),
  ('Two flanges', 9, 'final-trim', 'Final trim', 'TRIM', '', 0, 'CUT', ''),
  ('Two flanges', 10, 'inspect', 'Inspect', 'INSPECT', '', 0, 'INSPECT', ''),
  ('Two flanges', 11, 'accepted', 'Accepted', 'ACCEPT', '', 0, 'INSPECT', ''),
  ('Heat treated', 1, 'lay-out-and-cut', 'Lay out and cut', 'CUT', '', 0, 'CUT', ''),
  ('Heat treated', 2, 'tooling-holes', 'Tooling holes', 'DRILL', '', 0, 'CUT', 'DRILL_TEMPLATE'),
  ('Heat treated', 3, 'cutouts', 'Cutouts', 'PIERCE', '', 0, 'CUT', ''),
  ('Heat treated', 4, 'edges', 'Edges deburred and polished', 'EDGE', 'edges', 0, '', ''),
  ('Heat treated', 5, 'first-flange', 'First flange in passes', 'FORM_SHRINK', '', 1, 'FORM_SHRINK', 'FORM_BLOCK'),
  ('Heat treated', 6, 'trim-to-working-width', 'Trim to working width', 'TRIM', '', 1, 'CUT', ''),
  ('Heat treated', 7, 'second-flange', 'Second flange', 'FORM_STRETCH', '', 2, 'FORM_STRETCH', 'FORM_BLOCK'),
  ('Heat treated', 8, 'heat-treat', 'Solution treat and quench', 'HEAT_TREAT', '', 0, 'HEAT_TREAT', ''),
  ('Heat treated', 9, 'set-to-template', 'Set to template', 'SET', '', 0, '', 'FORM_BLOCK'),
  ('Heat treated', 10, 'final-trim', 'Final trim', 'TRIM', '', 0, 'CUT', ''),
  ('Heat treated', 11, 'protect', 'Wash, dry and protect', 'PROTECT', '', 0, '', ''),
  ('Heat treated', 12, 'inspect', 'Inspect', 'INSPECT', '', 0, 'INSPECT', ''),
  ('Heat treated', 13, 'accepted', 'Accepted', 'ACCEPT', '', 0, 'INSPECT', '')
) as t (route, seq, code, name, kind, held, flanges, clearance, block) on t.route = r.name;
insert into stage_check (id, version, stage_id, seq, code, question, kind, unit)
select row_number() over (order by s.id desc), 0, s.id, 1, 'furnace-chart-kept-with-the-piece',
  'Furnace chart kept with the piece', 'YES_NO', ''
from route_stage s
where s.id < 0 and s.code = 'heat-treat';

-- Parts go on taking the route that they took, whatever their nature, until somebody chooses.
insert into route_choice (id, version, build_id, nature, route_name)
select row_number() over (order by b.id, n.nature), 0, b.id, n.nature,
  case when exists (select 1 from route r where r.build_id = b.id and r.name = 'Usual route')
    then 'Usual route' else n.route_name end
from build b
cross join (values
  ('PLAIN', 'Plain part'), ('SHRINK_FLANGE', 'One shrink flange'),
  ('STRETCH_FLANGE', 'One stretch flange'), ('TWO_FLANGES', 'Two flanges'),
  ('HEAT_TREATED', 'Heat treated')) as n (nature, route_name);

-- What is cut out of a part and left round its blank: holes in the web and cutouts of a flange as
-- one text each, a line a hole or cutout, because they are read and replaced whole.

alter table part add column trim_allowance_mm varchar(30) default '0' not null;
alter table part add column holes varchar(100000) default '' not null;
alter table flange add column cutouts varchar(10000) default '' not null;

-- How near a fair curve must come to a flange's stations, mm, as written; without one they are exact.
alter table flange add column fit_tolerance_mm varchar(30);

-- Photos of pieces, inspections and blocks. The bytes stand apart, so that no list reads them.
create sequence photo_seq increment by 50;
create table photo (
  id bigint primary key,
  version bigint not null,
  subject_kind varchar(20) not null,
  subject_id bigint not null,
  build_id bigint not null references build,
  who varchar(60) not null,
  received_at timestamp with time zone not null,
  caption varchar(500) not null,
  width integer not null,
  height integer not null,
  sha256 varchar(64) not null,
  taken_off_at timestamp with time zone,
  taken_off_by varchar(60),
  taken_off_why varchar(500),
  unique (subject_kind, subject_id, sha256)
);

create sequence photo_image_seq increment by 50;
create table photo_image (
  id bigint primary key,
  version bigint not null,
  photo_id bigint not null references photo,
  photo_size varchar(20) not null,
  jpeg bytea not null,
  unique (photo_id, photo_size)
);

-- The photo that answers a check.
alter table piece_check add column answered_photo bigint references photo;

-- A receipt is for whatever was sent with a key of its own: an entry on a piece, on a block, a part
-- to begin a piece of. It names what, and the number of what came of it.
alter table receipt add column subject varchar(60);
alter table receipt add column answer bigint;
update receipt set subject = 'piece ' || piece_id, answer = piece_id;
alter table receipt alter column subject set not null;
alter table receipt alter column answer set not null;
alter table receipt drop column piece_id;
alter table receipt drop column entry_ordinal;

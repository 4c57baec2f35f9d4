-- Every change of every record, in chains: one a build, and one for what belongs to no build. Rows are added and never changed or taken away.

-- Where a chain stands. Whoever writes into it locks its row first, so that entries take turns.
create table journal_head (
  chain varchar(40) primary key,
  entries bigint not null,
  head varchar(64) not null
);

-- An entry is its line, whose bytes are what is hashed. The other columns repeat what is looked for.
create table journal_entry (
  chain varchar(40) not null references journal_head,
  seq bigint not null,
  written_at timestamp with time zone not null,
  who varchar(120) not null,
  part varchar(60),
  line varchar(1000000) not null,
  hash varchar(64) not null,
  primary key (chain, seq)
);
create index journal_entry_part on journal_entry (chain, part, seq);

insert into journal_head (chain, entries, head)
values ('installation', 0, '0000000000000000000000000000000000000000000000000000000000000000');

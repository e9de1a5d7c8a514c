-- One farm to a book. Every key begins with it all the same: the larger stores hold many.
create table farm (
  farm text not null primary key
) strict, without rowid;

-- The text of an entry as it came is the record; the other columns are read from it when it arrives.
create table entry (
  farm text not null references farm (farm),
  seq integer not null check (seq > 0),
  id blob not null check (length(id) = 16),
  kind text not null,
  happened_at text not null,
  noted_at text not null,
  received_at text not null,
  clock_offset_ms integer not null,
  who text not null,
  device text not null,
  origin text not null,
  payload_version integer not null,
  written text not null,
  written_sha256 blob not null check (length(written_sha256) = 32),
  primary key (farm, seq),
  unique (farm, id)
) strict, without rowid;

-- The people behind buyer numbers. The only rows of a book that can be erased.
create table buyer (
  farm text not null references farm (farm),
  buyer text not null,
  name text not null,
  address text not null,
  note text not null,
  primary key (farm, buyer)
) strict, without rowid;

create table setting (
  farm text not null references farm (farm),
  name text not null,
  value text not null,
  primary key (farm, name)
) strict, without rowid;

-- Filled only in a backup: what the copy held when it was made.
create table manifest (
  farm text not null references farm (farm),
  entries integer not null,
  rolling_sha256 blob not null check (length(rolling_sha256) = 32),
  primary key (farm)
) strict, without rowid;

create table manifest_kind (
  farm text not null references manifest (farm),
  kind text not null,
  entries integer not null,
  primary key (farm, kind)
) strict, without rowid;

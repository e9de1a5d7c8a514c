create table farm (
  farm text not null primary key
);
create table entry (
  farm text not null,
  seq integer primary key autoincrement,
  id text not null,
  kind text not null,
  received_at text not null,
  clock_offset_ms integer not null,
  written text not null,
  digest text not null,
  unique (farm, id)
);
create table setting (
  farm text not null,
  name text not null,
  value text not null,
  primary key (farm, name)
);

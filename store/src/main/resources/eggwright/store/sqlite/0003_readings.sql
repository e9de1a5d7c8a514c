-- What sensors read. Not part of the book: dense, kept as it came, never changed. See docs/decisions/0094.
create table reading_channel (
  farm text not null references farm (farm),
  channel integer not null,
  place text not null check (place in ('machine', 'egg_room', 'brooder')),
  machine text not null,
  sensor text not null,
  quantity text not null,
  unit text not null,
  primary key (farm, channel),
  unique (farm, place, machine, sensor, quantity, unit)
) strict, without rowid;

-- One day (UTC) of one channel; its bytes are those of DayCodec, version in the first.
create table reading_day (
  farm text not null,
  channel integer not null,
  day integer not null,
  readings integer not null check (readings > 0),
  first_ms integer not null,
  last_ms integer not null check (last_ms >= first_ms),
  bytes blob not null,
  primary key (farm, channel, day),
  foreign key (farm, channel) references reading_channel (farm, channel)
) strict;

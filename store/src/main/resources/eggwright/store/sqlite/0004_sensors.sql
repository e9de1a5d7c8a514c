-- Sensors that send by themselves. A token is never stored, only its SHA-256. One that was revoked keeps its row, so that
-- whoever still sends under its token can be told so.
create table sensor (
  farm text not null references farm (farm),
  sensor text not null,
  place text not null check (place in ('machine', 'egg_room', 'brooder')),
  machine text not null,
  name text not null,
  quantity text not null,
  unit text not null,
  token_sha256 text not null check (length(token_sha256) = 64),
  added_at text not null,
  revoked_at text,
  primary key (farm, sensor),
  unique (farm, token_sha256)
) strict, without rowid;

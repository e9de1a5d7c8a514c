-- Who may use the desk from elsewhere. A token and a code are never stored, only their SHA-256.
-- A device that was let go keeps its row, so that its name in old entries can be looked up.
create table device (
  farm text not null references farm (farm),
  device text not null,
  name text not null,
  role text not null check (role in ('owner', 'hand', 'looker')),
  came_by text not null check (came_by in ('code', 'passphrase')),
  token_sha256 text not null check (length(token_sha256) = 64),
  joined_at text not null,
  seen_at text not null,
  ends_at text not null,
  let_go_at text,
  primary key (farm, device),
  unique (farm, token_sha256)
) strict, without rowid;

create table joining_code (
  farm text not null references farm (farm),
  code_sha256 text not null check (length(code_sha256) = 64),
  role text not null check (role in ('owner', 'hand', 'looker')),
  made_at text not null,
  ends_at text not null,
  primary key (farm, code_sha256)
) strict, without rowid;

-- Of the owner; the hash carries its own salt and cost.
create table passphrase (
  farm text not null references farm (farm),
  hash text not null,
  set_at text not null,
  primary key (farm)
) strict, without rowid;

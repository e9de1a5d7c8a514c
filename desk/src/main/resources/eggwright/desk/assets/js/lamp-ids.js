// Names for entries, made on the phone: UUIDs of version 7 (RFC 9562, section 5.7).

/**
 * @param at milliseconds since 1970, by the phone's clock
 * @param fill fills an array of bytes at random
 */
export function freshId(at, fill = bytes => crypto.getRandomValues(bytes)) {
  const bytes = fill(new Uint8Array(16));
  for (let i = 0; i < 6; i++) bytes[i] = Math.floor(at / 2 ** (8 * (5 - i))) % 256;
  bytes[6] = 0x70 | (bytes[6] & 0x0f);
  bytes[8] = 0x80 | (bytes[8] & 0x3f);
  const hex = [...bytes].map(b => b.toString(16).padStart(2, '0')).join('');
  return [hex.slice(0, 8), hex.slice(8, 12), hex.slice(12, 16), hex.slice(16, 20), hex.slice(20)].join('-');
}

/** An instant with the offset of the place, as the book writes it: 2027-04-12T21:40:05.123-05:00. */
export function withOffset(at, minutesWest = new Date(at).getTimezoneOffset()) {
  const two = n => String(Math.trunc(Math.abs(n))).padStart(2, '0');
  const here = new Date(at - minutesWest * 60000).toISOString().slice(0, -1);
  if (minutesWest === 0) return here + 'Z';
  return here + (minutesWest > 0 ? '-' : '+') + two(minutesWest / 60) + ':' + two(Math.abs(minutesWest) % 60);
}

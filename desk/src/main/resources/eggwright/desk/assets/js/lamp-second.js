// A second look is for somebody else than who looked first, and for whom it was asked. No clock, no storage, no page in here.

/**
 * For whom a second look is.
 *
 * @param second {asked_of?: a person, first: [{who, device}]} as the desk told it
 * @param who holds the phone
 * @param device the phone's own name at the desk
 * @param here {first: who took the usual look on this phone since the desk told, the latest first}
 * @returns {{isTheirs: boolean, why: string, whom: string}} why: the end of a key of words; whom: the person it names
 */
export function secondLook(second, who, device, here = { first: [] }) {
  const asked = second.asked_of ?? null;
  // What was counted here is later than what the desk tells.
  const first = here.first.length > 0 ? here.first : second.first.map(f => f.who);
  const among = person => first.find(f => isSame(f, person));
  const not = (why, whom) => ({ isTheirs: false, why, whom });
  if (asked !== null && among(asked) !== undefined) return not('ofFirst', asked);
  if (asked !== null && !isSame(asked, who)) return not('ofOther', asked);
  if (among(who) !== undefined) return not('youFirst', who);
  if (asked === null && first.length === 0) return not('notYet', '');
  const onThis = here.first[0] ?? second.first.find(f => f.device === device)?.who;
  return { isTheirs: true, why: onThis === undefined ? 'theirs' : 'samePhone', whom: onThis ?? '' };
}

/** A name is typed on each phone anew: capitals make no other person. */
export function isSame(one, other) {
  return one.trim().toLowerCase() === other.trim().toLowerCase();
}

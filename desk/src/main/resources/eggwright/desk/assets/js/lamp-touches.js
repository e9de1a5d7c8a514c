// What the fingers said about one tray. A tray's touches are only ever added to; all that is shown, and all that is
// noted in the book, is folded from them. No clock, no storage, no page in here.

/** In the order of the keys. The rest of the tray is live. */
export const FINDINGS = ['clear', 'blood_ring', 'dead', 'doubtful', 'cracked', 'rot', 'wrong_end_up'];

/** What is usually done with an egg that shows it: out of the tray, or left in. Doubtful eggs are looked at again. */
const USUAL = {
  clear: 'out', blood_ring: 'out', dead: 'out', cracked: 'out', rot: 'out',
  doubtful: 'stays', wrong_end_up: 'stays',
};

/**
 * Folds touches into what they say.
 *
 * A touch is one of
 *   {kind: 'found', finding, pen?, place?}   an egg that shows something
 *   {kind: 'instead', treated}               the last such egg is treated otherwise: 'out', 'stays' or 'open'
 *   {kind: 'good'} {kind: 'out'}             for those who sort later: a live egg; an egg taken out, not sorted
 *   {kind: 'counted', eggs, pen?}            what the tray holds, counted before starting
 *   {kind: 'done'}                           the tray is finished
 *   {kind: 'undo'}                           takes back the last touch that still stands
 *
 * @param sort of the look: one that is blind marks, and takes nothing out
 * @returns {{marks: Array<{finding, treated, pen, place}>, good: number, unsorted: number,
 *            counted: Map<string|null, number>, isDone: boolean, canUndo: boolean, doneAt: ?number}}
 */
export function fold(touches, sort = null) {
  const standing = [];
  for (const touch of touches) {
    if (touch.kind === 'undo') standing.pop();
    else standing.push(touch);
  }
  const said = { marks: [], good: 0, unsorted: 0, counted: new Map(), isDone: false, canUndo: standing.length > 0, doneAt: null };
  for (const touch of standing) {
    switch (touch.kind) {
      case 'found':
        said.marks.push({ finding: touch.finding, treated: sort ? 'stays' : USUAL[touch.finding], pen: touch.pen ?? null, place: touch.place ?? null });
        break;
      case 'instead':
        if (said.marks.length > 0 && !sort) said.marks.at(-1).treated = touch.treated;
        break;
      case 'good': said.good += 1; break;
      case 'out': said.unsorted += 1; break;
      case 'counted': said.counted.set(touch.pen ?? null, touch.eggs); break;
      case 'done': said.isDone = true; said.doneAt = touch.at ?? null; break;
    }
  }
  return said;
}

/** Whether a second look is one, and of two usual looks both are: they are never taken for one another. */
export function isSameLook(one, other) {
  return (one.sort ?? null) === (other.sort ?? null);
}

/** How many eggs show each finding. */
export function counts(said) {
  const found = Object.fromEntries(FINDINGS.map(f => [f, 0]));
  for (const mark of said.marks) found[mark.finding] += 1;
  return found;
}

/** Eggs that left the tray. */
export function takenOut(said) {
  return said.unsorted + said.marks.filter(m => m.treated !== 'stays').length;
}

/**
 * What the tray adds up to.
 *
 * @param held eggs that the book holds in it; null where the book cannot say
 * @returns {{held: ?number, seen: ?number, faulty: number, live: ?number, out: number, left: ?number}} live: not faulty, of
 *     those seen. Whoever touches the good eggs too has seen so many and no more: eggs not looked at are not live.
 */
export function sum(said, held) {
  const before = held === null && said.counted.size === 0 ? null : countedOr(said, held);
  const faulty = said.unsorted + said.marks.filter(m => m.finding !== 'wrong_end_up').length;
  const out = takenOut(said);
  const seen = said.good > 0 ? said.good + said.unsorted + said.marks.length : before;
  return {
    held: before, seen, faulty, live: said.good > 0 ? said.good : before === null ? null : before - faulty,
    out, left: before === null ? null : before - out,
  };
}

function countedOr(said, held) {
  if (said.counted.has(null)) return said.counted.get(null);
  return held;
}

/**
 * Why pens that were said are not counted apart after all; null where they are, or where none was said.
 *
 * @returns {?{key: string, eggs: number}} key: the end of a key of words; eggs: whose pen is missing
 */
export function whyAsOne(said, load) {
  if ((load.pens ?? []).length < 2 || said.marks.every(m => m.pen === null)) return null;
  const eggs = said.good + said.unsorted + said.marks.filter(m => m.pen === null).length;
  if (eggs > 0) return { key: 'penless', eggs };
  return said.counted.has(null) ? { key: 'countedWhole', eggs: 0 } : null;
}

/** Which of the pens the egg at a place is from; -1 where that was not recorded. */
export function penAt(place, pens) {
  const its = pens.findIndex(p => p.places.includes(place));
  if (its >= 0) return its;
  // All others were put down with their places: what lies elsewhere is of the one that was not.
  const rest = pens.filter(p => p.places.length === 0);
  return rest.length === 1 && !rest[0].mark ? pens.indexOf(rest[0]) : -1;
}

/**
 * The payloads of the looks that a finished tray makes: one, or one for each pen where pens can be told apart and every
 * egg that was touched has its pen. Where one has none, all is counted for the tray together: never split by guess.
 *
 * @param load {set, tray, pens: [{pen, eggs?, mark?, places}] where eggs can be told apart}
 * @param minutesOut null where the time out of the heat was not taken
 * @param sort 'second_blind' where the desk asked for a second look; absent otherwise
 */
export function looks(said, load, minutesOut, sort) {
  const scope = { set: load.set, tray: load.tray };
  const each = (load.pens ?? []).length > 1 && said.good === 0 && said.unsorted === 0 && !said.counted.has(null)
    && said.marks.every(m => m.pen !== null);
  if (!each) {
    const all = look({ ...scope }, said.marks, said.counted.get(null), minutesOut, sort);
    all.removed_unsorted = said.unsorted;
    // Whoever touches every egg has looked at so many and no more.
    if (said.good > 0) all.looked_at = said.good + said.unsorted + said.marks.length;
    return [ordered(all)];
  }
  return load.pens.map(p => ordered(look(
    { ...scope, pen: p.pen }, said.marks.filter(m => m.pen === p.pen), said.counted.get(p.pen), minutesOut, sort)));
}

function look(scope, marks, counted, minutesOut, sort) {
  const findings = FINDINGS.map(finding => {
    const those = marks.filter(m => m.finding === finding);
    return {
      finding,
      seen: those.length,
      removed: those.filter(m => m.treated === 'out').length,
      kept_to_open: those.filter(m => m.treated === 'open').length,
    };
  }).filter(f => f.seen > 0);
  const places = marks.filter(m => m.place !== null).map(m => ({ place: m.place, finding: m.finding }));
  const made = { scope, findings, removed_unsorted: 0 };
  if (counted !== undefined) made.counted_before = counted;
  if (minutesOut !== null) made.minutes_out = minutesOut;
  if (places.length > 0) made.places = places;
  if (sort) made.sort = sort;
  return made;
}

/** In the order of the written form, so that two phones write the same look alike. */
function ordered(look) {
  const keys = ['scope', 'looked_at', 'counted_before', 'findings', 'removed_unsorted', 'minutes_out', 'places', 'sort'];
  return Object.fromEntries(keys.filter(k => k in look).map(k => [k, look[k]]));
}

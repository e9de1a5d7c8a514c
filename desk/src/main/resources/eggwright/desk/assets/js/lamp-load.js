// Trays as they are today, also where the desk told of them days ago.

/**
 * A tray as the views need it: as old as it is today, with what is due and what the lamp can say on that day.
 *
 * @param say the words of the page
 * @param told by the desk
 * @param later days since the desk told it
 * @param second for whom the second look is that it wants; null where it wants none
 */
export function loadOf(say, told, later, minutesLimit, second) {
  const day = told.day + later;
  const due = told.looks.some(l => day === l.day) ? 'due'
    : told.looks.some(l => day > l.day && day <= l.last_day) ? 'possible' : 'not_due';
  const { from, dark_from: darkFrom, until } = told.judging;
  const note = day < from ? say('judge.tooEarly', from)
    : day > until ? say('judge.tooLate') : day < darkFrom ? say('judge.paleOnly', darkFrom) : null;
  return {
    set: told.set, tray: told.tray, species: told.species, speciesName: told.species_name, period: told.period,
    machine: told.machine ?? null, section: told.section ?? null, position: told.position ?? null,
    day, eggs: told.eggs ?? null, pens: told.pens.map(p => ({ ...p, places: p.places ?? [] })), doubtful: told.doubtful, rows: told.rows,
    sort: second?.isTheirs ? 'second_blind' : null, second: second === null ? null : say('second.' + second.why, second.whom),
    secondOf: second === null || second.isTheirs ? null : second.why === 'ofOther' ? second.whom : '',
    due: second?.isTheirs ? 'due' : due, note, minutesLimit,
  };
}

/** So many minutes, in the unit that a person would use. */
export function span(say, minutes) {
  const [unit, length] = minutes < 120 ? ['minutes', 1] : minutes < 48 * 60 ? ['hours', 60] : ['days', 24 * 60];
  return say('span.' + unit, Math.round(minutes / length));
}

/** Days since 1970 by the phone's own calendar. */
export function dayNumber(at) {
  const day = new Date(at);
  return Math.round(Date.UTC(day.getFullYear(), day.getMonth(), day.getDate()) / 86400000);
}

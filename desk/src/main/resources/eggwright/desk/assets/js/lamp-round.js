// The round of the day: what was just finished, which tray is next, and all the others.

import { el, fill } from './lamp-dom.js';
import { listenToFingers } from './lamp-keys.js';
import { FINDINGS, counts, sum, whyAsOne } from './lamp-touches.js';
import { where } from './lamp-tray.js';

/** Trays in the order in which they stand on the shelf; those begun first, then those due. */
export function inOrder(loads) {
  const rank = { due: 0, possible: 1, not_due: 2 };
  const natural = new Intl.Collator(undefined, { numeric: true });
  const text = load => [load.machine ?? '', load.section ?? '', load.position ?? '', load.set, load.tray];
  return [...loads].sort((a, b) => rank[a.due] - rank[b.due]
    || text(a).reduce((order, part, i) => order || natural.compare(part, text(b)[i]), 0));
}

const DAY_MS = 24 * 3600 * 1000;

/** One look at one tray on one day: a second look is another than the usual one. */
function nameOf(load) {
  return [load.set, load.tray, load.day, load.sort ?? ''].join('/');
}

export class RoundView {
  #root;
  #say;
  #counting;
  #act;

  /**
   * @param root where it is drawn
   * @param around {say, counting, act: {take(load), undo(id), out(load), send(), save(), letGo(id), setup(), help()}}
   */
  constructor(root, { say, counting, act }) {
    this.#root = root;
    this.#say = say;
    this.#counting = counting;
    this.#act = act;
    listenToFingers(root, key => this.#press(key));
  }

  #at = { loads: [], after: null };

  /**
   * @param now {loads, after: the tray just finished or null, outs: Map of set/tray to instants, waiting: entries only on
   *     this phone, refused: entries, message: what there is to say of the desk, others: who has which tray, link, clock}
   */
  show(now) {
    const say = this.#say;
    const touched = new Map(this.#counting.sittings.map(s => [nameOf(s.load), s.id]).reverse());
    const state = load => {
      const id = touched.get(nameOf(load));
      if (id === undefined) return 'open';
      return this.#counting.said(id).isDone ? 'done' : 'begun';
    };
    const loads = inOrder(now.loads);
    const wanted = loads.filter(l => l.due !== 'not_due');
    const left = wanted.filter(l => state(l) !== 'done');
    // A tray that somebody else has in the hand is not offered, as long as there is another.
    const next = left.find(l => !now.others.some(o => o.set === l.set && o.tray === l.tray)) ?? left[0] ?? null;
    this.#at = { ...now, loads, next };
    // What the desk has taken in is due no more, and still today's work.
    const gone = this.#counting.sittings.filter(s => s.load.due !== 'not_due' && now.at - s.openedAt < DAY_MS
      && new Date(s.openedAt).getDate() === new Date(now.at).getDate() && this.#counting.said(s.id).isDone
      && !wanted.some(l => nameOf(l) === nameOf(s.load)));
    const isDone = wanted.filter(l => state(l) === 'done').length + gone.length;
    const ofAll = wanted.length + gone.length;

    const fresh = el('div');
    fill(fresh,
      el('header', { class: 'top' },
        el('p', {}, say('round.person', now.who)),
        el('button', { type: 'button', class: 'away', 'data-key': 'help' }, say('help.open')),
        el('button', { type: 'button', class: 'away', 'data-key': 'setup' }, say('setup.open'))),
      el('h1', {}, say('round.title')),
      now.after === null ? null : this.#justDone(now.after),
      ...now.refused.map(entry => el('section', { class: 'refused' },
        el('p', {}, say(entry.undone ? 'refused.undoing' : 'refused', entry.tray, entry.reason)),
        entry.undone ? null
          : el('button', { type: 'button', class: 'key small', 'data-key': 'again:' + entry.sitting }, say('refused.again', entry.tray)),
        el('button', { type: 'button', class: 'key small', 'data-key': 'save' }, say('round.save')),
        entry.saved
          ? el('button', { type: 'button', class: 'key small', 'data-key': 'letGo:' + entry.id }, say('refused.letGo')) : null)),
      next === null
        ? el('p', { class: 'nothing' }, ofAll === 0 ? say('round.nothingDue') : say('round.allDone'))
        : el('section', { class: 'next' },
          el('p', { class: 'where' }, where(say, next)),
          el('p', { class: 'number' }, el('span', { class: 'unseen' }, say('tray.word') + ' '), next.tray),
          el('p', {}, next.eggs === null ? say('round.eggsUnknown') : say.many('round.eggs', next.eggs)),
          next.sort ? el('p', {}, say('state.second')) : null,
          next.other === null ? null : el('p', { class: 'note' }, next.other),
          el('button', { type: 'button', class: 'key end done', 'data-key': 'take:' + loads.indexOf(next) },
            say(state(next) === 'begun' ? 'round.goOn' : 'round.take', next.tray))),
      el('p', { class: 'desk', role: 'status' }, deskWords(say, now)),
      now.link === null ? null : el('p', { class: 'note' }, now.link),
      now.clock === null ? null : el('p', { class: 'note' }, now.clock),
      now.waiting > 0
        ? el('p', {}, el('button', { type: 'button', class: 'key small', 'data-key': 'send' }, say('round.send')),
          el('button', { type: 'button', class: 'key small', 'data-key': 'save' }, say('round.save')))
        : null,
      wanted.length === 0 ? null
        : el('section', {}, el('h2', {}, say('round.due', isDone, ofAll)),
          ...this.#shelves(wanted, state, now)),
      loads.length === wanted.length ? null
        : el('details', {}, el('summary', {}, say('round.others', loads.length - wanted.length)),
          ...this.#shelves(loads.filter(l => !wanted.includes(l)), state, now)));
    this.#replace(fresh);
  }

  /** Only what changed is drawn anew: a finger on its way to a key finds the key, and what was unfolded stays so. */
  #replace(fresh) {
    if (fresh.innerHTML === this.#drawn) return;
    this.#drawn = fresh.innerHTML;
    const unfolded = this.#root.querySelector('details')?.open ?? false;
    fill(this.#root, ...fresh.childNodes);
    const details = this.#root.querySelector('details');
    if (details) details.open = unfolded;
  }

  #drawn = '';

  /** Trays that stand together are listed together. */
  #shelves(loads, state, now) {
    const shelves = new Map();
    for (const load of loads) {
      const at = where(this.#say, load);
      shelves.set(at, [...shelves.get(at) ?? [], load]);
    }
    return [...shelves].map(([at, trays]) => el('div', {}, el('h3', {}, at), el('ol', { class: 'trays' },
      ...trays.map(l => this.#line(l, this.#at.loads.indexOf(l), state(l), now)))));
  }

  #line(load, index, state, now) {
    const say = this.#say;
    const out = now.outs.get(load.set + '/' + load.tray);
    const other = now.others.find(o => o.set === load.set && o.tray === load.tray);
    const words = [load.eggs === null ? say('round.eggsUnknown') : say.many('round.eggs', load.eggs)];
    if (state !== 'open') words.push(say('state.' + state));
    if (load.due === 'possible') words.push(say('state.possible'));
    if (load.sort) words.push(say('state.second'));
    else if (load.secondOf !== null) words.push(load.secondOf === '' ? say('state.secondElse') : say('state.secondOf', load.secondOf));
    if (other) words.push(say('state.' + other.state, other.who));
    if (out !== undefined && state !== 'done') {
      const minutes = Math.max(0, Math.floor((now.at - out) / 60000));
      words.push(say.many('tray.outFor', minutes));
      if (load.minutesLimit !== null && minutes >= load.minutesLimit) words.push(say('round.backIn', load.minutesLimit));
    }
    return el('li', {},
      el('button', { type: 'button', class: 'tray', 'data-key': 'take:' + index },
        el('b', {}, load.tray), el('span', {}, words.join(' · '))),
      state === 'done' || out !== undefined ? null
        : el('button', { type: 'button', class: 'key small', 'data-key': 'out:' + index, 'aria-label': say('round.outNowTray', load.tray) },
          say('round.outNow')));
  }

  #justDone(id) {
    const say = this.#say;
    const { load } = this.#counting.sitting(id);
    return el('section', { class: 'after', role: 'status' },
      el('p', {}, addsUp(say, this.#counting.said(id), load)),
      el('button', { type: 'button', class: 'key small', 'data-key': 'undo' }, say('round.undo', load.tray)));
  }

  #press(key) {
    const [what, which] = key.split(/:(.*)/s);
    const at = this.#at;
    switch (what) {
      case 'take': this.#act.take(at.loads[Number(which)]); break;
      case 'out': this.#act.out(at.loads[Number(which)]); break;
      case 'undo': this.#act.undo(at.after); break;
      case 'again': this.#act.undo(which); break;
      case 'letGo': this.#act.letGo(which); break;
      default: this.#act[what]();
    }
  }

  /** For buttons: what Enter and the like do here. */
  press(key) {
    if (key === 'done' && this.#at.next) this.#act.take(this.#at.next);
    if (key === 'undo' && this.#at.after !== null) this.#act.undo(this.#at.after);
  }
}

/** "Tray 60: 54 looked at. Clear 2. 52 live. 2 taken out, 52 left." */
export function addsUp(say, said, load) {
  const found = counts(said);
  const adds = sum(said, load.eggs);
  const named = FINDINGS.filter(f => found[f] > 0).map(f => say('sum.finding', say('finding.' + f), found[f]));
  if (said.unsorted > 0) named.push(say('sum.unsorted', said.unsorted));
  const what = named.length === 0 ? say('sum.nothing') : named.join(', ') + '.';
  const whole = adds.held === null
    ? say('sum.doneUnknown', load.tray, what, adds.out)
    : say('sum.done', load.tray, adds.seen, what, adds.live, adds.out, adds.left);
  const why = whyAsOne(said, load);
  return why === null ? whole : whole + ' ' + say.many('sum.' + why.key, why.eggs);
}

function deskWords(say, now) {
  const parts = [say('desk.' + now.desk)];
  if (now.waiting > 0) parts.push(say.many('waiting', now.waiting));
  if (now.refused.length > 0) parts.push(say.many('waiting.refused', now.refused.length));
  if (now.waiting + now.refused.length === 0) parts.push(say('waiting.none'));
  return parts.join(' ');
}

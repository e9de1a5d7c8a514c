// One tray under the fingers.

import { el, fill, write } from './lamp-dom.js';
import { listenToFingers } from './lamp-keys.js';
import { FINDINGS, counts, penAt, sum, whyAsOne } from './lamp-touches.js';

const SIX = FINDINGS.slice(0, 6);

/** The view of the tray that is open. */
export class TrayView {
  #root;
  #say;
  #counting;
  #voice;
  #chosen;
  #leave;
  #id = null;
  #place = null;
  /** The pen that was chosen, until another is. */
  #pen = null;
  #shown = {};

  /**
   * @param root where it is drawn
   * @param around {say, counting, voice, chosen, leave(id, why: 'done'|'away')}
   */
  constructor(root, { say, counting, voice, chosen, leave }) {
    this.#root = root;
    this.#say = say;
    this.#counting = counting;
    this.#voice = voice;
    this.#chosen = chosen;
    this.#leave = leave;
    listenToFingers(root, key => this.press(key));
  }

  get open() { return this.#id; }

  /** Draws a tray; each element that changes is remembered, so that a touch writes texts and nothing else. */
  show(id) {
    const say = this.#say;
    const { load } = this.#counting.sitting(id);
    this.#id = id;
    this.#place = null;
    this.#pen = null;
    const shown = this.#shown = {};
    const key = (name, label, kind) => el('button', { type: 'button', class: 'key ' + kind, 'data-key': name }, label);
    const counted = n => say('key.count', n);

    // A blind look says what each egg shows: good and out alone would say nothing.
    const isTwo = this.#chosen().form === 'two' && !load.sort;
    const keys = isTwo
      ? el('div', { class: 'keys two', role: 'group', 'aria-label': say('keys.two') },
        ...['good', 'out'].map(name => key(name, [el('span', {}, say('key.' + name)), shown['tally:' + name] = el('b', {}, '')], 'wide')))
      : el('div', { class: 'keys', role: 'group', 'aria-label': say('keys.six') },
        ...SIX.map(name => key(name, [el('span', {}, say('finding.' + name)), shown[name] = el('b', {}, '')], 'finding')));

    const notes = [load.note, load.sort === 'second_blind' ? say('tray.blind') : null, load.second, load.other]
      .filter(Boolean).map(note => el('p', { class: 'note' }, note));
    shown.before = el('div', { class: 'before' },
      load.eggs === null ? null : el('p', {}, say.many('tray.bookSays', load.eggs)),
      load.eggs === null ? null : el('div', {},
        shown.fewer = key('fewer', counted(load.eggs - 1), 'small'),
        shown.more = key('more', counted(load.eggs + 1), 'small')));
    shown.last = el('div', { class: 'last', hidden: true },
      shown.lastWords = el('p', {}, ''),
      shown.stays = key('stays', say('key.stays'), 'small'),
      shown.toOpen = key('open', say('key.open'), 'small'),
      shown.outAgain = key('takeOut', say('key.takeOut'), 'small'));
    const pens = load.pens.length > 1 && !isTwo
      ? el('div', { class: 'pens', role: 'group', 'aria-label': say('tray.whichPen') },
        ...load.pens.map((p, i) => key('pen:' + i, [el('span', {}, p.pen), el('small', {}, signOf(say, p))], 'pen')),
        shown.penless = el('p', { class: 'penless' }, ''))
      : null;
    shown.pens = pens;
    shown.board = this.#chosen().places === 'on' && load.rows.length > 0 ? this.#board(load) : null;
    // Where every place says the pen, there is nothing left to choose.
    if (shown.board && pens && load.pens.every(p => !p.mark)) pens.classList.add('told');
    this.#root.classList.toggle('boarded', shown.board !== null);

    fill(this.#root,
      el('header', { class: 'which' },
        el('button', { type: 'button', class: 'away', 'data-key': 'away' }, say('tray.away')),
        el('p', { class: 'outFor' }, '')),
      el('p', { class: 'where' }, where(say, load)),
      el('h1', { class: 'number', tabindex: '-1' }, el('span', { class: 'unseen' }, say('tray.word') + ' '), load.tray),
      shown.sum = el('p', { class: 'sum', role: 'status' }, ''),
      el('div', { class: 'middle' }, ...notes, shown.before, shown.last, pens, shown.board),
      keys,
      el('div', { class: 'ends' },
        shown.undo = key('undo', say('key.undo'), 'end'),
        isTwo ? null
          : key('wrong_end_up', [el('span', {}, say('finding.wrong_end_up')), shown.wrong_end_up = el('b', {}, '')], 'end'),
        key('done', say('key.done'), 'end done')));
    this.refresh();
    this.#root.querySelector('h1').focus({ preventScroll: true });
  }

  /** Presses a key, whoever pressed it: finger, keyboard, clicker or pedal. */
  press(key) {
    if (this.#id === null) return;
    const id = this.#id;
    const { load } = this.#counting.sitting(id);
    const say = this.#say;
    // A blind look marks; what is done with the eggs is for the usual look.
    if (load.sort && ['stays', 'open', 'takeOut', 'good', 'out'].includes(key)) return;
    if (FINDINGS.includes(key)) {
      const where = {};
      if (this.#penNow !== null) where.pen = load.pens[this.#penNow].pen;
      if (this.#place !== null) where.place = this.#place;
      this.#counting.found(id, key, where);
      this.#place = null;
      this.#voice.tick(key);
      this.#voice.say(say('said.found', say('finding.' + key), counts(this.#counting.said(id))[key]));
    } else if (key === 'good' || key === 'out') {
      if (key === 'good') this.#counting.good(id); else this.#counting.out(id);
      this.#voice.tick(key);
      const said = this.#counting.said(id);
      this.#voice.say(say('said.found', say('key.' + key), key === 'good' ? said.good : said.unsorted));
    } else if (key === 'stays' || key === 'open' || key === 'takeOut') {
      this.#counting.instead(id, key === 'takeOut' ? 'out' : key);
      this.#voice.tick('other');
      this.#voice.say(say('treated.' + (key === 'takeOut' ? 'out' : key)));
    } else if (key === 'fewer' || key === 'more') {
      const pen = this.#pen === null ? null : load.pens[this.#pen].pen;
      const now = this.#heldNow();
      if (now === null) return;
      this.#counting.counted(id, now + (key === 'more' ? 1 : -1), pen);
      this.#voice.tick('other');
    } else if (key.startsWith('pen:')) {
      const chosen = Number(key.slice(4));
      this.#pen = this.#pen === chosen ? null : chosen;
      this.#voice.tick('other');
      if (this.#pen !== null) this.#voice.say(load.pens[chosen].pen);
    } else if (key.startsWith('place:')) {
      const chosen = Number(key.slice(6));
      this.#place = this.#place === chosen ? null : chosen;
      this.#voice.tick('other');
    } else if (key === 'undo') {
      this.#counting.undo(id);
      this.#voice.tick('undo');
      this.#voice.say(say('said.undone'));
    } else if (key === 'done') {
      this.#counting.done(id);
      this.#voice.tick('done');
      this.#id = null;
      this.#leave(id, 'done');
      return;
    } else if (key === 'away') {
      this.#id = null;
      this.#leave(id, 'away');
      return;
    }
    this.refresh();
  }

  /** Writes what changed. */
  refresh() {
    if (this.#id === null) return;
    const say = this.#say;
    const { load, outAt } = this.#counting.sitting(this.#id);
    const said = this.#counting.said(this.#id);
    const found = counts(said);
    const shown = this.#shown;
    for (const finding of FINDINGS) if (shown[finding]) write(shown[finding], found[finding] === 0 ? '' : String(found[finding]));
    if (shown['tally:good']) {
      write(shown['tally:good'], String(said.good || ''));
      write(shown['tally:out'], String(said.unsorted || ''));
    }
    const adds = sum(said, load.eggs);
    write(shown.sum, adds.held === null
      ? say('sum.unknown', adds.faulty)
      : said.good > 0
        ? say('sum.part', adds.seen, adds.held, adds.live)
        : say('sum.known', adds.held, adds.faulty, adds.live));
    const last = said.marks.at(-1);
    const isMarked = last !== undefined;
    shown.last.hidden = !isMarked || Boolean(load.sort);
    shown.before.hidden = isMarked || said.good > 0 || said.unsorted > 0;
    if (isMarked) {
      write(shown.lastWords, say('last.' + last.treated, say('finding.' + last.finding)));
      shown.stays.hidden = last.treated === 'stays';
      shown.toOpen.hidden = last.treated === 'open';
      shown.outAgain.hidden = last.treated === 'out';
    }
    if (!shown.before.hidden && shown.fewer) {
      const now = this.#heldNow();
      shown.fewer.parentElement.hidden = now === null;
      if (now !== null) {
        write(shown.fewer, say('key.count', now - 1));
        write(shown.more, say('key.count', now + 1));
      }
    }
    if (shown.pens) {
      shown.pens.querySelectorAll('.pen').forEach((button, i) => button.setAttribute('aria-pressed', String(i === this.#penNow)));
      const why = whyAsOne(said, load);
      write(shown.penless, why === null ? '' : say.many('tray.' + why.key, why.eggs));
    }
    if (shown.board) this.#markBoard(said);
    shown.undo.disabled = !said.canUndo;
    this.settled();
    this.outFor(outAt);
  }

  /** The pen of the next egg: whose place was touched, else the one that was chosen; null where neither says. */
  get #penNow() {
    const { load } = this.#counting.sitting(this.#id);
    const at = this.#place === null || load.pens.length < 2 ? -1 : penAt(this.#place, load.pens);
    return at < 0 ? this.#pen : at;
  }

  /** What is in it, or of the chosen pen: as counted here, or as the book says; null where neither is known. */
  #heldNow() {
    const { load } = this.#counting.sitting(this.#id);
    const chosen = this.#pen === null ? null : load.pens[this.#pen];
    return this.#counting.said(this.#id).counted.get(chosen?.pen ?? null) ?? (chosen === null ? load.eggs : chosen.eggs ?? null);
  }

  /** A count looks different until it is on the phone's medium. */
  settled() {
    this.#shown.sum?.classList.toggle('unwritten', this.#counting.unwritten > 0);
  }

  /** How long the tray is out of the heat; asked again each half minute. */
  outFor(outAt, now = Date.now()) {
    const place = this.#root.querySelector('.outFor');
    if (!place) return;
    const minutes = outAt === null ? null : Math.max(0, Math.floor((now - outAt) / 60000));
    const limit = this.#counting.sitting(this.#id)?.load.minutesLimit ?? null;
    const late = minutes !== null && limit !== null && minutes >= limit;
    write(place, minutes === null ? '' : late ? this.#say('tray.late', minutes, limit) : this.#say.many('tray.outFor', minutes));
    if (late && !place.classList.contains('late')) this.#voice.tick('warn');
    place.classList.toggle('late', late);
  }

  #board(load) {
    let place = 0;
    const doubtful = new Set(load.doubtful);
    const board = el('div', { class: 'board', role: 'group', 'aria-label': this.#say('tray.places') },
      // Rows stand on their middle: one that is shorter lies between the eggs of its neighbours.
      ...load.rows.map(holes => el('div', { class: 'holes' },
        ...Array.from({ length: holes }, () => {
          place += 1;
          return el('button', {
            type: 'button', class: 'hole' + (doubtful.has(place) ? ' again' : ''), 'data-key': 'place:' + place,
            'aria-label': this.#say(doubtful.has(place) ? 'tray.placeAgain' : 'tray.place', place),
          });
        }))));
    board.style.setProperty('--across', String(Math.max(...load.rows)));
    board.style.setProperty('--rows', String(load.rows.length));
    return board;
  }

  #markBoard(said) {
    const marked = new Map(said.marks.filter(m => m.place !== null).map(m => [m.place, m.finding]));
    for (const hole of this.#shown.board.querySelectorAll('.hole')) {
      const place = Number(hole.dataset.key.slice(6));
      hole.setAttribute('aria-pressed', String(place === this.#place));
      hole.classList.toggle('marked', marked.has(place));
    }
  }
}

/** What the eggs of a pen show, or where they lie. */
function signOf(say, { mark, places }) {
  if (mark) return mark;
  return places.length > 0 ? say('tray.penPlaced', runs(places)) : say('tray.penPlain');
}

/** 1, 2, 3, 7 as "1–3, 7". */
function runs(places) {
  const found = [];
  for (const place of places) {
    if (found.at(-1)?.[1] === place - 1) found.at(-1)[1] = place;
    else found.push([place, place]);
  }
  return found.map(([from, to]) => (from === to ? String(from) : from + '–' + to)).join(', ');
}

/** "Set 27-5 · section 2 · day 7", with what is known of it. */
export function where(say, load) {
  const parts = [say('where.set', load.set)];
  if (load.machine) parts.push(load.section ? say('where.section', load.machine, load.section) : load.machine);
  parts.push(say('where.day', load.day));
  return parts.join(' · ');
}

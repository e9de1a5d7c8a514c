// The lamp page: puts the parts together, keeps the screen awake, and speaks with the desk when it can be reached.

import { el, fill, wordsOf } from './lamp-dom.js';
import { openShelf } from './lamp-shelf.js';
import { Counting } from './lamp-count.js';
import { CLOCK_OFF_MS, Outbox } from './lamp-outbox.js';
import { TrayView } from './lamp-tray.js';
import { RoundView } from './lamp-round.js';
import { Voice } from './lamp-voice.js';
import { listenToButtons } from './lamp-keys.js';
import { USUAL, showSetup } from './lamp-setup.js';
import { showHelp } from './lamp-help.js';
import { secondLook } from './lamp-second.js';
import { isSameLook } from './lamp-touches.js';
import { ask, send } from './lamp-desk.js';
import { dayNumber, loadOf, span } from './lamp-load.js';
import { Awake } from './lamp-awake.js';

const ASK_AGAIN_MS = 15000;
const FORGET_AFTER_MS = 21 * 24 * 3600 * 1000;

const root = document.getElementById('lamp');
const say = wordsOf(JSON.parse(root.dataset.words));
const language = document.documentElement.lang;

/** Where nothing can be counted here: why, and what to do. */
function onlyThis(why, ...more) {
  fill(root, el('section', { class: 'view other' }, el('h1', {}, say('round.title')), el('p', { class: 'note', role: 'alert' }, why), ...more));
}

/** Only one tab counts: two would write over each other's touches. */
async function alone() {
  if (!navigator.locks) return;
  await new Promise(held => {
    navigator.locks.request('eggwright-lamp', { ifAvailable: true }, lock => {
      if (lock) {
        held();
        return new Promise(() => {});
      }
      onlyThis(say('page.otherTab'));
      return navigator.locks.request('eggwright-lamp', () => {
        location.reload();
        return new Promise(() => {});
      });
    });
  });
}

async function start() {
  await alone();
  const shelf = await openShelf();
  await shelf.forget(Date.now() - FORGET_AFTER_MS);
  const kept = await shelf.all();
  const page = new Page(shelf, kept);
  await page.open();
}

class Page {
  #shelf;
  #counting;
  #outbox;
  #voice;
  #chosen;
  #tray;
  #round;
  #view = 'round';
  #from;
  #outs;
  #others = [];
  #after = null;
  #desk = 'notAsked';
  #link = null;
  #behindMs = null;
  #awake = new Awake();

  constructor(shelf, kept) {
    this.#shelf = shelf;
    this.#chosen = { ...USUAL, ...kept.notes.get('chosen') };
    this.#from = kept.notes.get('round') ?? null;
    this.#outs = new Map(kept.notes.get('outs') ?? []);
    this.#counting = new Counting(shelf, () => Date.now(), say('undone.why'));
    this.#outbox = new Outbox(shelf, message => send('/api/lamp/entries', message), () => Date.now());
    this.#voice = new Voice(() => this.#chosen, language);
  }

  async open() {
    await this.#counting.takeUp();
    this.#counting.onSettled = () => {
      if (this.#counting.failed) this.#noRoom();
      else if (this.#view === 'tray') this.#tray.settled();
    };
    const trayRoot = el('section', { class: 'view tray', hidden: true });
    const roundRoot = el('section', { class: 'view round' });
    const otherRoot = el('section', { class: 'view other', hidden: true });
    this.#roots = { tray: trayRoot, round: roundRoot, other: otherRoot };
    root.replaceChildren(trayRoot, roundRoot, otherRoot);
    this.#tray = new TrayView(trayRoot, {
      say, counting: this.#counting, voice: this.#voice, chosen: () => this.#chosen, leave: (id, why) => this.#left(id, why),
    });
    this.#round = new RoundView(roundRoot, {
      say,
      counting: this.#counting,
      act: {
        take: load => this.#take(load),
        undo: id => this.#undo(id),
        out: load => this.#out(load),
        send: () => this.#reach(),
        save: () => this.#save(),
        letGo: id => this.#letGo(id),
        setup: () => this.#setup(),
        help: () => this.#help(),
      },
    });
    listenToButtons(document, () => this.#chosen.buttons, key => {
      if (this.#view === 'tray') this.#tray.press(key);
      else if (this.#view === 'round') this.#round.press(key);
    });
    document.body.dataset.hand = this.#chosen.hand;
    document.addEventListener('visibilitychange', () => {
      if (document.visibilityState === 'visible') {
        if (this.#view === 'tray') this.#awake.stay();
        this.#reach();
      }
    });
    addEventListener('online', () => this.#reach());
    addEventListener('hashchange', () => {
      this.#readLink();
      this.#follow();
    });
    setInterval(() => { if (document.visibilityState === 'visible') this.#reach(); }, ASK_AGAIN_MS);
    setInterval(() => this.#minute(), 20000);
    // A tray that was begun and not finished is the one in the hand.
    const begun = this.#counting.sittings.find(s => !this.#counting.said(s.id).isDone && s.openedAt > Date.now() - 6 * 3600 * 1000);
    this.#readLink();
    if (this.#chosen.who === '') this.#setup();
    else if (this.#follow()) { /* the card's tray is open */ }
    else if (begun && this.#counting.said(begun.id).canUndo) this.#showTray(begun.id);
    else await this.#showRound();
    root.dataset.ready = 'yes';
    performance.mark('lamp-ready');
    this.#reach();
  }

  #roots;

  #show(view) {
    this.#view = view === 'tray' || view === 'round' ? view : 'other';
    for (const [name, element] of Object.entries(this.#roots)) element.hidden = name !== this.#view;
    scrollTo(0, 0);
  }

  #showTray(id) {
    this.#show('tray');
    this.#tray.show(id);
    if (this.#view === 'tray') this.#awake.stay();
  }

  /** Drawn first, shown then: what stood there before is no longer true. */
  async #showRound() {
    this.#view = 'round';
    await this.#drawRound();
    if (this.#view === 'round') this.#show('round');
  }

  async #drawRound() {
    if (this.#view !== 'round') return;
    await this.#counting.settled().catch(() => {});
    const { outbox } = await this.#shelf.all();
    const tray = id => this.#counting.sitting(id)?.load.tray ?? '';
    this.#round.show({
      loads: this.#loads(),
      who: this.#chosen.who,
      after: this.#after,
      outs: this.#outs,
      at: Date.now(),
      waiting: outbox.filter(e => e.state === 'waiting' || e.state === 'sending').length,
      refused: outbox.filter(e => e.state === 'refused').map(e => ({ ...e, tray: tray(e.sitting) })),
      desk: this.#desk,
      others: this.#others,
      link: this.#link === null || !this.#from ? null : say('link.none', this.#link.tray, this.#link.set),
      clock: this.#behindMs !== null && Math.abs(this.#behindMs) > CLOCK_OFF_MS
        ? say(this.#behindMs > 0 ? 'clock.behind' : 'clock.ahead', span(say, Math.abs(this.#behindMs) / 60000)) : null,
    });
    root.dataset.drawn = String(Number(root.dataset.drawn ?? 0) + 1);
  }

  /** The trays of the day, each as old as it is today, also where the desk was last heard of days ago. */
  #loads() {
    if (!this.#from) return [];
    const today = dayNumber(Date.now());
    const drawnUp = dayNumber(Date.parse(this.#from.now));
    return this.#from.trays.map(told => {
      const second = this.#second(told);
      const other = this.#others.find(o => o.set === told.set && o.tray === told.tray);
      return {
        ...loadOf(say, told, Math.max(0, today - drawnUp), this.#from.limit.minutes, second),
        other: other ? say('tray.other.' + other.state, other.who) : null,
      };
    });
  }

  /** The second look that a tray wants, with what was done on this phone since the desk was last heard; null where none. */
  #second(told) {
    if (!told.second) return null;
    const here = this.#counting.sittings.filter(s => s.load.set === told.set && s.load.tray === told.tray
      && s.openedAt > Date.parse(this.#from.now) - (this.#from.behind_ms ?? 0) && this.#counting.said(s.id).isDone);
    if (here.some(s => s.load.sort && s.who.who === this.#chosen.who)) return null;
    return secondLook(told.second, this.#chosen.who, this.#from.device, { first: here.filter(s => !s.load.sort).map(s => s.who.who) });
  }

  /** The load whose card was read: /lamp#SET/TRAY. The address forgets it, so that a reload is a reload. */
  #readLink() {
    const [set, tray] = location.hash.slice(1).split('/').map(part => {
      try { return decodeURIComponent(part); } catch { return part; }
    });
    if (tray === undefined) return;
    this.#link = { set, tray };
    history.replaceState(null, '', location.pathname);
  }

  /** Opens the tray whose card was read, as soon as the phone knows it. */
  #follow() {
    if (this.#link === null || this.#chosen.who === '') return false;
    const { set, tray } = this.#link;
    const load = this.#loads().find(l => l.set === set && l.tray === tray);
    if (load) {
      this.#link = null;
      this.#take(load);
    }
    return load !== undefined;
  }

  #take(load) {
    const key = load.set + '/' + load.tray;
    const last = this.#counting.sittings.find(s => s.load.set === load.set && s.load.tray === load.tray
      && s.load.day === load.day && isSameLook(s.load, load));
    if (last && this.#counting.said(last.id).isDone) {
      // Looking at a finished tray again shows what was touched; undo takes it up.
      this.#after = last.id;
      this.#showRound();
      return;
    }
    const outAt = this.#outs.get(key) ?? Date.now();
    this.#keepOut(key, outAt);
    const id = this.#counting.open({ ...load, outAt }, { farm: this.#from.farm, who: this.#chosen.who, device: this.#from.device });
    this.#after = null;
    this.#showTray(id);
    this.#voice.tick('other');
    this.#voice.say(say('said.tray', load.tray));
    this.#hold(load, 'has');
  }

  #out(load) {
    this.#keepOut(load.set + '/' + load.tray, Date.now());
    this.#voice.tick('other');
    this.#drawRound();
  }

  #keepOut(key, at) {
    if (!this.#outs.has(key)) this.#outs.set(key, at);
    this.#shelf.note('outs', [...this.#outs]);
  }

  async #left(id, why) {
    const { load } = this.#counting.sitting(id);
    if (why === 'done') {
      this.#after = id;
      this.#outs.delete(load.set + '/' + load.tray);
      this.#shelf.note('outs', [...this.#outs]);
      const adds = this.#counting.said(id);
      this.#voice.say(say('said.done', load.tray, adds.marks.length + adds.unsorted));
      this.#hold(load, 'did');
    }
    this.#awake.rest();
    await this.#showRound();
    if (why === 'done') this.#reach();
  }

  #undo(id) {
    if (id === null) return;
    this.#counting.undo(id);
    this.#voice.tick('undo');
    this.#voice.say(say('said.undone'));
    this.#after = null;
    this.#showTray(id);
  }

  #setup() {
    this.#show('other');
    showSetup(this.#roots.other, {
      say,
      chosen: this.#chosen,
      keep: chosen => {
        this.#chosen = chosen;
        document.body.dataset.hand = chosen.hand;
        this.#shelf.note('chosen', chosen);
        if (document.activeElement?.matches?.('input[type=text]')) return;
        const focused = document.activeElement?.value;
        this.#setup();
        if (focused) this.#roots.other.querySelector(`input[value="${CSS.escape(focused)}"]:checked`)?.focus();
      },
      back: () => {
        if (this.#chosen.who === '') {
          this.#roots.other.querySelector('input').focus();
          return;
        }
        if (!this.#follow()) this.#showRound();
      },
    });
  }

  #help() {
    this.#show('other');
    showHelp(this.#roots.other, { say, loads: this.#loads(), limit: this.#from?.limit ?? null, back: () => this.#showRound() });
  }

  /** Sends what waits and asks for the trays of the day; out of reach is no fault, and said in words. */
  async #reach() {
    if (this.#reaching) return;
    this.#reaching = true;
    try {
      await this.#counting.settled();
      // First whose desk this is: what was counted for one farm is never offered to another, which would refuse it.
      const from = await this.#ask();
      if (this.#from && this.#from.farm !== from.farm) {
        this.#desk = 'otherFarm';
      } else {
        await this.#hear(from);
        const { sent } = await this.#outbox.send();
        if (sent > 0) await this.#hear(await this.#ask());
      }
    } catch (fault) {
      this.#desk = fault.desk ?? 'away';
    } finally {
      this.#reaching = false;
    }
    if (this.#view !== 'round' || !this.#follow()) await this.#drawRound();
  }

  #reaching = false;

  /** The trays of the day, as the desk tells them; on the way its clock is held against the phone's. */
  async #ask() {
    const asked = Date.now();
    const from = await ask('/api/lamp/round');
    this.#behindMs = Date.parse(from.now) - (asked + Date.now()) / 2;
    return from;
  }

  async #hear(from) {
    this.#from = { ...from, behind_ms: this.#behindMs };
    this.#others = from.others;
    this.#desk = 'reached';
    await this.#shelf.note('round', this.#from);
  }

  #hold(load, state) {
    send('/api/lamp/holding', { set: load.set, tray: load.tray, state, who: this.#chosen.who }).catch(() => {});
  }

  /** What waits, as a file that the desk can import: for when the desk is gone for good. */
  async #save() {
    const { outbox } = await this.#shelf.all();
    await this.#shelf.saved(outbox.filter(e => e.state === 'refused').map(e => e.id));
    const lines = outbox.filter(e => e.state !== 'sent').map(e => e.text + '\n');
    const link = el('a', { hidden: true, download: 'eggwright-lamp.jsonl', href: URL.createObjectURL(new Blob(lines, { type: 'application/x-ndjson' })) });
    document.body.append(link);
    link.click();
    setTimeout(() => {
      URL.revokeObjectURL(link.href);
      link.remove();
    }, 1000);
    await this.#drawRound();
  }

  /** A refused note that lies in a file, or was put right at the desk, is kept here no longer. */
  async #letGo(id) {
    await this.#shelf.letGo(id);
    await this.#drawRound();
  }

  /** The phone takes no more: nothing is counted that would not be kept. */
  #noRoom() {
    onlyThis(say('page.noRoom', String(this.#counting.failed?.message ?? '')),
      el('button', { type: 'button', class: 'key small', click: () => location.reload() }, say('page.again')));
  }

  #minute() {
    if (this.#view === 'tray' && this.#tray.open) this.#tray.outFor(this.#counting.sitting(this.#tray.open).outAt);
    else this.#drawRound();
  }
}

if ('serviceWorker' in navigator) {
  navigator.serviceWorker.register('/lamp-worker.js', { scope: '/lamp' }).catch(() => {
    // Without it the page works as long as it is open; the round says whether the desk is reached.
  });
}
navigator.storage?.persist?.();

start().catch(fault => {
  onlyThis(say('page.notStarted'), el('p', {}, String(fault.message ?? fault)));
});

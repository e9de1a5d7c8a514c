// One phone's counting: which tray is open, what was touched, what waits. Every change is written before the next one is
// begun; what is shown comes from memory at once, so a finger never waits for the medium.

import { fold, isSameLook, looks } from './lamp-touches.js';
import { freshId, withOffset } from './lamp-ids.js';

export class Counting {
  #shelf;
  #now;
  #id;
  #west;
  #whyUndone;
  #writing = Promise.resolve();
  #unwritten = 0;
  #failed = null;
  #sittings = new Map();
  #touches = new Map();

  /**
   * @param shelf where it is kept
   * @param now the phone's clock
   * @param whyUndone the words in which a withdrawal says why
   * @param id makes a fresh id from an instant
   * @param west minutes that the place is west of Greenwich at an instant
   */
  constructor(shelf, now, whyUndone, id = freshId, west = at => new Date(at).getTimezoneOffset()) {
    this.#shelf = shelf;
    this.#now = now;
    this.#whyUndone = whyUndone;
    this.#id = id;
    this.#west = west;
  }

  /** Takes up where the phone was left, whatever happened to it. */
  async takeUp() {
    const { sittings, touches } = await this.#shelf.all();
    for (const sitting of sittings) {
      this.#sittings.set(sitting.id, sitting);
      this.#touches.set(sitting.id, []);
    }
    for (const touch of touches) this.#touches.get(touch.sitting)?.push(touch);
    for (const made of this.#touches.values()) made.sort((a, b) => a.n - b.n);
    return this;
  }

  /** Resolves when all that was touched is on the medium; rejects where it could not be written. */
  async settled() {
    await this.#writing;
    if (this.#failed) throw this.#failed;
  }

  /** Why the medium takes no more; null where it does. */
  get failed() { return this.#failed; }

  /** Touches made and not yet on the medium. */
  get unwritten() { return this.#unwritten; }

  /** Is called when all that was touched is on the medium, and when that failed. */
  onSettled = () => {};

  /** Trays taken up on this phone, newest first. */
  get sittings() {
    return [...this.#sittings.values()].sort((a, b) => b.openedAt - a.openedAt || (a.id < b.id ? 1 : -1));
  }

  said(id) { return fold(this.#touches.get(id) ?? [], this.#sittings.get(id)?.load.sort); }

  sitting(id) { return this.#sittings.get(id); }

  /**
   * Takes up a tray, or goes on with it where it was begun and not finished.
   *
   * @param load {set, tray, eggs, day, pens, sort?}
   * @param who {farm, who, device}
   */
  open(load, who) {
    const begun = this.sittings.find(s => s.load.set === load.set && s.load.tray === load.tray && isSameLook(s.load, load)
      && !this.said(s.id).isDone);
    if (begun) return begun.id;
    const at = this.#now();
    const sitting = { id: this.#id(at), load, who, openedAt: at, outAt: load.outAt ?? null };
    this.#sittings.set(sitting.id, sitting);
    this.#touches.set(sitting.id, []);
    this.#write(() => this.#shelf.begin(sitting));
    return sitting.id;
  }

  found(id, finding, where = {}) { this.#touch(id, { kind: 'found', finding, ...where }); }

  instead(id, treated) {
    if (this.said(id).marks.length > 0) this.#touch(id, { kind: 'instead', treated });
  }

  good(id) { this.#touch(id, { kind: 'good' }); }

  out(id) { this.#touch(id, { kind: 'out' }); }

  counted(id, eggs, pen = null) {
    if (eggs >= 0) this.#touch(id, pen === null ? { kind: 'counted', eggs } : { kind: 'counted', eggs, pen });
  }

  /** The tray is finished: its touches become entries that wait for the desk. */
  done(id) {
    if (this.said(id).isDone) return;
    const sitting = this.#sittings.get(id);
    const touch = this.#next(id, { kind: 'done' });
    const minutesOut = sitting.outAt === null ? null : Math.max(0, Math.round((touch.at - sitting.outAt) / 60000));
    const entries = looks(this.said(id), sitting.load, minutesOut, sitting.load.sort)
      .map(payload => this.#entry(sitting, 'looked', 3, payload, touch.at));
    this.#write(() => this.#shelf.finish(touch, entries));
  }

  /** Takes back the last touch, also the one that finished the tray. */
  undo(id) {
    const said = this.said(id);
    if (!said.canUndo) return;
    const sitting = this.#sittings.get(id);
    const touch = this.#next(id, { kind: 'undo' });
    if (!said.isDone) {
      this.#write(() => this.#shelf.touch(touch));
      return;
    }
    this.#write(() => this.#shelf.reopen(touch, entry => this.#entry(
      sitting, 'withdrawn', 1, { target: entry.id, saw: entry.id, why: this.#whyUndone }, touch.at, 'withdrawal')));
  }

  #touch(id, what) {
    if (this.said(id).isDone) return;
    const touch = this.#next(id, what);
    this.#write(() => this.#shelf.touch(touch));
  }

  #next(id, what) {
    const made = this.#touches.get(id);
    const touch = { sitting: id, n: made.length, at: this.#now(), ...what };
    made.push(touch);
    return touch;
  }

  #entry(sitting, kind, version, payload, at, undone = null) {
    const id = this.#id(at);
    const happened = withOffset(at, this.#west(at));
    const { farm, who, device } = sitting.who;
    const text = JSON.stringify({
      id, farm, kind, happened, noted: happened, who, device, origin: 'noted', payload_version: version, payload,
    });
    return { id, farm, sitting: sitting.id, text, state: 'waiting', made: at, reason: null, undone };
  }

  /** One after the other, in the order of the touches. */
  #write(work) {
    this.#unwritten += 1;
    this.#writing = this.#writing
      .then(() => (this.#failed ? undefined : work()))
      .then(() => { this.#unwritten -= 1; }, failure => { this.#failed ??= failure; })
      .then(() => { if (this.#unwritten === 0 || this.#failed) this.onSettled(); });
  }
}

// Sends what waits, whenever the desk can be reached. Sending twice is harmless: the desk keeps an entry once.

/** How many entries go in one message. */
export const AT_ONCE = 250;

/** A phone's clock that is off by more than this is spoken of. */
export const CLOCK_OFF_MS = 120000;

/**
 * @param shelf where entries wait
 * @param post sends {farm, sent_at, entries} and resolves to {farm, desk_at, answers: [{became, reason?}] in the same order};
 *     rejects where the desk is out of reach
 * @param now the phone's clock, in milliseconds
 */
export class Outbox {
  #shelf;
  #post;
  #now;
  #running = null;

  constructor(shelf, post, now) {
    this.#shelf = shelf;
    this.#post = post;
    this.#now = now;
  }

  /**
   * Sends all that waits. One sending runs at a time; a call during one joins it.
   *
   * @returns {Promise<{sent: number, refused: number}>} rejects where the desk was not reached
   */
  send() {
    this.#running ??= this.#all().finally(() => { this.#running = null; });
    return this.#running;
  }

  async #all() {
    const done = { sent: 0, refused: 0 };
    for (;;) {
      const batch = await this.#shelf.takeForSending(AT_ONCE);
      if (batch.length === 0) return done;
      const reply = await this.#post({ farm: batch[0].farm, sent_at: this.#now(), entries: batch.map(e => e.text) });
      if (reply.answers.length !== batch.length) throw new Error('The desk did not answer to each of what was sent.');
      const answers = batch.map((entry, i) => ({ id: entry.id, ...reply.answers[i] }));
      await this.#shelf.settle(answers);
      done.sent += answers.filter(a => a.became === 'kept' || a.became === 'kept_before').length;
      done.refused += answers.filter(a => a.became === 'refused').length;
      const notNow = answers.find(a => a.became === 'not_now');
      if (notNow) throw Object.assign(new Error(notNow.reason), { desk: 'full', reason: notNow.reason });
    }
  }
}

// What is kept on this phone, in its own database: touches as they are made, and entries until the desk has them. Each
// method is one transaction: it happens whole or not at all.

import { openDB } from '../idb/index.js';

const EVERYTHING = ['sitting', 'touch', 'outbox', 'note'];

/**
 * @param name of the database
 * @param durability 'strict' waits until the phone has it on its medium; tests that do it a thousand times use 'relaxed'
 */
export async function openShelf(name = 'eggwright-lamp', durability = 'strict') {
  const shelf = new Shelf(durability);
  shelf.on(await openDB(name, 1, {
    upgrade(fresh) {
      fresh.createObjectStore('sitting', { keyPath: 'id' });
      fresh.createObjectStore('touch', { keyPath: ['sitting', 'n'] });
      fresh.createObjectStore('outbox', { keyPath: 'id' });
      fresh.createObjectStore('note', { keyPath: 'name' });
    },
    // Another tab has a newer page: let it through, and write no more here.
    blocking() { shelf.close(); },
  }));
  return shelf;
}

class Shelf {
  #db;
  #durability;

  constructor(durability) {
    this.#durability = durability;
  }

  on(db) {
    this.#db = db;
  }

  /** All that is kept. */
  async all() {
    const tx = this.#db.transaction(EVERYTHING, 'readonly');
    const [sittings, touches, outbox, notes] = await Promise.all(EVERYTHING.map(store => tx.objectStore(store).getAll()));
    await tx.done;
    return { sittings, touches, outbox, notes: new Map(notes.map(n => [n.name, n.value])) };
  }

  /** A tray is taken up. */
  begin(sitting) {
    return this.#write(['sitting'], tx => tx.objectStore('sitting').put(sitting));
  }

  /** One more touch on a tray. */
  touch(touch) {
    return this.#write(['touch'], tx => tx.objectStore('touch').add(touch));
  }

  /** The last touch on a tray, and the entries it made, together. */
  finish(touch, entries) {
    return this.#write(['touch', 'outbox'], tx => {
      tx.objectStore('touch').add(touch);
      for (const entry of entries) tx.objectStore('outbox').add(entry);
    });
  }

  /**
   * A finished tray is taken up again: its entries that never left the phone are dropped; for each that did, or may have,
   * a withdrawal is written.
   *
   * @param withdraw makes the withdrawal of an entry
   */
  reopen(touch, withdraw) {
    return this.#write(['touch', 'outbox'], async tx => {
      tx.objectStore('touch').add(touch);
      const outbox = tx.objectStore('outbox');
      for (const entry of await outbox.getAll()) {
        if (entry.sitting !== touch.sitting || entry.undone) continue;
        if (entry.state === 'waiting' || entry.state === 'refused') {
          outbox.delete(entry.id);
        } else {
          outbox.put({ ...entry, undone: 'withdrawn' });
          outbox.add(withdraw(entry));
        }
      }
    });
  }

  /** Takes entries out for sending, oldest first. From here on they may have reached the desk. */
  async takeForSending(most) {
    let taken = [];
    await this.#write(['outbox'], async tx => {
      const outbox = tx.objectStore('outbox');
      taken = (await outbox.getAll())
        .filter(e => e.state === 'waiting' || e.state === 'sending')
        .sort((a, b) => a.made - b.made || (a.id < b.id ? -1 : 1))
        .slice(0, most);
      for (const entry of taken) {
        if (entry.state === 'waiting') outbox.put({ ...entry, state: 'sending' });
      }
    });
    return taken;
  }

  /** What the desk said of each entry: one that it refused stays, with the reason; one that it could not write waits on. */
  settle(answers) {
    return this.#write(['outbox'], async tx => {
      const outbox = tx.objectStore('outbox');
      for (const { id, became, reason } of answers) {
        const entry = await outbox.get(id);
        if (!entry || became === 'not_now') continue;
        outbox.put(became === 'refused' ? { ...entry, state: 'refused', reason } : { ...entry, state: 'sent', reason: null });
      }
    });
  }

  /** These refused entries lie in a file now. */
  saved(ids) {
    return this.#write(['outbox'], async tx => {
      const outbox = tx.objectStore('outbox');
      for (const id of ids) outbox.put({ ...await outbox.get(id), saved: true });
    });
  }

  /** A refused entry is let go, once its tray was counted again or it was saved to a file. */
  letGo(id) {
    return this.#write(['outbox'], tx => tx.objectStore('outbox').delete(id));
  }

  /** Something to remember: the trays of the day, who holds the phone, which key does what. */
  note(name, value) {
    return this.#write(['note'], tx => tx.objectStore('note').put({ name, value }));
  }

  /** Trays whose entries the desk has had for so long are forgotten here. */
  forget(before) {
    return this.#write(['sitting', 'touch', 'outbox'], async tx => {
      const outbox = tx.objectStore('outbox');
      const sittings = tx.objectStore('sitting');
      const touches = tx.objectStore('touch');
      const entries = await outbox.getAll();
      const unsent = new Set(entries.filter(e => e.state !== 'sent').map(e => e.sitting));
      const made = new Set(entries.map(e => e.sitting));
      for (const sitting of await sittings.getAll()) {
        if (sitting.openedAt >= before || unsent.has(sitting.id) || !made.has(sitting.id)) continue;
        sittings.delete(sitting.id);
        touches.delete(IDBKeyRange.bound([sitting.id, 0], [sitting.id, Infinity]));
        for (const entry of entries) if (entry.sitting === sitting.id) outbox.delete(entry.id);
      }
    });
  }

  close() {
    this.#db.close();
  }

  async #write(stores, work) {
    const tx = this.#db.transaction(stores, 'readwrite', { durability: this.#durability });
    try {
      await work(tx);
    } catch (fault) {
      try { tx.abort(); } catch { /* it had failed already */ }
      await tx.done.catch(() => {});
      throw fault;
    }
    await tx.done;
  }
}

// Runs random sequences of touches, undos, cuts, kills, reloads and sends through the page's own modules against the real
// desk, and gives what the book has to hold afterwards. The model below shares no line with the modules.
async ({ urls, seed, first, count, farm, device, trays, breach }) => {
  const { openShelf } = await import(urls.shelf);
  const { Counting } = await import(urls.count);
  const { Outbox } = await import(urls.outbox);
  const { freshId } = await import(urls.ids);

  // Mulberry32, public domain: small, seeded, good enough to deal touches.
  const dice = from => () => {
    from = (from + 0x6d2b79f5) | 0;
    let t = Math.imul(from ^ (from >>> 15), 1 | from);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };

  const KINDS = ['clear', 'blood_ring', 'dead', 'doubtful', 'cracked', 'rot', 'wrong_end_up'];
  const STAYS = new Set(['doubtful', 'wrong_end_up']);

  /** One tray as a person would keep it on paper: each line may be struck out again, the last first. */
  class Paper {
    lines = [];
    isDone = false;
    write(line) { if (!this.isDone) this.lines.push(line); }
    done() { if (!this.isDone) { this.lines.push({ done: true }); this.isDone = true; } }
    strike() {
      const last = this.lines.pop();
      if (last?.done) this.isDone = false;
      return last !== undefined;
    }
    /** What the book has to say of this tray, in words that both sides can compare. */
    look(load) {
      const eggs = [];
      let good = 0, out = 0, counted = null;
      for (const line of this.lines) {
        if (line.egg) eggs.push({ shows: line.egg, to: STAYS.has(line.egg) ? 'stays' : 'out', place: line.place ?? null });
        if (line.instead && eggs.length > 0) eggs[eggs.length - 1].to = line.instead;
        if (line.good) good += 1;
        if (line.out) out += 1;
        if (line.counted !== undefined) counted = line.counted;
      }
      const parts = KINDS.map(kind => {
        const those = eggs.filter(e => e.shows === kind);
        return those.length === 0 ? null
          : `${kind} ${those.length}-${those.filter(e => e.to === 'out').length}-${those.filter(e => e.to === 'open').length}`;
      }).filter(part => part !== null);
      const places = eggs.filter(e => e.place !== null).map(e => e.place + ':' + e.shows);
      return [load.set, load.tray, 'seen', ...parts, 'unsorted', out, 'looked', good > 0 ? good + out + eggs.length : 'all',
        'counted', counted ?? 'no', 'places', ...places].join(' ');
    }
  }

  /** The wire: whole, cut before the desk hears, or cut before the answer comes back. */
  class Wire {
    state = 'whole';
    async post(message) {
      if (this.state === 'cutBefore') throw new TypeError('cut');
      const answer = await fetch('/api/lamp/entries', {
        method: 'POST', headers: { 'Content-Type': 'application/json' }, body: JSON.stringify(message),
      });
      if (this.state === 'cutAfter') throw new TypeError('cut');
      if (!answer.ok) throw new Error('The desk answered ' + answer.status + ': ' + await answer.text());
      return answer.json();
    }
  }

  // Faults that somebody might build in unawares; each has to be seen in the book at the end.
  const BREACHES = {
    none: () => {},
    // Says that the desk has it, and never asked.
    keptWithoutPosting: ({ wire, now }) => {
      const whole = wire.post.bind(wire);
      wire.post = async m => (now() % 3 === 0 ? { answers: m.entries.map(() => ({ became: 'kept' })) } : whole(m));
    },
    // Shows a touch and writes nothing in its place.
    touchNotWritten: ({ shelf, now }) => {
      const whole = shelf.touch.bind(shelf);
      shelf.touch = async t => whole(now() % 5 === 0 ? { ...t, kind: 'nothing' } : t);
    },
    // A tray that was sent is taken up again, and the desk is not told.
    undoneWithoutAWord: ({ shelf }) => {
      const whole = shelf.reopen.bind(shelf);
      shelf.reopen = (t, withdraw) => whole(t, entry => ({ ...withdraw(entry), state: 'sent' }));
    },
    // Sends again under a name of its own what it has no answer for.
    sentTwiceUnderTwoNames: ({ wire, freshId, now }) => {
      const whole = wire.post.bind(wire);
      wire.post = async m => {
        await whole(m).catch(() => {});
        return whole({ ...m, entries: m.entries.map(e => JSON.stringify({ ...JSON.parse(e), id: freshId(now()) })) });
      };
    },
    // Takes an answer for another entry's.
    entryForgotten: ({ shelf, now }) => {
      const whole = shelf.settle.bind(shelf);
      shelf.settle = a => whole(a.map(one => ({ ...one, became: one.became === 'not_now' ? 'kept' : one.became })));
      const take = shelf.takeForSending.bind(shelf);
      shelf.takeForSending = async most => {
        const taken = await take(most);
        if (taken.length > 1 && now() % 2 === 0) await shelf.settle([{ id: taken.pop().id, became: 'kept' }]);
        return taken;
      };
    },
  };

  const expected = {};
  let kills = 0, sends = 0, lost = 0;
  for (let n = first; n < first + count; n++) {
    const random = dice(seed * 100003 + n);
    const upTo = most => Math.floor(random() * most);
    const who = 'walk ' + n;
    const name = 'walk-' + n;
    const wire = new Wire();
    const papers = [];
    let clock = Date.now() - 5000 + upTo(1000);
    const now = () => { clock += 1; return clock; };
    let shelf, counting, outbox;
    const wake = async () => {
      delete wire.post;
      shelf = await openShelf(name, 'relaxed');
      BREACHES[breach]({ shelf, wire, now, freshId });
      counting = await new Counting(shelf, now, 'undone').takeUp();
      outbox = new Outbox(shelf, m => wire.post(m), now);
    };
    await wake();
    const send = async () => {
      sends += 1;
      await counting.settled();
      try {
        await outbox.send();
      } catch (fault) {
        if (wire.state === 'whole') throw fault;
      }
    };
    let open = null;
    const steps = 12 + upTo(30);
    for (let step = 0; step < steps; step++) {
      const roll = random();
      if (open === null || roll < 0.04) {
        const load = trays[upTo(trays.length)];
        const id = counting.open({ ...load, pens: [], outAt: null }, { farm, who, device });
        open = papers.find(p => p.id === id);
        if (!open) {
          open = { id, load, paper: new Paper() };
          papers.push(open);
        }
      } else if (roll < 0.45) {
        const egg = KINDS[upTo(KINDS.length)];
        const place = random() < 0.3 ? 1 + upTo(54) : null;
        counting.found(open.id, egg, place === null ? {} : { place });
        open.paper.write({ egg, place });
      } else if (roll < 0.53) {
        const instead = ['out', 'stays', 'open'][upTo(3)];
        counting.instead(open.id, instead);
        // A person writes down a change only where there is an egg to change.
        if (open.paper.lines.some(l => l.egg)) open.paper.write({ instead });
      } else if (roll < 0.56) {
        counting.good(open.id);
        open.paper.write({ good: true });
      } else if (roll < 0.59) {
        counting.out(open.id);
        open.paper.write({ out: true });
      } else if (roll < 0.62) {
        const eggs = 40 + upTo(20);
        counting.counted(open.id, eggs);
        open.paper.write({ counted: eggs });
      } else if (roll < 0.72) {
        counting.undo(open.id);
        open.paper.strike();
      } else if (roll < 0.82) {
        counting.done(open.id);
        open.paper.done();
        if (random() < 0.6) open = null;
      } else if (roll < 0.87) {
        wire.state = ['whole', 'cutBefore', 'cutAfter'][upTo(3)];
      } else if (roll < 0.94) {
        await send();
      } else {
        // The page is killed. What the phone had not written yet is gone: at most the last touch, so the test waits for
        // all but it; whether that one is there, the phone says when it wakes.
        kills += 1;
        const before = counting.unwritten;
        if (random() < 0.5) await counting.settled();
        else if (before > 1) await Promise.race([counting.settled(), new Promise(r => setTimeout(r, 0))]);
        const inFlight = random() < 0.3 ? outbox.send().catch(() => {}) : null;
        await counting.settled();
        shelf.close();
        await inFlight?.catch?.(() => {});
        await wake();
        // A finished tray is put down.
        if (open && open.paper.isDone) open = null;
      }
    }
    // Walks back into range a day later.
    wire.state = 'whole';
    await counting.settled();
    shelf.close();
    await wake();
    await send();
    const left = (await shelf.all()).outbox.filter(e => e.state !== 'sent');
    if (left.length > 0) lost += left.length;
    expected[who] = papers.filter(p => p.paper.isDone).map(p => p.paper.look(p.load)).sort();
    shelf.close();
    indexedDB.deleteDatabase(name);
  }
  return { expected, kills, sends, lost };
}

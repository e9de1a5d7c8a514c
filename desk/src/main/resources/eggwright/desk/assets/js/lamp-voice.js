// What is heard and felt. Each finding has a pitch, a length and a shake of its own, so that the eyes stay on the egg.

/** Pitch in hertz, length in seconds, shake in milliseconds: rising with what is lost; found by ear, our own choice. */
const TICKS = {
  clear: [880, 0.04, [20]],
  blood_ring: [660, 0.06, [20, 40, 20]],
  dead: [440, 0.09, [60]],
  doubtful: [990, 0.03, [10, 30, 10, 30, 10]],
  cracked: [1320, 0.03, [15, 20, 15]],
  rot: [220, 0.14, [120]],
  wrong_end_up: [1100, 0.05, [10, 60, 30]],
  good: [1200, 0.02, [8]],
  out: [500, 0.06, [40]],
  undo: [300, 0.05, [10, 10, 10]],
  done: [740, 0.18, [60, 40, 60]],
  other: [600, 0.03, [12]],
  // Farm's limit of time out of the heat: quiet and low, never a fright.
  warn: [180, 0.3, [30, 200, 30]],
};

export class Voice {
  #air = null;
  #chosen;
  #language;

  /**
   * @param chosen gives what the person wants: {tick: boolean-like 'on'|'off', shake, speak}
   * @param language of the words
   */
  constructor(chosen, language) {
    this.#chosen = chosen;
    this.#language = language;
  }

  /** A tick for a key; 'other' for keys without one of their own. */
  tick(key) {
    const [hertz, seconds, shake] = TICKS[key] ?? TICKS.other;
    if (this.#chosen().shake !== 'off') navigator.vibrate?.(shake);
    if (this.#chosen().tick === 'off') return;
    this.#air ??= typeof AudioContext === 'undefined' ? null : new AudioContext({ latencyHint: 'interactive' });
    if (!this.#air) return;
    if (this.#air.state === 'suspended') this.#air.resume();
    const from = this.#air.currentTime;
    const tone = this.#air.createOscillator();
    const gain = this.#air.createGain();
    tone.frequency.value = hertz;
    gain.gain.setValueAtTime(0.25, from);
    gain.gain.exponentialRampToValueAtTime(0.001, from + seconds);
    tone.connect(gain).connect(this.#air.destination);
    tone.start(from);
    tone.stop(from + seconds);
  }

  /** Says words aloud, in the place of what was being said: a hand is faster than a voice. */
  say(words) {
    if (this.#chosen().speak !== 'on' || typeof speechSynthesis === 'undefined') return;
    speechSynthesis.cancel();
    const said = new SpeechSynthesisUtterance(words);
    said.lang = this.#language;
    said.rate = 1.15;
    speechSynthesis.speak(said);
  }
}

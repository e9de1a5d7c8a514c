// Keeps the screen awake while a tray is open.

export class Awake {
  #lock = null;

  async stay() {
    if (this.#lock || !navigator.wakeLock) return;
    try {
      this.#lock = await navigator.wakeLock.request('screen');
      this.#lock.addEventListener('release', () => { this.#lock = null; });
    } catch {
      // A phone that saves its battery says no; the touches are kept all the same.
    }
  }

  rest() {
    this.#lock?.release();
    this.#lock = null;
  }
}

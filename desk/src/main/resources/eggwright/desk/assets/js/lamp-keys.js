// Fingers, palms and pedals: from what the screen and the keyboard report to one press of one key.

/** A second press of a key within this time is the bounce of the first (wet fingers, worn switches). */
export const BOUNCE_MS = 120;

/** A contact wider than this, in CSS pixels, is no fingertip. A fingertip is some 16 to 20 mm across at most (memory). */
const PALM_PX = 76;

/**
 * Calls act(key) for each press of an element with data-key inside the pad. A press counts when the finger is lifted
 * from the key on which it came down; one finger at a time.
 */
export function listenToFingers(pad, act, now = () => performance.now()) {
  let down = null;
  let last = { key: null, at: -Infinity };
  const lift = () => {
    down?.element.classList.remove('down');
    down = null;
  };
  const press = element => {
    const key = element.dataset.key;
    const at = now();
    const bounced = key === last.key && at - last.at < BOUNCE_MS;
    last = { key, at };
    if (!bounced && !element.disabled) act(key);
  };
  pad.addEventListener('pointerdown', e => {
    const element = e.target.closest('[data-key]');
    if (!element || isPalm(e) || (e.pointerType === 'mouse' && e.button !== 0)) return;
    if (down) return;
    down = { element, pointer: e.pointerId };
    element.classList.add('down');
    // A key that is pressed keeps its pointer otherwise, and lifting beside it would count.
    if (element.hasPointerCapture?.(e.pointerId)) element.releasePointerCapture(e.pointerId);
  });
  pad.addEventListener('pointerup', e => {
    if (!down || e.pointerId !== down.pointer) return;
    const { element } = down;
    lift();
    const under = document.elementFromPoint(e.clientX, e.clientY)?.closest('[data-key]');
    if (under === element && !isPalm(e)) press(element);
  });
  for (const gone of ['pointercancel', 'pointerleave']) {
    pad.addEventListener(gone, e => { if (down && e.pointerId === down.pointer) lift(); });
  }
  // Keyboards, switches and readers click without a pointer.
  pad.addEventListener('click', e => {
    const element = e.target.closest('[data-key]');
    if (!element) return;
    e.preventDefault();
    if (e.detail === 0) press(element);
  });
  pad.addEventListener('contextmenu', e => e.preventDefault());
}

function isPalm(e) {
  return e.pointerType === 'touch' && (e.width > PALM_PX || e.height > PALM_PX);
}

/** Which key of a keyboard, clicker or pedal does what, until the person chooses otherwise. */
export const USUAL_BUTTONS = {
  Digit1: 'clear', Digit2: 'blood_ring', Digit3: 'dead', Digit4: 'doubtful', Digit5: 'cracked', Digit6: 'rot',
  Digit7: 'wrong_end_up', Backspace: 'undo', Enter: 'done', PageDown: 'clear', PageUp: 'undo',
};

/**
 * Calls act(key) for each button that is assigned. A button that is held does not repeat.
 *
 * @param assigned gives the assignment now in force, from the button's code to a key
 */
export function listenToButtons(target, assigned, act, now = () => performance.now()) {
  let last = { code: null, at: -Infinity };
  target.addEventListener('keydown', e => {
    if (e.repeat || e.ctrlKey || e.metaKey || e.altKey) return;
    const typing = e.target.closest?.('input, select, textarea');
    // Enter and space on a button that has the focus are that button's.
    const onButton = e.target.closest?.('button, a, summary') && (e.code === 'Enter' || e.code === 'Space');
    const key = assigned()[e.code];
    if (!key || typing || onButton) return;
    const at = now();
    const bounced = e.code === last.code && at - last.at < BOUNCE_MS;
    last = { code: e.code, at };
    e.preventDefault();
    if (!bounced) act(key);
  });
}

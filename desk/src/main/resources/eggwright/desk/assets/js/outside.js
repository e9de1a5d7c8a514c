// Places that leave their band: asked for again and again while a page is open, shown, and heard.

const ASK_AGAIN_MS = 20000;
const GIVE_UP_MS = 10000;
/** Twice unanswered may be a hiccup; a phone at the lamp is out of reach by design and says so itself. */
const DEAF_AFTER = 3;
const SOUND_AGAIN_MS = 6000;
const QUIET_MS = 30 * 60 * 1000;
const QUIET = 'eggwright-quiet';

const box = document.getElementById('outside');
const list = box?.querySelector('ul');
const isLamp = document.documentElement.dataset.look === 'lamp';
/** What is outside: a word for each place, which stays the same as long as it is. */
let keys = words(box?.dataset.key ?? '');
let missed = 0;
let air = null;

function words(key) {
  return key === '' ? [] : key.split(' ');
}

/** A button of the box. Made here: without script there is nothing to hear. */
function button(words, press) {
  const made = document.createElement('button');
  made.type = 'button';
  made.textContent = words;
  made.hidden = true;
  made.addEventListener('click', press);
  return made;
}

const sound = button(box?.dataset.sound, () => hear());
const quiet = button(box?.dataset.quiet, () => {
  localStorage.setItem(QUIET, JSON.stringify({ keys, until: Date.now() + QUIET_MS }));
  offer();
});

/** What is quiet stays so until the time is over; another place that leaves its band is heard. */
function isQuiet() {
  try {
    const kept = JSON.parse(localStorage.getItem(QUIET) ?? 'null');
    return kept !== null && kept.until > Date.now() && keys.every(key => kept.keys.includes(key));
  } catch {
    return false;
  }
}

function offer() {
  const isOut = keys.length > 0;
  quiet.hidden = !isOut || isQuiet() || air?.state !== 'running';
  sound.hidden = !isOut || isQuiet() || air?.state === 'running';
}

/** Two falling tones. Browsers let a page sound only after it was touched. */
function hear() {
  if (keys.length === 0 || isQuiet() || typeof AudioContext === 'undefined') return offer();
  air ??= new AudioContext();
  if (air.state !== 'running') air.resume().then(offer, offer);
  if (air.state === 'running') {
    [[880, 0], [660, 0.35]].forEach(([hertz, after]) => {
      const from = air.currentTime + after;
      const tone = air.createOscillator();
      const gain = air.createGain();
      tone.frequency.value = hertz;
      gain.gain.setValueAtTime(0.3, from);
      gain.gain.exponentialRampToValueAtTime(0.001, from + 0.3);
      tone.connect(gain).connect(air.destination);
      tone.start(from);
      tone.stop(from + 0.3);
    });
    box.dataset.heard = String(Number(box.dataset.heard ?? 0) + 1);
  }
  return offer();
}

function show(told) {
  const isNew = words(told.key).some(key => !keys.includes(key));
  keys = words(told.key);
  box.hidden = told.places.length === 0;
  document.body.toggleAttribute('data-outside', !box.hidden);
  // A reader speaks what changes: the degrees of a place that is out already are told without a word.
  list.parentElement.setAttribute('aria-live', isNew ? 'assertive' : 'off');
  list.replaceChildren(...told.places.map(place => {
    const item = document.createElement('li');
    const link = document.createElement('a');
    link.href = place.path;
    link.textContent = place.text;
    item.append(link);
    return item;
  }));
  if (isNew) hear();
  offer();
}

async function ask() {
  let wrong = box.dataset.deaf;
  try {
    const answer = await fetch('/api/outside', { signal: AbortSignal.timeout(GIVE_UP_MS), cache: 'no-store' });
    if (answer.ok) {
      missed = 0;
      show(await answer.json());
      return;
    }
    if (answer.status === 401 || answer.status === 403) wrong = box.dataset.gone;
  } catch {
    // Told below.
  }
  missed++;
  if (missed >= DEAF_AFTER && !isLamp) {
    show({ key: keys.join(' '), places: [{ path: location.pathname + location.search, text: wrong }] });
  }
}

if (box) {
  const keys = document.createElement('p');
  keys.className = 'keys-outside';
  keys.append(sound, quiet);
  box.append(keys);
  document.body.toggleAttribute('data-outside', !box.hidden);
  hear();
  setInterval(ask, ASK_AGAIN_MS);
  setInterval(hear, SOUND_AGAIN_MS);
  addEventListener('pointerdown', () => { if (keys.length > 0 && air && air.state !== 'running') air.resume().then(offer, offer); });
  document.addEventListener('visibilitychange', () => { if (document.visibilityState === 'visible') ask(); });
  if (isLamp) ask();
}

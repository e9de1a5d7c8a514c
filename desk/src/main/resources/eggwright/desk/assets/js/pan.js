// Charts that can be pulled along in time, and turned without leaving the place. Without script the links do the same.

const SECTION = 'read';
/** Less is a touch, not a pull. */
const LEAST_PULL_PX = 12;

let pulled = null;
let asked = 0;

const section = () => document.getElementById(SECTION);
const plots = () => [...section().querySelectorAll('svg.room-left > svg')];

/** A form of the page that is sent later comes back to what is shown now. */
function keepInForms(shown) {
  for (const form of document.querySelectorAll('form[method="get"]')) {
    for (const name of ['span', 'to']) {
      form.querySelector(`input[type="hidden"][name="${name}"]`)?.remove();
      if (shown.has(name)) {
        const kept = document.createElement('input');
        Object.assign(kept, { type: 'hidden', name, value: shown.get(name) });
        form.append(kept);
      }
    }
  }
}

/** The same page at another time; only what was read is drawn anew. */
async function turn(address, focus) {
  const mine = ++asked;
  const answer = await fetch(address).catch(() => null);
  if (mine !== asked) return;
  const fresh = answer?.ok ? new DOMParser().parseFromString(await answer.text(), 'text/html').getElementById(SECTION) : null;
  if (!fresh) {
    location.href = address;
    return;
  }
  const open = [...section().querySelectorAll('details')].map(d => d.open);
  section().replaceWith(document.adoptNode(fresh));
  section().querySelectorAll('details').forEach((d, i) => { d.open = open[i] ?? false; });
  history.replaceState(null, '', address);
  keepInForms(new URL(location.href).searchParams);
  document.getElementById('read-said').textContent = section().dataset.says;
  if (focus) (section().querySelector(focus) ?? section().querySelector('.choices a')).focus({ preventScroll: true });
}

function begin(event) {
  const chart = event.target.closest?.(`#${SECTION} svg.room-left`);
  if (!chart || event.button !== 0) return;
  pulled = { from: event.clientX, width: chart.querySelector('svg').getBoundingClientRect().width, by: 0 };
  chart.setPointerCapture(event.pointerId);
}

function pull(event) {
  if (!pulled) return;
  pulled.by = event.clientX - pulled.from;
  plots().forEach(plot => plot.setAttribute('x', pulled.by));
}

function end(event) {
  if (!pulled) return;
  const { by, width } = pulled;
  pulled = null;
  const { from, to, now, first } = section().dataset;
  const length = Date.parse(to) - Date.parse(from);
  const least = Date.parse(first) + length / 2;
  const wanted = Math.min(Date.parse(now), Math.max(Date.parse(to) - by / width * length, least));
  if (Math.abs(by) < LEAST_PULL_PX || wanted === Date.parse(to) || event.type === 'pointercancel') {
    plots().forEach(plot => plot.removeAttribute('x'));
    return;
  }
  const address = new URL(location.href);
  address.searchParams.set('span', section().dataset.span);
  if (wanted >= Date.parse(now)) address.searchParams.delete('to');
  else address.searchParams.set('to', new Date(Math.round(wanted / 60000) * 60000).toISOString());
  address.hash = '';
  turn(address.pathname + address.search, null);
}

if (section()) {
  document.addEventListener('pointerdown', begin);
  document.addEventListener('pointermove', pull);
  document.addEventListener('pointerup', end);
  document.addEventListener('pointercancel', end);
  document.addEventListener('click', event => {
    const link = event.target.closest?.(`#${SECTION} a[data-turn]`);
    if (!link || event.metaKey || event.ctrlKey || event.shiftKey) return;
    event.preventDefault();
    turn(link.getAttribute('href').replace('#readings', ''), `[data-turn="${link.dataset.turn}"]`);
  });
}

// How this person wants this phone: name, hand, what is heard, and which button of a clicker does what.

import { el, fill } from './lamp-dom.js';
import { FINDINGS } from './lamp-touches.js';
import { USUAL_BUTTONS } from './lamp-keys.js';

/** Until the person says otherwise. */
export const USUAL = {
  who: '', hand: 'right', form: 'six', places: 'off', tick: 'on', shake: 'on', speak: 'off', buttons: USUAL_BUTTONS,
};

const CHOICES = {
  hand: ['right', 'left'], form: ['six', 'two'], places: ['off', 'on'],
  tick: ['on', 'off'], shake: ['on', 'off'], speak: ['off', 'on'],
};

const ASSIGNABLE = [...FINDINGS, 'good', 'out', 'stays', 'open', 'undo', 'done'];

/**
 * Draws the choices.
 *
 * @param around {say, chosen, keep(chosen), back()}
 */
export function showSetup(root, { say, chosen, keep, back }) {
  const change = (name, value) => {
    keep({ ...chosen, [name]: value });
  };
  const buttonOf = key => Object.entries(chosen.buttons).filter(([, k]) => k === key).map(([code]) => code);
  fill(root,
    el('header', { class: 'top' }, el('button', { type: 'button', class: 'away', click: back }, say('setup.back'))),
    el('h1', {}, say('setup.title')),
    el('label', { class: 'field' }, el('span', {}, say('setup.who')),
      el('input', { type: 'text', value: chosen.who, maxlength: 60, autocomplete: 'name', change: e => change('who', e.target.value.trim()) })),
    ...Object.entries(CHOICES).map(([name, values]) => el('fieldset', {},
      el('legend', {}, say('setup.' + name)),
      ...values.map(value => el('label', { class: 'choice' },
        el('input', { type: 'radio', name, value, checked: chosen[name] === value, change: () => change(name, value) }),
        el('span', {}, say('setup.' + name + '.' + value)))))),
    el('section', {},
      el('h2', {}, say('setup.buttons')),
      el('p', {}, say('setup.buttonsHow')),
      el('ul', { class: 'buttons' }, ...ASSIGNABLE.map(key => el('li', {},
        el('span', {}, nameOf(say, key)),
        el('button', { type: 'button', class: 'key small', click: e => listenForOne(e.currentTarget, say, code => {
          const buttons = Object.fromEntries(Object.entries(chosen.buttons).filter(([c, k]) => c !== code && k !== key));
          change('buttons', { ...buttons, [code]: key });
        }) }, buttonOf(key).join(', ') || say('setup.none')))))));
}

function nameOf(say, key) {
  return FINDINGS.includes(key) ? say('finding.' + key) : say('key.' + key);
}

/** The next button pressed is taken; Escape leaves all as it was. */
function listenForOne(button, say, take) {
  button.textContent = say('setup.pressOne');
  const listen = e => {
    e.preventDefault();
    e.stopPropagation();
    document.removeEventListener('keydown', listen, true);
    if (e.code !== 'Escape') take(e.code || e.key);
    else button.textContent = say('setup.none');
  };
  document.addEventListener('keydown', listen, true);
}

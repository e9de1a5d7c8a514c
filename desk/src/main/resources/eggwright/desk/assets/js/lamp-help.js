// What each finding looks like: a picture and a sentence, for the birds and the day at hand.

import { el, fill } from './lamp-dom.js';
import { FINDINGS } from './lamp-touches.js';
import { picture, stageOf } from './lamp-pictures.js';

/**
 * @param around {say, loads, limit: {minutes, source}|null, back()}
 */
export function showHelp(root, { say, loads, limit, back }) {
  // One part for all birds among the trays at hand that look alike today.
  const parts = new Map();
  const atHand = loads.filter(l => l.due !== 'not_due');
  for (const load of atHand.length > 0 ? atHand : loads.slice(0, 1)) {
    const stage = stageOf(load.day / load.period);
    const alike = [stage, load.note].join();
    const part = parts.get(alike) ?? { stage, note: load.note, birds: new Set() };
    part.birds.add(say('help.at', load.speciesName, load.day));
    parts.set(alike, part);
  }
  fill(root,
    el('header', { class: 'top' }, el('button', { type: 'button', class: 'away', click: back }, say('setup.back'))),
    el('h1', {}, say('help.title')),
    limit === null ? null : el('p', {}, say('help.limit', limit.minutes, limit.source)),
    el('p', {}, say('help.care')),
    ...[...parts.values()].map(({ stage, note, birds }) => el('section', {},
      el('h2', {}, [...birds].join('; ')),
      note ? el('p', { class: 'note' }, note) : null,
      el('ul', { class: 'looks' }, ...['live', ...FINDINGS].map(finding => el('li', {},
        picture(finding, stage),
        el('div', {}, el('h3', {}, say('finding.' + finding)),
          el('p', {}, say('looks.' + finding + '.' + stage)))))))));
}

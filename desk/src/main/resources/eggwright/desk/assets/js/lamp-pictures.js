// What each finding looks like at the lamp, drawn by us: the egg in the light, large end up. A sketch of what to look for
// and no likeness; sizes follow the handbook's words, not a measured embryo.

const SVG = 'http://www.w3.org/2000/svg';

/** Early: the vessels spread. Middle: they fill the shell. Late: the egg is dark but for the air. */
export function stageOf(share) {
  return share < 0.42 ? 'early' : share < 0.7 ? 'middle' : 'late';
}

function part(tag, attributes, ...children) {
  const made = document.createElementNS(SVG, tag);
  for (const [name, value] of Object.entries(attributes)) made.setAttribute(name, value);
  made.append(...children);
  return made;
}

const OUTLINE = 'M50 6C74 6 90 34 90 62C90 92 72 114 50 114C28 114 10 92 10 62C10 34 26 6 50 6Z';
const line = (d, width = 2, more = {}) => part('path', { d, fill: 'none', stroke: 'currentColor', 'stroke-width': width, 'stroke-linecap': 'round', ...more });
const mass = (d, more = {}) => part('path', { d, fill: 'currentColor', ...more });
const air = depth => line(`M${50 - depth * 1.6} ${10 + depth}Q50 ${16 + depth} ${50 + depth * 1.6} ${10 + depth}`, 2);

const AIR = { early: 10, middle: 15, late: 22 };

const DRAWN = {
  live: {
    early: () => [part('circle', { cx: 50, cy: 52, r: 4, fill: 'currentColor' }),
      ...['M50 52Q36 44 26 48', 'M50 52Q40 62 30 66', 'M50 52Q64 42 74 46', 'M50 52Q62 62 72 68', 'M50 52Q50 38 46 32', 'M50 52Q52 66 50 78'].map(d => line(d))],
    middle: () => [mass('M34 52Q50 40 66 52Q72 70 50 80Q28 70 34 52Z'),
      ...['M34 50Q22 46 16 52', 'M66 50Q78 46 84 52', 'M36 72Q26 84 22 88', 'M64 72Q74 84 78 88', 'M44 40Q40 32 38 28', 'M56 40Q60 32 62 28'].map(d => line(d))],
    late: () => [mass('M14 50Q32 34 50 38Q70 32 86 50Q92 92 50 112Q8 92 14 50Z'), line('M28 38Q34 30 32 26'), line('M68 36Q64 30 68 26')],
  },
  clear: {
    early: () => [part('circle', { cx: 52, cy: 62, r: 20, fill: 'currentColor', opacity: 0.18 })],
    middle: () => [part('circle', { cx: 54, cy: 66, r: 22, fill: 'currentColor', opacity: 0.22 })],
    late: () => [part('circle', { cx: 54, cy: 70, r: 24, fill: 'currentColor', opacity: 0.26 })],
  },
  blood_ring: {
    early: () => [part('ellipse', { cx: 50, cy: 58, rx: 22, ry: 18, fill: 'none', stroke: 'currentColor', 'stroke-width': 3 })],
    middle: () => [part('ellipse', { cx: 50, cy: 60, rx: 25, ry: 20, fill: 'none', stroke: 'currentColor', 'stroke-width': 3 }), part('circle', { cx: 50, cy: 60, r: 3, fill: 'currentColor' })],
    late: () => [part('ellipse', { cx: 50, cy: 64, rx: 26, ry: 20, fill: 'none', stroke: 'currentColor', 'stroke-width': 3 })],
  },
  dead: {
    early: () => [mass('M40 56Q50 50 60 58Q58 66 48 66Q40 64 40 56Z', { opacity: 0.7 }), line('M34 74Q48 80 64 72', 3, { opacity: 0.5 })],
    middle: () => [mass('M30 60Q52 50 70 62Q74 82 50 88Q28 84 30 60Z', { opacity: 0.5 }), line('M24 50l6 4', 2, { 'stroke-dasharray': '2 5' }), line('M76 48l-8 6', 2, { 'stroke-dasharray': '2 5' })],
    late: () => [mass('M13 54L87 54Q92 92 50 112Q8 92 13 54Z', { opacity: 0.85 })],
  },
  doubtful: {
    early: () => [mass('M38 54Q52 46 62 58Q56 70 44 68Q36 64 38 54Z', { opacity: 0.35 })],
    middle: () => [mass('M26 56Q50 44 74 58Q78 84 50 92Q24 84 26 56Z', { opacity: 0.35 })],
    late: () => [mass('M14 50Q50 40 86 50Q92 92 50 112Q8 92 14 50Z', { opacity: 0.55 })],
  },
  cracked: {
    early: () => [line('M30 28l8 10-5 9 10 12-4 10 8 8', 3)],
    middle: () => [line('M30 28l8 10-5 9 10 12-4 10 8 8', 3), line('M38 38l9 0', 2)],
    late: () => [line('M66 24l-6 12 6 8-9 12 5 10', 3), line('M60 36l-9 2', 2)],
  },
  rot: {
    early: () => [mass(OUTLINE, { opacity: 0.45 }), part('circle', { cx: 40, cy: 60, r: 8, fill: 'currentColor', opacity: 0.6 }), part('circle', { cx: 60, cy: 78, r: 6, fill: 'currentColor', opacity: 0.6 })],
    middle: () => [mass(OUTLINE, { opacity: 0.65 }), part('circle', { cx: 38, cy: 56, r: 9, fill: 'currentColor' })],
    late: () => [mass(OUTLINE, { opacity: 0.9 })],
  },
  wrong_end_up: {
    early: () => [line('M34 104Q50 96 66 104'), line('M50 40v40', 3), line('M42 72l8 9 8-9', 3)],
    middle: () => [line('M32 101Q50 92 68 101'), line('M50 36v40', 3), line('M42 68l8 9 8-9', 3)],
    late: () => [line('M28 96Q50 86 72 96'), line('M50 30v40', 3), line('M42 62l8 9 8-9', 3)],
  },
};

/** A picture of a finding at a stage; it says nothing to a reader, for the words stand beside it. */
export function picture(finding, stage) {
  const upright = finding !== 'wrong_end_up';
  return part('svg', { viewBox: '0 0 100 120', 'aria-hidden': 'true', class: 'egg' },
    line(OUTLINE, 2), ...(upright ? [air(AIR[stage])] : []), ...DRAWN[finding][stage]());
}

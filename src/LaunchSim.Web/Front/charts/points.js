// @ts-check
import { svg } from '../elements.js';
import { rounded } from './text.js';
import { nameBeside } from './names.js';

/** @typedef {import('./boxes.js').Box} Box */
/** @typedef {import('./plane.js').Plane} Plane */

/**
 * Points of curves that have a name, and times between two points.
 * @param {import('./data.js').ChartData} data
 * @param {Plane} plane
 * @param {ReadonlyArray<Float64Array>} profiles The lines that words avoid.
 * @param {Box[]} taken Where words are; theirs are added.
 * @param {(text: string) => number} ruler
 */
export function points(data, plane, profiles, taken, ruler) {
  const group = svg('g');
  /** @type {Array<{ at: { x: number, y: number }, text: string }>} */
  const brackets = [];
  for (const { first, second, text } of data.spans ?? []) {
    const from = { x: plane.x(first.time), y: plane.y(first.value) };
    const to = { x: plane.x(second.time), y: plane.y(second.value) };
    if (!isIn(from, plane) || !isIn(to, plane)) {
      continue;
    }

    group.append(svg('path', { d: `M${rounded(from.x)} ${rounded(from.y)}H${rounded(to.x)}m0 -4v8`, class: 'chart-span' }));
    group.append(svg('path', { d: `M${rounded(to.x)} ${rounded(from.y)}V${rounded(to.y)}`, class: 'chart-span-fall' }));
    brackets.push({ at: { x: Math.max(from.x, to.x), y: from.y }, text });
  }

  const seen = (data.dots ?? []).map((dot) => ({ ...dot, at: { x: plane.x(dot.time), y: plane.y(dot.value) } })).filter((dot) => isIn(dot.at, plane));
  for (const { at } of seen) {
    taken.push({ left: at.x - 5, top: at.y - 5, right: at.x + 5, bottom: at.y + 5 });
  }

  /** @param {Parameters<typeof nameBeside>[2]} at @param {string} text @param {string} className @param {boolean} above */
  const name = (at, text, className, above) => {
    const placed = text === '' ? null : nameBeside(text, className, at, above, profiles, taken, plane, ruler);
    group.append(...(placed === null ? [] : [placed]));
  };
  brackets.forEach(({ at, text }) => name(at, text, 'chart-name tone-ink', true));
  for (const { at, text, tone, above, ring } of seen) {
    group.append(svg('circle', { cx: rounded(at.x), cy: rounded(at.y), r: ring ? 3.5 : 4, class: `${ring ? 'chart-ring' : 'chart-dot'} tone-${tone}` }));
    name(at, text, `chart-dot-name tone-${tone}`, above);
  }

  return group;
}

/** @param {{ x: number, y: number }} at @param {Plane} plane */
function isIn(at, plane) {
  return at.x >= plane.left && at.x <= plane.right && at.y >= plane.top && at.y <= plane.bottom;
}

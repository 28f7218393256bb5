// @ts-check
import { svg } from '../elements.js';
import { rounded, words } from './text.js';

/** @typedef {import('./plane.js').Plane} Plane */
/** @typedef {ReturnType<typeof import('./ticks.js').ticksOf>} Ticks */

/**
 * Grid, numbers, the line of zero and the axis of time.
 * @param {Plane} plane
 * @param {Ticks} across
 * @param {Ticks} up
 * @param {import('./layout.js').Layout} layout
 */
export function axes(plane, across, up, layout) {
  const { left, right, top, bottom } = plane;
  let grid = '';
  const numbers = [];
  up.values.forEach((value, i) => {
    const y = rounded(plane.y(value));
    grid += `M${left} ${y}H${right}`;
    numbers.push(words(up.texts[i], left - 7, y + 4, 'chart-number chart-left'));
  });
  across.values.forEach((time, i) => {
    const x = rounded(plane.x(time));
    grid += `M${x} ${top}V${bottom}`;
    numbers.push(words(across.texts[i], x, bottom + 16, 'chart-number chart-middle'));
  });

  // What the numbers below count, beside them or below.
  numbers.push(layout.isWide ? words('s from release', right + 14, bottom + 16, 'chart-number') : words('s from release', right, bottom + 31, 'chart-number chart-left'));
  const lines = [svg('path', { d: grid, class: 'chart-grid' }), svg('path', { d: `M${left} ${bottom}H${right}`, class: 'chart-axis' })];
  if (plane.low < 0 && plane.high > 0) {
    const zero = rounded(plane.y(0));
    lines.push(svg('path', { d: `M${left} ${zero}H${right}`, class: 'chart-axis' }));
  }

  return svg('g', {}, ...lines, ...numbers);
}

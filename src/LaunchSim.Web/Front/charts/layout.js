// @ts-check
import { LANE, placesOf } from './lanes.js';
import { TEXT } from './ruler.js';

/** Room beside the plot for names, px. */
export const GUTTER = 124;

// From this width on names stand beside the plot, px; below there is no room to spare.
const WIDE = 560;

// Room for the numbers: beside, which grows with them, and below.
const NUMBERS = 48;
const BELOW = 21;
const CAPTION = 15;
const TOP = 8;
const RIGHT = 10;

// More lanes of events than these push the plot away.
const LANES = { wide: 3, narrow: 2 };

/**
 * How a chart of some width is laid out, px. It does not depend on the part of the time that is shown, so that nothing
 * jumps while that changes.
 *
 * @typedef {object} Layout
 * @property {number} width
 * @property {number} height
 * @property {number} top Of the plot, below the lanes.
 * @property {number} bottom Of the plot.
 * @property {number} right Of the plot.
 * @property {boolean} isWide
 * @property {number} lanes How many lanes of events there are.
 */

/**
 * @param {number} width
 * @param {import('./data.js').ChartData} data
 * @param {number} duration The whole run, s.
 * @param {(text: string) => number} ruler
 * @returns {Layout}
 */
export function layoutOf(width, data, duration, ruler) {
  const isWide = width >= WIDE;
  const right = width - (isWide ? GUTTER : RIGHT);
  const lanes = lanesOf(data, { left: NUMBERS, right, from: 0, to: duration, x: (time) => NUMBERS + (time / duration) * (right - NUMBERS) }, width, isWide, ruler);
  const top = TOP + lanes * LANE;
  const plot = Math.round(isWide ? Math.min(270, Math.max(190, 0.26 * width)) : Math.min(210, Math.max(160, 0.5 * width)));
  const bottom = top + plot;
  return { width, height: bottom + BELOW + (isWide ? 0 : CAPTION), top, bottom, right, isWide, lanes };
}

/**
 * @param {import('./data.js').ChartData} data
 * @param {Parameters<typeof placesOf>[1]} whole
 * @param {number} width
 * @param {boolean} isWide
 * @param {(text: string) => number} ruler
 */
function lanesOf({ marks = [], curves }, whole, width, isWide, ruler) {
  const launches = 1 + Math.max(0, ...curves.map((curve) => curve.launch));
  return marks.length === 0 ? 0
    : launches > 1 ? launches
    : 1 + Math.max(...placesOf(marks, whole, width, isWide ? LANES.wide : LANES.narrow, false, ruler).map(({ lane }) => lane), 0);
}

/**
 * Where the plot begins on the left: right of the widest number.
 * @param {ReadonlyArray<string>} numbers
 * @param {(text: string) => number} ruler
 */
export function leftOf(numbers, ruler) {
  return Math.max(NUMBERS, ...numbers.map((number) => Math.ceil(ruler(number)) + TEXT.size));
}

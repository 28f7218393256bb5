// @ts-check

/**
 * Where times and values lie on a chart, in its pixels.
 *
 * @typedef {object} Plane
 * @property {number} left
 * @property {number} top
 * @property {number} right
 * @property {number} bottom
 * @property {number} from The time at the left, s.
 * @property {number} to The time at the right, s.
 * @property {number} low The value at the bottom.
 * @property {number} high The value at the top.
 * @property {(time: number) => number} x
 * @property {(value: number) => number} y
 * @property {(x: number) => number} time
 */

// Beyond any chart; numbers larger than that are no coordinates.
const FAR = 1e5;

/**
 * @param {{ left: number, top: number, right: number, bottom: number }} area
 * @param {{ from: number, to: number }} span
 * @param {{ low: number, high: number }} extent
 * @returns {Plane}
 */
export function createPlane({ left, top, right, bottom }, { from, to }, { low, high }) {
  const across = (right - left) / (to - from);
  const up = (bottom - top) / (high - low);
  return {
    left,
    top,
    right,
    bottom,
    from,
    to,
    low,
    high,
    x: (time) => left + (time - from) * across,
    y: (value) => Math.min(FAR, Math.max(-FAR, bottom - (value - low) * up)),
    time: (x) => from + (x - left) / across,
  };
}

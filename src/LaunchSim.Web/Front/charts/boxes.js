// @ts-check

/**
 * Rectangles that are taken, and lines that words had better not cover, px.
 * @typedef {{ left: number, top: number, right: number, bottom: number }} Box
 */

/** Pixels between two points at which lines are looked at. */
export const STRIDE = 4;

/**
 * A line seen as its height at every few pixels from the plot's left on; not a number where it is not.
 * @param {import('./data.js').Curve} curve
 * @param {import('./plane.js').Plane} plane
 * @param {(times: Float64Array, values: Float64Array, time: number) => number} valueAt
 */
export function profileOf(curve, plane, valueAt) {
  const profile = new Float64Array(Math.max(0, Math.floor((plane.right - plane.left) / STRIDE) + 1));
  for (let i = 0; i < profile.length; i++) {
    profile[i] = plane.y(valueAt(curve.times, curve.values, plane.time(plane.left + i * STRIDE)));
  }

  return profile;
}

/**
 * The highest and the lowest a profile gets within a part of the width, y growing downwards.
 * @param {Float64Array} profile
 * @param {number} first
 * @param {number} last
 */
export function reachOf(profile, first, last) {
  let top = Infinity;
  let bottom = -Infinity;
  for (let i = Math.max(0, first); i <= Math.min(profile.length - 1, last); i++) {
    if (Number.isFinite(profile[i])) {
      top = Math.min(top, profile[i]);
      bottom = Math.max(bottom, profile[i]);
    }
  }

  return { top, bottom };
}

/** @param {Box} one @param {Box} other */
export function overlap(one, other) {
  return one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom;
}

/**
 * How far a box is from a profile, px; below zero where it is crossed.
 * @param {Box} box
 * @param {Float64Array} profile
 * @param {number} left Where the profile begins.
 */
export function clearance(box, profile, left) {
  const { top, bottom } = reachOf(profile, Math.floor((box.left - left) / STRIDE), Math.ceil((box.right - left) / STRIDE));
  return top > bottom ? Infinity : Math.max(top - box.bottom, box.top - bottom);
}

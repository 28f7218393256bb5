// @ts-check
import { letterOf } from '../data.js';

/** @typedef {import('../view.js').LaunchView} LaunchView */

// Titles of charts with several launches, in the words of the pictures on paper.

/** @param {LaunchView} view */
export function risesTitle(view) {
  return `Rise lag: ${each(view, 'rise_lag_s', 'lag')}; largest separation: ${each(view, 'separation_peak_m', 'travel')}`;
}

/** @param {LaunchView} view */
export function loadsTitle(view) {
  return `The hit: ${each(view, 'hit_n', 'force')}; the low point: ${each(view, 'lowest_rear_load_after_hit_n', 'force')}`;
}

/** @param {LaunchView} view */
export function speedsTitle(view) {
  return `Fastest opening of the rear dampers: ${each(view, 'rear_damper_extension_speed_largest_mps', 'shaftSpeed')}`;
}

/** @param {LaunchView} view */
export function gripTitle(view) {
  const spare = { unit: '%', factor: 0.01, decimals: 0 };
  return `Grip to spare: ${list(view, (launch) => {
    const margin = view.figure(launch, 'grip_margin_lowest_ratio');
    return view.figure(launch, 'slip_beyond_peak_first_s') !== null ? 'none, it spins' : margin === null ? 'none' : view.text(margin, spare);
  })}`;
}

/** @param {LaunchView} view */
export function percentTitle(view) {
  return `Percent standing: ${list(view, ({ car }) => (car.line.percent === null ? 'beyond all bounds' : view.text(car.line.percent, view.unit('percent'))))}`;
}

/** @param {LaunchView} view @param {string} figure @param {string} unit */
function each(view, figure, unit) {
  return list(view, (launch) => {
    const value = view.figure(launch, figure);
    return value === null ? 'none' : view.text(value, view.unit(unit));
  });
}

/** @param {LaunchView} view @param {(launch: import('../view.js').Launch) => string} words */
function list(view, words) {
  // A letter and its number stay in one line.
  return view.launches.map((launch, i) => `${letterOf(i)} ${words(launch)}`.replaceAll(' ', '\u00a0')).join(', ');
}

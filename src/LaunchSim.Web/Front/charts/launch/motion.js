// @ts-check
import { DRIVE } from './events.js';

/** @typedef {import('../view.js').LaunchView} LaunchView */
/** @typedef {import('../data.js').ChartData} ChartData */

// As much as is worth drawing at the least: m/s, m/s².
const LEAST_SPEED = 1;
const LEAST_ACCELERATION = 1;

/** @param {LaunchView} view @returns {ChartData} */
export function speed(view) {
  const unit = view.unit('speed');
  return {
    name: 'speed',
    title: 'Speed along the track',
    explanation: '',
    unit: unit.unit,
    decimals: unit.decimals,
    zero: true,
    least: LEAST_SPEED / unit.factor,
    marks: view.marks([]),
    curves: view.curves('speed_mps', unit, { name: 'speed', tone: 'ink' }),
  };
}

/** @param {LaunchView} view @returns {ChartData} */
export function acceleration(view) {
  const unit = view.unit('acceleration');
  return {
    name: 'acceleration',
    title: 'Acceleration along the track',
    explanation: '',
    unit: unit.unit,
    decimals: unit.decimals,
    zero: true,
    least: LEAST_ACCELERATION / unit.factor,
    marks: view.marks(DRIVE),
    curves: view.curves('acceleration_mps2', unit, { name: 'acceleration', tone: 'ink' }),
  };
}

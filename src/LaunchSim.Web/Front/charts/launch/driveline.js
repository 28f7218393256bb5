// @ts-check
import { DRIVE } from './events.js';

/** @typedef {import('../view.js').LaunchView} LaunchView */
/** @typedef {import('../data.js').ChartData} ChartData */

// As much as is worth drawing at the least: N·m, rad/s.
const LEAST_TORQUE = 200;
const LEAST_SPEED = 100;

/** @param {LaunchView} view @returns {ChartData} */
export function axleTorque(view) {
  const unit = view.unit('torque');
  return {
    name: 'axle-torque',
    title: 'Torque of both axle shafts together',
    explanation: '',
    unit: unit.unit,
    decimals: unit.decimals,
    zero: true,
    least: LEAST_TORQUE / unit.factor,
    marks: view.marks(DRIVE),
    curves: view.curves('axle_torque_nm', unit, { name: 'axle shafts', end: 'rear', tone: 'rear' }),
  };
}

/**
 * The engine's speed, of cars that have one.
 * @param {LaunchView} view
 * @returns {ChartData[]}
 */
export function engineSpeed(view) {
  const unit = view.unit('rotation');
  return view.launches.every((launch) => launch.columns.engine_speed_radps === undefined) ? [] : [{
    name: 'engine-speed',
    title: 'Engine speed',
    explanation: '',
    unit: unit.unit,
    decimals: unit.decimals,
    zero: true,
    least: LEAST_SPEED / unit.factor,
    marks: view.marks(DRIVE),
    curves: view.curves('engine_speed_radps', unit, { name: 'engine', tone: 'ink', reason: 'the scenario enters the torque of the axle shafts, not an engine' }),
  }];
}

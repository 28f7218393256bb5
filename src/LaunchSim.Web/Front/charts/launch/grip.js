// @ts-check
import { numberText } from '../data.js';
import { valueAt } from '../sample.js';
import { GRIP } from './events.js';

/** @typedef {import('../view.js').LaunchView} LaunchView */
/** @typedef {import('../data.js').ChartData} ChartData */

// A slip that is worth the whole height at the least.
const LEAST_SLIP = 0.1;
const RATIO = { unit: '', factor: 1, decimals: 3 };

/** @param {LaunchView} view @returns {ChartData} */
export function grip(view) {
  const unit = view.unit('force');
  return {
    name: 'grip',
    title: 'Thrust and available grip, both rear tyres',
    explanation: 'How hard they push, solid, and how hard they could at the load that they carry, dotted.',
    unit: unit.unit,
    decimals: unit.decimals,
    zero: true,
    least: (0.2 * view.launches[0].car.rear.load) / unit.factor,
    marks: view.marks(GRIP),
    curves: [
      ...view.curves('rear_grip_limit_n', unit, { name: 'available grip', end: 'rear', tone: 'ink', style: 'dot' }),
      ...view.curves('rear_tire_thrust_n', unit, { name: 'thrust', end: 'rear', tone: 'rear', style: 'solid' }),
    ],
    dots: view.launches.flatMap((launch, i) => {
      const margin = view.figure(launch, 'grip_margin_lowest_ratio');
      const time = view.figure(launch, 'grip_margin_lowest_time_s');
      const thrust = launch.columns.rear_tire_thrust_n;
      if (margin === null || time === null || thrust === undefined) {
        return [];
      }

      const spare = numberText(100 * margin, 0);
      const text = spare === '0' ? 'no grip to spare' : `${spare} % to spare`;
      return [{ time, value: valueAt(launch.times, thrust, time) / unit.factor, text: view.named(i, text), tone: view.tone(i, 'rear'), above: false }];
    }),
  };
}

/** @param {LaunchView} view @returns {ChartData} */
export function slip(view) {
  return {
    name: 'slip',
    title: 'Slip of the rear tyres, ratio',
    explanation: '1 is a standing spin.',
    unit: RATIO.unit,
    decimals: RATIO.decimals,
    zero: true,
    least: LEAST_SLIP,
    marks: view.marks(GRIP),
    curves: view.curves('rear_slip_ratio', RATIO, { name: 'slip', end: 'rear', tone: 'rear' }),
    levels: view.levels(({ car }) => car.rear.peakSlip, (value) => `past ${Number(value.toFixed(3))} the grip falls`, 'muted'),
  };
}

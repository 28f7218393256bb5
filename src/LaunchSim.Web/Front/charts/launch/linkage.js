// @ts-check
import { hasValue } from '../data.js';

/** @typedef {import('../view.js').LaunchView} LaunchView */
/** @typedef {import('../data.js').ChartData} ChartData */

// A centre this many wheelbases away, and percent this far from the standing one, are on their way to infinity.
const FAR_AWAY = 3;
const FAR_PERCENT = 300;

// As much as is worth drawing at the least: percent, m, degrees.
const LEAST_PERCENT = 20;
const LEAST_PLACE = 0.254;
const LEAST_ANGLE = 2;

/** @param {LaunchView} view @returns {ChartData} */
export function percent(view) {
  const unit = view.unit('percent');
  const curves = view.launches.map((launch, i) => {
    const standing = launch.car.line.percent ?? 100;
    return view.curve(i, near(view.values(launch, 'anti_squat_percent', unit), standing, FAR_PERCENT), { name: 'percent', end: 'rear', tone: 'rear' });
  });
  return {
    name: 'percent',
    title: 'Percent anti-squat',
    explanation: 'At 100 % body and axle are pushed neither apart nor together; above, apart.',
    unit: unit.unit,
    decimals: unit.decimals,
    least: LEAST_PERCENT,
    marks: view.marks([]),
    curves,
    levels: [{ value: 100, text: '100 %: neutral', tone: 'muted' }],
  };
}

/** @param {LaunchView} view @returns {ChartData} */
export function instantCentre(view) {
  const unit = view.unit('place');
  const reason = 'the bars are parallel or nearly so, and the instant centre is too far away';
  const curves = ['instant_centre_ahead_m', 'instant_centre_up_m'].flatMap((column, k) =>
    view.launches.map((launch, i) => {
      const reach = (FAR_AWAY * launch.car.wheelbase) / unit.factor;
      const name = k === 0 ? 'ahead of the rear axle' : 'above the ground';
      return view.curve(i, near(view.values(launch, column, unit), 0, reach), { name: view.several ? ['ahead', 'up'][k] : name, end: 'rear', tone: k === 0 ? 'rear' : 'fourth', style: k === 0 ? 'solid' : 'dash', reason });
    }),
  );
  return {
    name: 'instant-centre',
    title: 'Instant centre',
    explanation: `${view.several ? 'Ahead of the rear axle solid, above the ground dashed. ' : ''}What is too far away to be drawn leaves a gap.`,
    unit: unit.unit,
    decimals: unit.decimals,
    zero: true,
    least: LEAST_PLACE / unit.factor,
    marks: view.marks([]),
    curves,
    ...(curves.some(({ values }) => hasValue(values)) ? {} : { reason: `No value in this run: ${reason}.` }),
  };
}

/** @param {LaunchView} view @returns {ChartData} */
export function pinion(view) {
  const unit = view.unit('angle');
  return {
    name: 'pinion',
    title: 'Turn of the pinion against the body since standing',
    explanation: 'Nose up above zero.',
    unit: unit.unit,
    decimals: unit.decimals,
    zero: true,
    least: LEAST_ANGLE,
    marks: view.marks([]),
    curves: view.curves('pinion_change_rad', unit, { name: 'pinion', end: 'rear', tone: 'rear' }),
  };
}

// What goes farther than that leaves a gap.
/** @param {Float64Array} values @param {number} middle @param {number} reach */
function near(values, middle, reach) {
  return values.map((value) => (Math.abs(value - middle) <= reach ? value : NaN));
}

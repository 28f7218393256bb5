// @ts-check
import { hasValue } from '../data.js';
import { LOADS } from './events.js';

/** @typedef {import('../view.js').LaunchView} LaunchView */
/** @typedef {import('../view.js').Launch} Launch */
/** @typedef {import('../data.js').ChartData} ChartData */
/** @typedef {import('../data.js').Tone} Tone */

// As much as is worth drawing at the least, N.
const LEAST = 500;

/**
 * The forces of the bars; of ladder bars, which have no upper and lower one, what they lift.
 * @param {LaunchView} view
 * @returns {ChartData[]}
 */
export function bars(view) {
  const isLadder = view.launches.map((launch) => launch.columns.upper_link_force_n === undefined);
  return [...(isLadder.every((is) => is) ? [] : [links(view)]), ...(isLadder.some((is) => is) ? [ladderBars(view)] : [])];
}

/** @param {LaunchView} view @returns {ChartData} */
function links(view) {
  const unit = view.unit('force');
  const reason = 'ladder bars have no upper and lower bar';
  const curves = [
    ...view.curves('upper_link_force_n', unit, { name: view.several ? 'upper' : 'upper bar', end: 'rear', tone: 'fourth', style: 'dash', reason }),
    ...view.curves('lower_link_force_n', unit, { name: view.several ? 'lower' : 'lower bar', end: 'rear', tone: 'rear', style: 'solid', reason }),
  ];
  return {
    name: 'bar-forces',
    title: 'Force along the bars, each side',
    explanation: `Pull above zero, push below${view.several ? '; lower bar solid, upper dashed' : ''}. These are the model's bars; whether yours are strong enough they cannot say.`,
    unit: unit.unit,
    decimals: unit.decimals,
    zero: true,
    least: LEAST / unit.factor,
    marks: view.marks(LOADS),
    curves,
    dots: curves.filter(({ values }) => hasValue(values)).map(({ times, values, tone, launch }) => {
      const most = largest(values);
      const value = values[most];
      return { time: times[most], value, text: view.named(launch, view.text(Math.abs(value) * unit.factor, unit)), tone, above: value > 0 };
    }),
  };
}

/** @param {LaunchView} view @returns {ChartData} */
function ladderBars(view) {
  const unit = view.unit('force');
  return {
    name: 'ladder-bar-lift',
    title: 'Lift of the ladder bars at the pivot, both together, change since standing',
    explanation: "Above zero they lift the body more than standing. Their push along the track, the thrust but for the axle's inertia, is left out.",
    unit: unit.unit,
    decimals: unit.decimals,
    zero: true,
    least: LEAST / unit.factor,
    marks: view.marks(LOADS),
    curves: view.launches.flatMap((launch, i) => (launch.columns.upper_link_force_n === undefined ? [view.curve(i, view.values(launch, 'load_via_links_n', unit), { name: 'ladder bars', end: 'rear', tone: 'rear' })] : [])),
  };
}

/** @param {Float64Array} values */
function largest(values) {
  let most = -1;
  for (let i = 0; i < values.length; i++) {
    most = Number.isFinite(values[i]) && (most < 0 || Math.abs(values[i]) > Math.abs(values[most])) ? i : most;
  }

  return most;
}

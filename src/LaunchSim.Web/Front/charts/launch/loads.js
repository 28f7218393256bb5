// @ts-check
import { resampled } from '../sample.js';
import { LOADS } from './events.js';

/** @typedef {import('../view.js').LaunchView} LaunchView */
/** @typedef {import('../view.js').Launch} Launch */
/** @typedef {import('../view.js').Look} Look */
/** @typedef {import('../data.js').ChartData} ChartData */

// Share of the standing car's load that is worth the whole height at the least; a change of load that is none, N.
const LEAST = 0.2;
const NOTHING = 2;

/** @type {ReadonlyArray<{ column: string, look: Look }>} */
const PATHS = [
  { column: 'load_via_links_n', look: { name: 'links', tone: 'rear', style: 'solid' } },
  { column: 'load_via_springs_n', look: { name: 'springs', tone: 'front', style: 'dash' } },
  { column: 'load_via_dampers_n', look: { name: 'dampers and stops', tone: 'third', style: 'dot', weight: 2.8 } },
  { column: 'load_via_other_n', look: { name: 'wheelie bar and inertia', tone: 'fourth', style: 'solid', weight: 1.3 } },
];

/** @param {LaunchView} view @returns {ChartData} */
export function tyreLoads(view) {
  const unit = view.unit('force');
  return {
    name: 'tyre-loads',
    title: 'Tyre loads, both tyres of an axle',
    explanation: `Dotted: the standing car. The hit is the rear's largest in the first 0.3 s${view.several ? '; rear solid, front dashed' : ''}.`,
    unit: unit.unit,
    decimals: unit.decimals,
    zero: true,
    least: least(view),
    marks: view.marks(LOADS),
    ...(view.bandText === undefined ? {} : { band: view.bandText }),
    curves: [
      ...view.curves('rear_tire_load_n', unit, { name: view.several ? 'rear' : 'rear tyres', end: 'rear', tone: 'rear', style: 'solid', band: 'rear_tire_load_n' }),
      ...view.curves('front_tire_load_n', unit, { name: view.several ? 'front' : 'front tyres', end: 'front', tone: 'front', style: 'dash', band: 'front_tire_load_n' }),
    ],
    levels: [
      ...view.levels(({ car }) => car.rear.load / unit.factor, (value) => `rear standing ${view.text(value * unit.factor, unit)}`, 'rear'),
      ...view.levels(({ car }) => car.front.load / unit.factor, (value) => `front standing ${view.text(value * unit.factor, unit)}`, 'front'),
    ],
    dots: view.launches.flatMap((launch, i) => [...hit(view, launch, i), ...low(view, launch, i)]),
  };
}

/**
 * What each path gives the rear tyres, or, with several launches, what it gives more or less than in the first.
 * @param {LaunchView} view
 * @returns {ChartData[]}
 */
export function loadPaths(view) {
  return view.several ? view.launches.slice(1).map((_, i) => difference(view, i + 1)) : [paths(view)];
}

/** @param {LaunchView} view @returns {ChartData} */
function paths(view) {
  const unit = view.unit('force');
  const [launch] = view.launches;
  const total = view.values(launch, 'rear_tire_load_n', unit).map((load) => load - launch.car.rear.load / unit.factor);
  return {
    name: 'rear-load-by-path',
    title: 'Change of the rear tyre load by path, both tyres',
    explanation: 'What each way from the body to the tyres adds to the standing load, or takes from it; the thick line is the sum of all.',
    unit: unit.unit,
    decimals: unit.decimals,
    zero: true,
    least: least(view),
    marks: view.marks(LOADS),
    curves: [view.curve(0, total, { name: 'sum', tone: 'ink', style: 'solid', weight: 3.2 }), ...PATHS.map(({ column, look }) => view.curve(0, view.values(launch, column, unit), pathLook(look, launch)))],
  };
}

/** @param {LaunchView} view @param {number} index @returns {ChartData} */
function difference(view, index) {
  const unit = view.unit('force');
  const [first] = view.launches;
  const other = view.launches[index];
  const name = view.named(index, '');
  const curves = PATHS.map(({ column, look }) => {
    const before = resampled(first.times, view.values(first, column, unit), other.times);
    const values = view.values(other, column, unit).map((value, i) => value - before[i]);
    return { ...view.curve(index, values, look), launch: 0, label: pathLook(look, other).name, tone: look.tone ?? 'ink', weight: look.weight ?? 2.3 };
  });
  return {
    name: `rear-load-by-path-${index}`,
    title: `Rear tyre load by path, ${name} less ${view.named(0, '')}`,
    explanation: 'At the same instant: above zero the path gives more or takes less, below zero the other way.',
    unit: unit.unit,
    decimals: unit.decimals,
    zero: true,
    least: least(view) / 2,
    curves,
  };
}

/** @param {Look} look @param {Launch} launch @returns {Look} */
function pathLook(look, launch) {
  return look.name === 'links' && launch.columns.upper_link_force_n === undefined ? { ...look, name: 'ladder bars' }
    : look.name === 'wheelie bar and inertia' && launch.columns.wheelie_bar_force_n?.some((force) => force !== 0) !== true ? { ...look, name: "axle's inertia" }
    : look;
}

/** @param {LaunchView} view */
function least(view) {
  return (LEAST * view.launches[0].car.rear.load) / view.unit('force').factor;
}

/** @param {LaunchView} view @param {Launch} launch @param {number} index */
function hit(view, launch, index) {
  const value = view.figure(launch, 'hit_n');
  return value === null || Math.abs(value - launch.car.rear.load) < NOTHING ? [] : dot(view, launch, index, value, 'hit_time_s', 'hit', true);
}

// A run may end while the load still rises: then there is no low point after the hit.
/** @param {LaunchView} view @param {Launch} launch @param {number} index */
function low(view, launch, index) {
  const value = view.figure(launch, 'lowest_rear_load_after_hit_n');
  const time = view.figure(launch, 'lowest_rear_load_after_hit_time_s');
  const hitTime = view.figure(launch, 'hit_time_s');
  return value === null || time === null || hitTime === null || time <= hitTime ? [] : dot(view, launch, index, value, 'lowest_rear_load_after_hit_time_s', 'low point', false);
}

/**
 * @param {LaunchView} view
 * @param {Launch} launch
 * @param {number} index
 * @param {number} value
 * @param {string} timeKey
 * @param {string} word
 * @param {boolean} above
 * @returns {import('../data.js').Dot[]}
 */
function dot(view, launch, index, value, timeKey, word, above) {
  const unit = view.unit('force');
  const time = view.figure(launch, timeKey);
  return time === null ? [] : [{ time, value: value / unit.factor, text: view.several ? view.named(index, view.text(value, unit)) : `${word} ${view.text(value, unit)}`, tone: view.tone(index, 'rear'), above }];
}

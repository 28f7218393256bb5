// @ts-check
import { MOVING } from './events.js';

/** @typedef {import('../view.js').LaunchView} LaunchView */
/** @typedef {import('../data.js').ChartData} ChartData */

// The smallest extent worth drawing, the gap that counts as a first move, and what nobody sees, m.
const LEAST = 0.0127;
const FIRST_MOVE = 6.35e-3;
const SEEN = 0.0005;

// Less than these is not seen on a video, s.
const TOGETHER = 0.005;
const GAPS_TOGETHER = 0.002;

/** @param {LaunchView} view @returns {ChartData} */
export function rises(view) {
  const unit = view.unit('travel');
  return {
    ...frame(view, 'rises', 'Rise of the body over the ground'),
    explanation: view.several ? 'As a camera beside the track sees it: rear solid, front dashed.' : "As a camera beside the track sees it, ringed at half of each end's rise in the first 0.4 s.",
    curves: [
      ...view.curves('rear_rise_m', unit, { name: view.several ? 'rear' : 'rear rise', end: 'rear', tone: 'rear', style: 'solid', band: 'rear_rise_m' }),
      ...view.curves('front_rise_m', unit, { name: view.several ? 'front' : 'front rise', end: 'front', tone: 'front', style: 'dash', band: 'front_rise_m' }),
    ],
    ...lag(view, half(view, 'rear'), half(view, 'front'), 'rise_lag_s', 'rise lag', TOGETHER),
  };
}

/** @param {LaunchView} view @returns {ChartData} */
export function gaps(view) {
  const unit = view.unit('travel');
  const bracket = lag(view, moved(view, 'rear'), moved(view, 'front'), 'gap_lag_s', 'gap lag', GAPS_TOGETHER);
  return {
    ...frame(view, 'gaps', 'Gap at the wheel since standing'),
    explanation: view.several
      ? 'How far body and axle have moved apart: rear solid, front dashed.'
      : `How far body and axle have moved apart, ringed at ${unit.unit === 'in' ? '1/4 in' : view.text(FIRST_MOVE, { ...unit, decimals: 2 })}.`,
    curves: [
      ...view.curves('separation_m', unit, { name: view.several ? 'rear' : 'rear gap', end: 'rear', tone: 'rear', style: 'solid', band: 'separation_m' }),
      ...view.curves('front_travel_m', unit, { name: view.several ? 'front' : 'front gap', end: 'front', tone: 'front', style: 'dash', band: 'front_gap_m' }, -1),
    ],
    ...bracket,
    dots: [...(bracket.dots ?? []), ...(view.several ? [] : [...peak(view, 'separation', 'apart', 'top'), ...peak(view, 'squat', 'together', 'bottom')])],
  };
}

/** @param {LaunchView} view @param {string} name @param {string} title */
function frame(view, name, title) {
  const { unit, decimals, factor } = view.unit('travel');
  return { name, title, unit, decimals, zero: true, least: LEAST / factor, marks: view.marks(MOVING), ...(view.bandText === undefined ? {} : { band: view.bandText }) };
}

/**
 * @param {LaunchView} view
 * @param {{ time: number, value: number } | null} rear
 * @param {{ time: number, value: number } | null} front
 * @param {string} key
 * @param {string} name
 * @param {number} together
 * @returns {Pick<ChartData, 'dots' | 'spans'>}
 */
function lag(view, rear, front, key, name, together) {
  const late = view.several ? null : view.figure(view.launches[0], key);
  if (late === null || rear === null || front === null) {
    return {};
  }

  const [first, second] = rear.time <= front.time ? [rear, front] : [front, rear];
  return {
    dots: [
      { ...rear, text: '', tone: 'rear', above: true, ring: true },
      { ...front, text: '', tone: 'front', above: true, ring: true },
    ],
    spans: [{ first, second, text: Math.abs(late) < together ? 'together' : `${name} ${view.text(Math.abs(late), view.unit('lag'))}` }],
  };
}

/** @param {LaunchView} view @param {'rear' | 'front'} end */
function half(view, end) {
  const time = view.figure(view.launches[0], `${end}_rise_t50_s`);
  const most = view.figure(view.launches[0], `${end}_rise_peak_m`);
  return time === null || most === null ? null : { time, value: (0.5 * most) / view.unit('travel').factor };
}

/** @param {LaunchView} view @param {'rear' | 'front'} end */
function moved(view, end) {
  const time = view.figure(view.launches[0], `${end}_gap_6_35mm_s`);
  return time === null ? null : { time, value: FIRST_MOVE / view.unit('travel').factor };
}

/** @param {LaunchView} view @param {string} figure @param {string} word @param {string} stop @returns {import('../data.js').Dot[]} */
function peak(view, figure, word, stop) {
  const unit = view.unit('travel');
  const launch = view.launches[0];
  const value = view.figure(launch, `${figure}_peak_m`);
  const time = view.figure(launch, `${figure}_peak_time_s`);
  if (value === null || time === null || Math.abs(value) < SEEN) {
    return [];
  }

  const left = view.figure(launch, `${figure}_peak_travel_left_m`);
  const way = left === null ? '' : Math.abs(left) < SEEN / 5 ? `, at the ${stop} stop` : left < 0 ? `, ${view.text(-left, unit)} into the ${stop} stop` : `, ${view.text(left, unit)} left to the ${stop} stop`;
  return [{ time, value: value / unit.factor, text: `${view.text(Math.abs(value), unit)} ${value > 0 ? 'apart' : word}${way}`, tone: 'rear', above: value > 0 }];
}

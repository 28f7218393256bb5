// @ts-check

import { createChart } from '../charts/chart.js';
import { createRange } from '../charts/range.js';
import { loadPaths } from '../charts/launch/loads.js';
import { rises } from '../charts/launch/rises.js';
import { LaunchView } from '../charts/view.js';
import { html } from '../elements.js';

/**
 * The charts of the lesson: those of the launch page with the lesson's launches, and overlays of the launches that a chapter
 * compares. A launch keeps its letter through all chapters.
 * @typedef {import('../charts/data.js').ChartData} ChartData
 */

/**
 * @param {import('./lesson.js').Lesson} lesson
 */
export function createCurves(lesson) {
  const { launches, cursor } = lesson, range = createRange(cursor.duration);
  const all = new LaunchView(launches);

  /**
   * One column of some launches over each other.
   * @param {string[]} keys
   * @param {string} column
   * @param {string} unitName
   * @param {(one: import('./lesson.js').Case) => string} name
   * @param {Omit<ChartData, 'curves' | 'unit' | 'decimals'>} about
   * @returns {ChartData}
   */
  function overlay(keys, column, unitName, name, about) {
    const unit = all.unit(unitName);
    return {
      ...about,
      unit: unit.unit,
      decimals: unit.decimals,
      curves: keys.map((key) => {
        const one = lesson.caseOf(key), index = launches.launches.indexOf(one.launch);
        return { ...all.curve(index, all.values(one.launch, column, unit), { name: '', end: 'rear' }), label: `${one.letter} ${name(one)}` };
      }),
    };
  }

  /** @param {import('./lesson.js').Case} one */
  const alone = (one) => new LaunchView({ units: launches.units, launches: [one.launch] });
  const byPercent = (/** @type {import('./lesson.js').Case} */ one) => one.percent;
  const byClick = (/** @type {import('./lesson.js').Case} */ one) => `click ${one.click}`;
  const standing = all.levels(({ car }) => car.rear.load / all.unit('force').factor, (value) => `standing ${all.text(value * all.unit('force').factor, all.unit('force'))}`, 'muted');

  /** @param {string[]} keys @param {(one: import('./lesson.js').Case) => string} name */
  const load = (keys, name) => overlay(keys, 'rear_tire_load_n', 'force', name, { name: 'rear-load', title: 'Load of both rear tyres', explanation: '', levels: standing });
  const cars = ['below', 'at', 'above'], dampers = ['soft', 'above', 'stiff'];

  /** @returns {ChartData[]} */
  function paths() {
    const charts = cars.map((key) => {
      const one = lesson.caseOf(key);
      return { ...loadPaths(alone(one))[0], title: `${one.letter}  ${one.percent}: change of the rear load by path`, explanation: '', marks: [] };
    });

    // One scale for all three.
    const least = Math.max(...charts.map(({ curves }) => spanOf(curves)));
    return charts.map((chart) => ({ ...chart, least }));
  }

  /** @type {Record<string, () => ChartData[]>} */
  const charts = {
    'chart-gap': () => [overlay(cars, 'separation_m', 'travel', byPercent, { name: 'gap', title: 'Gap between body and axle since standing', explanation: 'Above zero they have moved apart, below zero together: squat.', zero: true })],
    'chart-load': () => [load(cars, byPercent)],
    'charts-paths': paths,
    'charts-dampers': () => [
      load(dampers, byClick),
      overlay(dampers, 'load_via_dampers_n', 'force', byClick, { name: 'damper-load', title: 'What the dampers bring to the rear tyres', explanation: 'Below zero they take from the load, above zero they give.', zero: true }),
    ],
    'charts-steps': () => ['above', lesson.text.outOfStep].map((key) => {
      const one = lesson.caseOf(key);
      return { ...rises(alone(one)), title: `${one.letter}  ${byClick(one)}: rise of the body over the ground`, marks: [] };
    }),
  };

  /**
   * @param {string} name
   * @returns {HTMLElement}
   */
  return (name) => {
    const data = charts[name]();
    const hosts = data.map(() => html('div', { class: 'chart-host' }));
    const element = html('div', { class: `charts of-${name.startsWith('charts-paths') ? data.length : 1}` }, ...hosts);
    data.forEach((one, i) => createChart(hosts[i], cursor, range).show(one));
    return element;
  };
}

/**
 * From the lowest to the highest of all values, zero among them.
 * @param {import('../charts/data.js').Curve[]} curves
 */
function spanOf(curves) {
  let low = 0, high = 0;
  for (const { values } of curves) {
    for (const value of values) {
      low = Math.min(low, Number.isNaN(value) ? low : value);
      high = Math.max(high, Number.isNaN(value) ? high : value);
    }
  }

  return high - low;
}

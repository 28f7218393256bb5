// @ts-check

import { html } from './elements.js';
import { withUnit } from './document.js';

/** The four ways on which load comes to the rear tyres, in the engine's order. */
const PATHS = [
  { column: 'load_via_links_n', name: 'links' },
  { column: 'load_via_springs_n', name: 'springs' },
  { column: 'load_via_dampers_n', name: 'dampers' },
  { column: 'load_via_other_n', name: 'rest' },
];

/**
 * What presses the rear tyres at this instant beyond the standing car's load, or takes from it: a live bar for each path.
 * @param {import('./scene/scene.js').Scene} scene
 * @param {() => import('./document.js').LaunchDocument} current
 */
export function createPaths(scene, current) {
  const rows = PATHS.map(({ column, name }) => {
    const bar = html('span', { class: 'path-bar' });
    const value = html('span', { class: 'path-value' });
    const title = current().launches[0].car.bars.length === 1 && name === 'links' ? 'ladder bars' : name;
    return { column, bar, value, element: html('li', {}, html('span', { class: 'path-name' }, title), html('span', { class: 'path-track' }, bar), value) };
  });
  const sum = html('span', { class: 'path-sum' });
  const element = html('section', { class: 'paths', 'aria-label': 'where the rear tyres\' load comes from' },
    html('h2', {}, 'Rear tyre load by path'), html('ul', {}, ...rows.map((row) => row.element)), html('p', { class: 'quiet' }, 'rest: wheelie bar and the axle\'s own inertia. ', sum));
  let most = 1;
  let shown = /** @type {import('./document.js').LaunchDocument | null} */ (null);
  scene.onDraw(() => {
    const doc = current();
    if (doc !== shown) {
      shown = doc;
      most = Math.max(1, ...PATHS.map(({ column }) => largest(doc.launches[0].columns[column])));
    }

    let total = 0;
    for (const row of rows) {
      const load = scene.pose.read(row.column) || 0, share = Math.min(1, Math.abs(load) / most) * 50;
      total += load;
      row.bar.style.setProperty('left', `${load < 0 ? 50 - share : 50}%`);
      row.bar.style.setProperty('width', `${share}%`);
      row.bar.classList.toggle('takes', load < 0);
      row.value.textContent = `${load > 0 ? '+' : ''}${withUnit(load, doc.units.force)}`;
    }

    sum.textContent = `Together ${total > 0 ? '+' : ''}${withUnit(total, doc.units.force)} to the standing ${withUnit(doc.launches[0].car.rear.load, doc.units.force)}.`;
  });
  return element;
}

/** @param {Float64Array | undefined} values */
function largest(values) {
  let most = 0;
  for (const value of values ?? []) {
    most = Math.abs(value) > most ? Math.abs(value) : most;
  }

  return most;
}

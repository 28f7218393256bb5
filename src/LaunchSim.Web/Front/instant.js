// @ts-check

import { html } from './elements.js';
import { inUnit } from './document.js';

/** What the table at this instant holds: name, unit, how it is read. */
const ROWS = /** @type {{ name: string, unit: string, read: (pose: import('./scene/pose.js').Pose) => number }[]} */ ([
  { name: 'rear body up', unit: 'travel', read: (pose) => pose.read('rear_rise_m') },
  { name: 'front body up', unit: 'travel', read: (pose) => pose.read('front_rise_m') },
  { name: 'rear gap opened', unit: 'travel', read: (pose) => pose.read('separation_m') },
  { name: 'front gap opened', unit: 'travel', read: (pose) => -pose.read('front_travel_m') },
  { name: 'rear tyres\' load', unit: 'force', read: (pose) => pose.read('rear_tire_load_n') },
  { name: 'front tyres\' load', unit: 'force', read: (pose) => pose.read('front_tire_load_n') },
  { name: 'rear thrust', unit: 'force', read: (pose) => pose.read('rear_tire_thrust_n') },
  { name: 'share of the grip in use', unit: 'percent', read: (pose) => (100 * Math.abs(pose.read('rear_tire_thrust_n'))) / pose.read('rear_grip_limit_n') },
  { name: 'percent anti-squat', unit: 'percent', read: (pose) => pose.read('anti_squat_percent') },
  { name: 'upper bar, pull', unit: 'force', read: (pose) => pose.read('upper_link_force_n') },
  { name: 'lower bar, pull', unit: 'force', read: (pose) => pose.read('lower_link_force_n') },
  { name: 'rear damper, opening', unit: 'shaftSpeed', read: (pose) => pose.read('rear_damper_speed_mps') },
  { name: 'front damper, opening', unit: 'shaftSpeed', read: (pose) => pose.read('front_damper_speed_mps') },
  { name: 'rear damper travel left to the top stop', unit: 'travel', read: (pose) => pose.read('rear_top_left_m') },
  { name: 'carcass wind-up', unit: 'angle', read: (pose) => pose.read('carcass_windup_rad') },
  { name: 'pitch, nose up', unit: 'angle', read: (pose) => pose.read('pitch_nose_up_rad') },
  { name: 'wheelie bar', unit: 'force', read: (pose) => pose.read('wheelie_bar_force_n') },
  { name: 'speed', unit: 'speed', read: (pose) => pose.read('speed_mps') },
  { name: 'acceleration', unit: 'acceleration', read: (pose) => pose.read('acceleration_mps2') },
  { name: 'engine', unit: 'rotation', read: (pose) => pose.read('engine_speed_radps') },
]);

/**
 * All numbers of this instant as a table: what the drawing shows, for those who read it. Filled only while it is open.
 * @param {import('./scene/scene.js').Scene} scene
 * @param {import('./cursor.js').Cursor} cursor
 * @param {() => import('./document.js').LaunchDocument} current
 */
export function createInstant(scene, cursor, current) {
  const caption = html('caption');
  const body = html('tbody');
  const element = html('details', { class: 'instant' }, html('summary', {}, 'Numbers at this instant'), html('table', {}, caption, body));
  const cells = ROWS.map(() => html('td'));
  const rows = ROWS.map(({ name }, i) => html('tr', {}, html('th', { scope: 'row' }, name), cells[i], html('td')));

  function fill() {
    if (!element.open) {
      return;
    }

    const { units } = current();
    caption.textContent = `${scene.pose.launch.name}, ${cursor.time.toFixed(3)} s after release`;
    ROWS.forEach(({ unit, read }, i) => {
      const value = read(scene.pose);
      const isKnown = Number.isFinite(value);
      if (isKnown !== (rows[i].parentElement === body)) {
        body.replaceChildren(...rows.filter((_, j) => Number.isFinite(ROWS[j].read(scene.pose))));
      }

      cells[i].textContent = isKnown ? inUnit(value, units[unit]) : '';
      /** @type {HTMLElement} */ (rows[i].lastElementChild).textContent = units[unit].unit;
    });
  }

  element.addEventListener('toggle', fill);
  scene.onDraw(fill);
  return element;
}

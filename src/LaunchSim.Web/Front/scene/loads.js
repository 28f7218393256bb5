// @ts-check

import { svg } from '../elements.js';
import { withUnit } from '../document.js';
import { arrow } from './arrow.js';
import { px } from './path.js';

/** Longest arrow, px. */
const LONGEST = 46;

/**
 * The ground's forces on the tyres: loads from below with a tick for the standing car's, and the thrust of the rear tyres
 * ahead, with a bracket where their grip ends.
 * @param {import('./pose.js').Pose} pose
 * @param {import('../document.js').LaunchDocument} doc
 */
export function createLoads(pose, doc) {
  const { launch } = pose, { car, columns } = launch;
  const most = Math.max(car.rear.load, car.front.load, ...(columns.rear_tire_load_n ?? []).map(known), ...(columns.front_tire_load_n ?? []).map(known));
  const ends = [createLoad('rear', car.rear.load), createLoad('front', car.front.load)];
  const thrust = svg('path', { class: 'arrow thrust' });
  const grip = svg('path', { class: 'grip-limit' });
  const words = svg('text', { class: 'small' });
  return {
    element: svg('g', { class: 'loads' }, ...ends.map((end) => end.element), thrust, grip, words),
    /** @param {import('./window.js').Window} window */
    draw(window) {
      const perNewton = LONGEST / most;
      ends[0].draw(window, window.x(0), pose.read('rear_tire_load_n'), perNewton);
      ends[1].draw(window, window.x(pose.frontWheel()[0]), pose.read('front_tire_load_n'), perNewton);
      const force = pose.read('rear_tire_thrust_n'), limit = pose.read('rear_grip_limit_n');
      const from = window.x(0) + 10, y = window.ground + 30;
      const wide = Math.min(2, (window.width - from - 120) / Math.max(1, perNewton * 2.6 * most));
      const length = (known(force)) * perNewton * wide, end = known(limit) * perNewton * wide;
      thrust.setAttribute('d', Math.abs(length) < 2 ? '' : arrow(from, y, from + length, y));
      grip.setAttribute('d', end > 0 ? `M${px(from + end)} ${y - 7}v14m-4-14h4m-4 14h4` : '');
      const share = limit > 0 ? `${Math.round(100 * Math.min(9.99, Math.abs(force) / limit))} % of the grip` : '';
      words.textContent = Math.abs(length) < 2 ? '' : window.strip > 0 ? share : `thrust ${withUnit(force, doc.units.force)}${share && `, ${share}`}`;
      words.setAttribute('x', String(px(Math.max(from + length, from + end) + 8)));
      words.setAttribute('y', String(y + 4));
    },
  };

  /**
   * @param {string} name
   * @param {number} standing N.
   */
  function createLoad(name, standing) {
    const line = svg('path', { class: `arrow load ${name}` });
    const tick = svg('path', { class: 'standing-load' });
    const text = svg('text', { class: 'small strong', 'text-anchor': 'middle' });
    return {
      element: svg('g', {}, svg('title', {}, `load of both ${name} tyres; the tick is the standing car's`), tick, line, text),
      /**
       * @param {import('./window.js').Window} window
       * @param {number} x
       * @param {number} load N.
       * @param {number} perNewton px.
       */
      draw(window, x, load, perNewton) {
        const y = window.ground + 3, length = known(load) * perNewton;
        line.setAttribute('d', length < 1 ? '' : arrow(x, y + length, x, y));
        tick.setAttribute('d', `M${px(x - 9)} ${px(y + (standing * perNewton))}h18`);
        text.textContent = Number.isFinite(load) ? withUnit(load, doc.units.force) : '';
        text.setAttribute('x', String(px(x)));
        text.setAttribute('y', String(px(Math.min(window.height - 4, y + Math.max(length, standing * perNewton) + 14))));
      },
    };
  }
}

/** @param {number} value */
function known(value) {
  return Number.isFinite(value) ? value : 0;
}

// @ts-check

import { svg } from '../elements.js';
import { withUnit } from '../document.js';
import { px } from './path.js';
import { GAUGE, NOSE, TAIL } from './window.js';

/** Height for the largest movement of the launch, px. */
const ROOM = 58;

const HALF = GAUGE / 2;

/**
 * What one end of the car does, larger than to scale: the body's rise over the ground beside the gap of its wheel opening,
 * both from the line at which they started.
 * @param {'rear' | 'front'} end
 * @param {import('./pose.js').Pose} pose
 * @param {import('../document.js').LaunchDocument} doc
 * @param {number} most Largest movement of either end, m.
 */
export function createGauge(end, pose, doc, most) {
  const start = svg('path', { class: 'gauge-start' });
  const columns = [createColumn('body up'), createColumn('gap')];
  const element = svg('g', { class: `gauge ${end}` }, svg('title', {}, `${end} end: the body's rise over the ground, and how far the gap has opened; larger than to scale`), start, ...columns.map((column) => column.element));
  return {
    element,
    /** @param {import('./window.js').Window} window */
    draw(window) {
      const rise = pose.read(`${end}_rise_m`), gap = end === 'rear' ? pose.read('separation_m') : -pose.read('front_travel_m');
      const isRear = end === 'rear', { wheelbase } = pose.launch.car;
      const outer = window.strip > 0 || window.view === 'rear' ? (isRear ? 0 : window.width) : isRear ? window.x(-TAIL * wheelbase) - HALF : window.x(NOSE * wheelbase) + HALF;
      const middle = Math.min(window.width - HALF, Math.max(HALF, outer));
      const zero = window.strip > 0 ? window.strip - 34 : window.ground - Math.min(54, 0.3 * window.ground);
      element.setAttribute('display', !isRear && window.view === 'rear' && window.strip === 0 ? 'none' : 'inline');
      start.setAttribute('d', `M${px(middle - HALF + 2)} ${px(zero)}h${px((2 * HALF) - 4)}`);
      columns[0].draw(middle - (HALF / 2), zero, rise);
      columns[1].draw(middle + (HALF / 2), zero, gap);
    },
  };

  /** @param {string} name */
  function createColumn(name) {
    const bar = svg('rect', { class: 'gauge-bar', width: 14 });
    const title = svg('text', { class: 'small muted', 'text-anchor': 'middle' }, name);
    const text = svg('text', { class: 'small', 'text-anchor': 'middle' });
    return {
      element: svg('g', { class: name === 'gap' ? 'of-gap' : 'of-rise' }, bar, title, text),
      /**
       * @param {number} x
       * @param {number} zero
       * @param {number} value m.
       */
      draw(x, zero, value) {
        const length = Number.isFinite(value) ? (ROOM * value) / most : 0;
        bar.setAttribute('x', String(px(x - 7)));
        bar.setAttribute('y', String(px(length > 0 ? zero - length : zero)));
        bar.setAttribute('height', String(px(Math.abs(length))));
        text.textContent = Number.isFinite(value) ? withUnit(value, doc.units.travel) : '';
        text.setAttribute('x', String(px(x)));
        text.setAttribute('y', String(px(Math.min(zero, zero - length) - 5)));
        title.setAttribute('x', String(px(x)));
        title.setAttribute('y', String(px(Math.max(zero, zero - length) + 14)));
      },
    };
  }
}

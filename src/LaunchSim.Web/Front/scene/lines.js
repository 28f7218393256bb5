// @ts-check

import { svg } from '../elements.js';
import { inUnit, withUnit } from '../document.js';
import { px, through } from './path.js';

/**
 * The neutral line, the instant centre with the bars' lines that meet there, and the line from the contact to it, with the
 * percent of this instant at its end.
 * @param {import('./pose.js').Pose} pose
 * @param {import('../document.js').LaunchDocument} doc
 */
export function createLines(pose, doc) {
  const { car } = pose.launch;
  const neutral = svg('path', { class: 'neutral-line' });
  const neutralName = svg('text', { class: 'small', 'text-anchor': 'end' }, 'neutral line');
  const bars = svg('path', { class: 'bar-lines' });
  const lift = svg('path', { class: 'lift-line' });
  const ring = svg('circle', { class: 'instant-centre', r: 5 });
  const percent = svg('text', { class: 'percent' });
  const place = svg('text', { class: 'small muted' });
  return {
    element: svg('g', { class: 'lines' }, neutral, neutralName, bars, lift, ring, percent, place),
    /** @param {import('./window.js').Window} window */
    draw(window) {
      const slope = car.line.neutralSlope ?? 0;
      const end = (window.width / window.scale) - window.left;
      neutral.setAttribute('d', through(window, [[0, 0], [end, slope * end]]));
      neutralName.setAttribute('x', String(px(window.width - 4)));
      neutralName.setAttribute('y', String(px(window.y(slope * end) - 7)));
      const ahead = pose.read('instant_centre_ahead_m'), up = pose.read('instant_centre_up_m'), now = pose.read('anti_squat_percent');
      const isPoint = Number.isFinite(ahead) && Number.isFinite(up);

      // Far away there is no point to draw: the line shows where it lies, and the words how far.
      const steep = Number.isFinite(now) ? (now / 100) * slope : NaN;
      const isSeen = isPoint && window.x(ahead) > 8 && window.x(ahead) < window.width - 8 && window.y(up) > 8 && up > -BELOW_GROUND;
      const reach = isSeen ? ahead : steep > 0 ? Math.min(end, (window.ground - 24) / window.scale / steep) : end;
      const tip = isSeen ? [ahead, up] : [reach, steep * reach];
      lift.setAttribute('d', Number.isFinite(tip[1]) ? through(window, [[0, 0], [tip[0], tip[1]]]) : '');
      ring.setAttribute('display', isSeen ? 'inline' : 'none');
      ring.setAttribute('cx', String(px(window.x(tip[0]))));
      ring.setAttribute('cy', String(px(window.y(tip[1]))));
      bars.setAttribute('d', isSeen ? car.bars.map((bar) => bar.body ? through(window, [pose.body(...bar.body), [ahead, up]]) : '').join('') : '');
      percent.textContent = Number.isFinite(now) ? `${inUnit(now, doc.units.percent)} %` : '';
      // Where there is no room for it, the table of the instant has it.
      place.textContent = window.strip > 0 ? '' : isPoint && Math.abs(ahead) < 20 * car.wheelbase
        ? `${withUnit(ahead, doc.units.place)} ahead, ${withUnit(up, doc.units.place)} up` : 'instant centre far away';
      const isTight = window.x(tip[0]) + 165 > window.width;
      percent.setAttribute('text-anchor', isTight ? 'end' : 'start');
      place.setAttribute('text-anchor', isTight ? 'end' : 'start');
      const x = window.x(tip[0]) + (isTight ? -10 : 10), y = Math.max(16, window.y(tip[1]) - (isTight ? 22 : 4));
      percent.setAttribute('transform', `translate(${px(x)} ${px(y)})`);
      place.setAttribute('transform', `translate(${px(x)} ${px(y + 15)})`);
    },
  };
}

/** An instant centre deeper than this is not in the drawing, m. */
const BELOW_GROUND = 0.12;

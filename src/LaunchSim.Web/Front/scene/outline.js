// @ts-check

import { svg } from '../elements.js';
import { px, through } from './path.js';
import { tireShape } from './wheel.js';

/**
 * Another set-up over the first one: its outlines alone, with its letter at body and instant centre.
 * @param {import('./pose.js').Pose} pose
 * @param {number} index Its place among the launches.
 * @param {string} letter
 */
export function createOutline(pose, index, letter) {
  const { car } = pose.launch;
  const body = svg('path', { class: 'other-body' });
  const bars = svg('path', { class: 'other-bars' });
  const wheels = [svg('path', { class: 'other-wheel' }), svg('path', { class: 'other-wheel' })];
  const ring = svg('circle', { class: 'other-centre', r: 5 });
  const name = svg('text', { class: 'small strong', 'text-anchor': 'middle' }, letter);
  const centreName = svg('text', { class: 'small strong' }, letter);
  return {
    element: svg('g', { class: `other launch-${index}` }, svg('title', {}, pose.launch.name), body, bars, ...wheels, ring, name, centreName),
    /** @param {import('./window.js').Window} window */
    draw(window) {
      body.setAttribute('d', through(window, car.outline.map(([ahead, up]) => pose.body(ahead, up)), true));
      const top = pose.body(0.3 * car.wheelbase, 0.43 * car.wheelbase);
      name.setAttribute('transform', `translate(${px(window.x(top[0]) + (18 * index))} ${px(window.y(top[1]) - 8)})`);
      bars.setAttribute('d', car.bars.map((bar) => bar.axle && bar.body ? through(window, [pose.housing(...bar.axle), pose.body(...bar.body)]) : '').join(''));
      [pose.housing(0, car.rear.height), pose.frontWheel()].forEach(([x, z], i) => {
        wheels[i].setAttribute('d', tireShape(window, x, z, i === 0 ? car.rear.radius : car.front.radius));
      });
      const ahead = pose.read('instant_centre_ahead_m'), up = pose.read('instant_centre_up_m');
      const isSeen = Number.isFinite(ahead) && window.x(ahead) > 8 && window.x(ahead) < window.width - 8 && window.y(up) > 8 && window.y(up) < window.height;
      ring.setAttribute('display', isSeen ? 'inline' : 'none');
      centreName.setAttribute('display', isSeen ? 'inline' : 'none');
      if (isSeen) {
        ring.setAttribute('cx', String(px(window.x(ahead))));
        ring.setAttribute('cy', String(px(window.y(up))));
        centreName.setAttribute('transform', `translate(${px(window.x(ahead) - 4)} ${px(window.y(up) + 18)})`);
      }
    },
  };
}

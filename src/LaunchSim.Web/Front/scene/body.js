// @ts-check

import { svg } from '../elements.js';
import { px, through } from './path.js';

/**
 * The body's shape, the line on which it stood, and the centre of gravity.
 * @param {import('./pose.js').Pose} pose
 */
export function createBody(pose) {
  const { car } = pose.launch;
  const start = svg('path', { class: 'start-line' });
  const shape = svg('path', { class: 'body-shape' });
  const centre = svg('g', { class: 'gravity' }, svg('circle', { r: 6 }), svg('path', { d: 'M0-6A6 6 0 0 1 6 0H0ZM0 6A6 6 0 0 1-6 0H0Z' }), svg('title', {}, 'centre of gravity of the whole car, as it stands'));
  return {
    element: svg('g', { class: 'car-body' }, shape, start, centre),
    /** @param {import('./window.js').Window} window */
    draw(window) {
      start.setAttribute('d', through(window, car.outline, true));
      shape.setAttribute('d', through(window, car.outline.map(([ahead, up]) => pose.body(ahead, up)), true));
      if (car.centreOfGravity) {
        const [x, z] = pose.body(...car.centreOfGravity);
        centre.setAttribute('transform', `translate(${px(window.x(x))} ${px(window.y(z))})`);
      } else {
        centre.setAttribute('display', 'none');
      }
    },
  };
}

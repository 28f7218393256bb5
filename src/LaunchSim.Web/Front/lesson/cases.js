// @ts-check

import { html } from '../elements.js';
import { createScene } from '../scene/scene.js';
import { whileSeen } from './seen.js';

/**
 * Launches beside each other, moving by one time.
 * @param {import('./lesson.js').Lesson} lesson
 * @param {string[]} keys Which.
 * @param {(one: import('./lesson.js').Case) => string} name What each is called.
 * @param {import('../scene/window.js').ViewName} view
 */
export function createCases(lesson, keys, name, view) {
  const hosts = keys.map((key) => {
    const one = lesson.caseOf(key);
    const host = html('figure', { class: 'case' }, html('figcaption', {}, html('span', { class: 'letter' }, one.letter), name(one)));
    const scene = createScene({ ...lesson.launches, launches: [one.launch] }, whileSeen(lesson.cursor, host));
    scene.look(view);
    host.append(scene.element);
    return host;
  });
  return html('div', { class: `cases of-${keys.length}` }, ...hosts);
}

// @ts-check

import { html, svg, put } from './elements.js';
import { px } from './scene/path.js';

/** What each answer is about, in the order in which they stand. */
const ABOUT = /** @type {Record<string, string>} */ ({
  'rear-damper': 'rear gap, travel left',
  'instant-centre': 'standing car',
  ends: 'both ends\' rise',
  'rear-tire': 'rear tyres',
  contact: 'rear tyres\' grip',
});

/**
 * The answers of the first view around the drawing, each with a line to the part that it belongs to.
 * @param {import('./scene/scene.js').Scene} scene
 * @param {() => import('./document.js').LaunchDocument} current
 */
export function createAnswers(scene, current) {
  const above = html('div', { class: 'answers above' });
  const below = html('div', { class: 'answers below' });
  const leaders = svg('svg', { class: 'leaders', 'aria-hidden': true });
  const element = html('div', { class: 'stage' }, above, scene.element, below, leaders);
  /** @type {{ part: string, box: HTMLElement, line: SVGPathElement, dot: SVGCircleElement }[]} */
  let shown = [];
  let of = /** @type {import('./document.js').LaunchDocument | null} */ (null);

  function show() {
    of = current();
    above.replaceChildren();
    below.replaceChildren();
    leaders.replaceChildren();
    shown = [];
    const several = of.launches.length > 1;
    for (const [part, about] of Object.entries(ABOUT)) {
      const said = of.launches.map((launch) => launch.answers.find((answer) => answer.part === part));
      if (said.every((answer) => !answer)) {
        continue;
      }

      const box = html('div', { class: `answer ${part}` }, html('p', { class: 'about quiet' }, about), ...said.flatMap((answer, i) => answer
        ? [html('p', { class: `lead launch-${i}`, title: answer.text }, several ? html('span', { class: 'letter' }, 'ABC'[i]) : null, answer.lead)] : []));
      (part === 'rear-tire' || part === 'contact' ? below : above).append(box);
      const line = svg('path'), dot = svg('circle', { r: 2.5 });
      leaders.append(line, dot);
      shown.push({ part, box, line, dot });
    }
  }

  function point() {
    if (of !== current()) {
      show();
    }

    const frame = element.getBoundingClientRect(), drawing = scene.drawing.getBoundingClientRect();
    put(leaders, { width: px(frame.width), height: px(frame.height) });
    for (const { part, box, line, dot } of shown) {
      const target = placeOf(part, scene);
      const to = target && { x: drawing.left - frame.left + target[0], y: drawing.top - frame.top + target[1] };
      const isSeen = to && to.x > 0 && to.x < frame.width;
      put(line, { display: isSeen ? null : 'none' });
      put(dot, { display: isSeen ? null : 'none' });
      if (isSeen) {
        const rect = box.getBoundingClientRect();
        const isAbove = box.parentElement === above;
        const from = { x: Math.min(rect.right - frame.left - 12, Math.max(rect.left - frame.left + 12, to.x)), y: (isAbove ? rect.bottom : rect.top) - frame.top };
        put(line, { d: `M${px(from.x)} ${px(from.y)}L${px(to.x)} ${px(to.y)}` });
        put(dot, { cx: px(to.x), cy: px(to.y) });
      }
    }
  }

  scene.onDraw(() => {
    if (of !== current()) {
      show();
    }
  });
  new ResizeObserver(point).observe(element);
  return { element, point };
}

/**
 * Where an answer's part is on the drawing as the car stands; null where it is not to be seen. It stays while the car moves.
 * @param {string} part
 * @param {import('./scene/scene.js').Scene} scene
 * @returns {[number, number] | null}
 */
function placeOf(part, scene) {
  const { window } = scene, { car } = scene.pose.launch;
  /** @param {number} ahead @param {number} up @returns {[number, number]} */
  const at = (ahead, up) => [window.x(ahead), window.y(up)];
  switch (part) {
    case 'instant-centre':
      return car.line.ahead !== null && car.line.up !== null && window.x(car.line.ahead) < window.width - 20 ? at(car.line.ahead, car.line.up) : null;
    case 'ends':
      return at(1.06 * car.wheelbase, 0.29 * car.wheelbase);
    case 'rear-damper': {
      const unit = car.units.find((one) => one.name.includes('damper'));
      return unit?.body ? at(...unit.body) : null;
    }

    case 'rear-tire':
      return at(-0.35 * car.rear.radius, 0.02);
    case 'contact':
      return at(0.6 * car.rear.radius, 0);
    default:
      return null;
  }
}

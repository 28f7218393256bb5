// @ts-check

import { html, svg } from '../elements.js';
import { withUnit } from '../document.js';
import { arrow } from '../scene/arrow.js';
import { px, through } from '../scene/path.js';
import { cgPlace } from './floor.js';
import { signed } from './free-axle.js';
import { createLabel } from './label.js';
import { createMomentChoice, momentOf } from './moment.js';
import { createStage } from './stage.js';
import { passesBelow } from './statics.js';

/** Longest arrow, as a share of the wheelbase; a shorter one than this is not drawn, px. */
const LONGEST = 0.34, SHORTEST = 1;

/** Between these heights the force is drawn, in wheelbases. */
const LOWEST = -0.04, HIGHEST = 0.4;

/**
 * The body, cut free: what the bars push it with, along the line from the contact patch, and what the springs give or take once
 * the car has come to rest.
 * @param {import('./lesson.js').Lesson} lesson
 */
export function createFreeBody(lesson) {
  const { reader, launches, text } = lesson, { units } = launches, { car } = launches.launches[0];
  const body = svg('path', { class: 'body-shape' });
  const ground = svg('path', { class: 'ground faint' });
  const pole = svg('path', { class: 'lift-line' });
  const lever = svg('path', { class: 'lever' });
  const gravity = svg('g', { class: 'gravity' }, svg('circle', { r: 7 }), svg('path', { d: 'M0-7A7 7 0 0 1 7 0H0ZM0 7A7 7 0 0 1-7 0H0Z' }));
  const push = svg('path', { class: 'arrow thrust' }), springs = svg('path', { class: 'arrow third' });
  const labels = { push: createLabel('strong'), parts: createLabel(), lever: createLabel('small muted'), rear: createLabel(), front: createLabel() };
  const stage = createStage('free-body', () => ({ behind: 0.3 * reader.values.wheelbase, ahead: 1.24 * reader.values.wheelbase, up: 0.5 * reader.values.wheelbase, below: 46 }), [
    body, ground, pole, lever, gravity, push, springs, ...Object.values(labels).map((label) => label.element)], draw);

  /** @param {import('./stage.js').Window} now */
  function draw(now) {
    const { thrust, wheelbase, cgHeight, rest } = reader.values, { statics, slope } = reader, moment = momentOf(lesson);
    const isKnown = Number.isFinite(slope), stretch = wheelbase / car.wheelbase;
    const force = isKnown ? thrust * Math.hypot(1, slope) : 0, off = text.car.frontLoad - moment.front;
    const most = Math.max(1, Math.abs(force), isKnown ? Math.abs(moment.springs) : 0, Math.abs(off));
    const length = (/** @type {number} */ one) => (LONGEST * wheelbase * now.scale * one) / most;
    const cgAhead = cgPlace(lesson, wheelbase), below = isKnown ? passesBelow(slope, [cgAhead, cgHeight]) : NaN;
    body.setAttribute('d', through(now, car.outline.map(([x, z]) => /** @type {[number, number]} */ ([x * stretch, z])), true));
    ground.setAttribute('d', `M0 ${now.ground}H${now.width}`);
    gravity.setAttribute('transform', `translate(${px(now.x(cgAhead))} ${px(now.y(cgHeight))})`);

    // A force may stand anywhere on its line: where that passes under the centre of gravity, or where it is still in sight.
    const high = Math.max(LOWEST * wheelbase, Math.min(HIGHEST * wheelbase, slope * cgAhead)), reach = 1.15 * wheelbase;
    const foot = /** @type {[number, number]} */ (high === slope * cgAhead ? [cgAhead, high] : [high / slope, high]);
    pole.setAttribute('d', isKnown ? through(now, [[0, 0], [reach, slope * reach]]) : '');
    const along = Math.hypot(1, slope) || 1, size = length(force);
    const tail = [now.x(foot[0]) - (0.5 * size / along), now.y(foot[1]) + ((0.5 * size * slope) / along)];
    push.setAttribute('d', isKnown && Math.abs(size) > SHORTEST ? arrow(tail[0], tail[1], tail[0] + (size / along), tail[1] - ((size * slope) / along)) : '');
    lever.setAttribute('d', isKnown && Math.abs(below) * now.scale > 4 ? through(now, [[cgAhead, slope * cgAhead], [cgAhead, cgHeight]]) : '');
    labels.lever.put(now, isKnown ? `passes ${withUnit(Math.abs(below), units.place)} ${below < 0 ? 'above' : 'below'}` : '', now.x(cgAhead) - 10, now.y(0.5 * (cgHeight + Math.max(0, high))) + 4, 'end');
    const wordsAt = isKnown ? Math.min(now.y(foot[1]) + 22, now.height - 24) : now.y(0.2), wordsFrom = isKnown ? Math.max(now.x(foot[0]), now.x(0.4 * cgAhead)) + (0.1 * now.scale) : now.x(0.4);
    labels.push.put(now, isKnown ? `along the line ${withUnit(Math.abs(force), units.force)}` : 'no line', wordsFrom, wordsAt);
    labels.parts.put(now, isKnown ? `forward ${withUnit(thrust, units.force)}, ${statics.barsPush < 0 ? 'down' : 'up'} ${withUnit(Math.abs(statics.barsPush), units.force)}` : '', wordsFrom, wordsAt + 17);

    // Springs that press more on the axle lift the body more; in front they are relieved.
    const rear = rest && isKnown ? length(moment.springs) : 0, front = rest ? length(-off) : 0;
    springs.setAttribute('d', [[0.02, rear], [wheelbase, front]].map(([x, up]) => (Math.abs(up) < SHORTEST ? '' : up > 0 ? arrow(now.x(x), now.y(0.55), now.x(x), now.y(0.55) - up) : arrow(now.x(x), now.y(0.55) + up, now.x(x), now.y(0.55)))).join(''));
    labels.rear.put(now, rest && isKnown ? `springs ${signed(moment.springs, units.force)}` : '', now.x(0), now.y(0.55) + 16, 'middle');
    labels.front.put(now, rest ? `springs ${signed(-off, units.force)}` : '', now.x(wheelbase), now.y(0.55) + 16, 'middle');
    return isKnown
      ? `The body, cut free. The bars push it along the line from the contact patch with ${withUnit(Math.abs(force), units.force)}: ${withUnit(thrust, units.force)} forward and ${withUnit(Math.abs(statics.barsPush), units.force)} ${statics.barsPush < 0 ? 'down' : 'up'}. The line passes ${withUnit(Math.abs(below), units.place)} ${below < 0 ? 'above' : 'below'} the centre of gravity. ${rest ? `The rear springs change by ${signed(moment.springs, units.force)}, the front springs by ${signed(-off, units.force)}.` : 'Springs and dampers have not changed yet.'}`
      : 'The body, cut free. The instant centre stands right above the contact patch: there is no line.';
  }

  const choice = createMomentChoice(lesson);
  const element = html('figure', { class: 'statics' }, stage.element, choice.element,
    html('figcaption', { class: 'quiet' }, 'Forces on the body, beyond those of the standing car. Its weight, and what resists the push, its mass times the acceleration, act at the centre of gravity and are not drawn.'));
  return {
    element,
    show() {
      stage.show();
      choice.show();
    },
  };
}

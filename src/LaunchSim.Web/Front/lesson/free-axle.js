// @ts-check

import { html, svg } from '../elements.js';
import { withUnit } from '../document.js';
import { arrow } from '../scene/arrow.js';
import { px, through } from '../scene/path.js';
import { createWheel } from '../scene/wheel.js';
import { createLabel } from './label.js';
import { createMomentChoice, momentOf } from './moment.js';
import { createStage } from './stage.js';
import { barForces } from './statics.js';

/** Longest arrow, m in the drawing; a force smaller than this share of the largest is not drawn. */
const LONGEST = 0.5, LEAST = 0.004;

/**
 * The axle with its wheels, cut free: the ground's push, what the tyres are pressed with, the bars, and the springs once the
 * car has come to rest. Arrows are the forces on the axle, one scale for all of them.
 * @param {import('./lesson.js').Lesson} lesson
 */
export function createFreeAxle(lesson) {
  const { reader, launches } = lesson, { units } = launches, { car } = launches.launches[0];
  const ground = svg('path', { class: 'ground' });
  const wheel = createWheel(car.rear.radius, false);
  const housing = svg('path', { class: 'housing' });
  const barLines = svg('path', { class: 'bar-lines' });
  const stubs = svg('path', { class: 'bar cut' });
  const torque = svg('path', { class: 'inner-torque' });
  const forces = svg('path', { class: 'arrow' }), pushed = svg('path', { class: 'arrow thrust' }), load = svg('path', { class: 'arrow rear' }), springs = svg('path', { class: 'arrow third' });
  const labels = { thrust: createLabel('strong'), load: createLabel('strong'), lower: createLabel(), upper: createLabel(), springs: createLabel(), torque: createLabel('small muted') };
  const stage = createStage('free-axle', () => ({ behind: 0.72, ahead: 1, up: 0.82, below: 92 }), [
    ground, wheel.element, housing, barLines, stubs, torque, forces, springs, pushed, load, ...Object.values(labels).map((label) => label.element)], draw);

  /** @param {import('./stage.js').Window} now */
  function draw(now) {
    const { bars, statics, slope } = reader, { thrust, rest } = reader.values;
    const held = bars ? barForces(bars, thrust) : null, moment = momentOf(lesson);
    const isHeld = held !== null && [slope, held.lower, held.upper].every(Number.isFinite);
    const gain = moment.load - lesson.text.car.rearLoad;
    const most = Math.max(1, Math.abs(thrust), ...(isHeld ? [Math.abs(held.lower), Math.abs(held.upper), Math.abs(gain), Math.abs(moment.springs)] : [0]));
    const length = (/** @type {number} */ force) => (Math.abs(force) < LEAST * most ? 0 : (LONGEST * now.scale * force) / most);
    const zero = [now.x(0), now.ground];
    ground.setAttribute('d', `M0 ${now.ground}H${now.width}`);
    wheel.draw(now, [0, car.rear.height], 0, 0);
    housing.setAttribute('d', bars ? through(now, [bars.lowerAxle, [0, car.rear.height], bars.upperAxle]) : '');
    torque.setAttribute('d', thrust === 0 ? '' : turning(now.x(0), now.y(car.rear.height), 0.17 * now.scale, thrust > 0));
    labels.torque.put(now, thrust === 0 ? '' : `torque on the housing ${withUnit(Math.abs(thrust) * car.rear.height, units.torque)}`, now.x(-0.3), now.y(car.rear.height + 0.25), 'end');

    const along = length(thrust);
    pushed.setAttribute('d', along === 0 ? '' : arrow(zero[0], zero[1] + 12, zero[0] + along, zero[1] + 12));
    labels.thrust.put(now, `thrust ${withUnit(thrust, units.force)}`, zero[0] + Math.max(0, along) + 8, zero[1] + 17);
    const high = isHeld ? length(gain) : 0;
    load.setAttribute('d', Math.abs(high) < 1 ? '' : high > 0 ? arrow(zero[0] - 8, zero[1] + 6 + high, zero[0] - 8, zero[1] + 6) : arrow(zero[0] - 8, zero[1] + 6, zero[0] - 8, zero[1] + 6 - high));
    labels.load.put(now, isHeld ? `load ${signed(gain, units.force)}` : '', zero[0] - 18, zero[1] + Math.max(24, Math.abs(high)) + 2, 'end');
    springs.setAttribute('d', isHeld && rest && Math.abs(length(moment.springs)) > 1 ? down(now, length(moment.springs)) : '');
    labels.springs.put(now, !isHeld ? 'no bars on these lines can hold the axle' : rest ? `springs ${signed(moment.springs, units.force)}` : 'springs, dampers: nothing yet', now.x(-0.04), now.y(0.74), 'end');

    stubs.setAttribute('d', bars ? stub(now, bars.lowerAxle, bars.lowerBody) + stub(now, bars.upperAxle, bars.upperBody) : '');
    barLines.setAttribute('d', bars ? through(now, [bars.lowerAxle, reach(bars.lowerAxle, bars.lowerBody)]) + through(now, [bars.upperAxle, reach(bars.upperAxle, bars.upperBody)]) : '');
    forces.setAttribute('d', bars && isHeld ? barArrow(now, bars.lowerAxle, bars.lowerBody, length(held.lower)) + barArrow(now, bars.upperAxle, bars.upperBody, length(held.upper)) : '');
    for (const [label, name, pull, joint, body, shift] of /** @type {const} */ ([[labels.lower, 'lower bars', held?.lower ?? NaN, bars?.lowerAxle, bars?.lowerBody, 22], [labels.upper, 'upper bars', held?.upper ?? NaN, bars?.upperAxle, bars?.upperBody, -12]])) {
      const end = joint && body ? ahead(joint, body, 0.26) : [0, 0];
      label.put(now, bars && isHeld ? `${name} ${pull < 0 ? 'push' : 'pull'} ${withUnit(Math.abs(pull), units.force)}` : '', now.x(end[0]), now.y(end[1]) + shift);
    }

    return isHeld
      ? `The axle with its wheels, cut free. The ground pushes it forward with ${withUnit(thrust, units.force)}. The lower bars ${held.lower < 0 ? 'push' : 'pull'} with ${withUnit(Math.abs(held.lower), units.force)}, the upper bars ${held.upper < 0 ? 'push' : 'pull'} with ${withUnit(Math.abs(held.upper), units.force)}; together they press it down with ${withUnit(statics.barsPush, units.force)}. ${rest ? `The springs bring ${signed(moment.springs, units.force)}. ` : ''}The load at the contact patch changes by ${signed(gain, units.force)}.`
      : 'The axle with its wheels, cut free. No two bars on these lines can hold it.';
  }

  const choice = createMomentChoice(lesson);
  const element = html('figure', { class: 'statics' }, stage.element, choice.element,
    html('figcaption', { class: 'quiet' }, 'Forces on the axle, beyond those of the standing car; both sides together, one scale. The dashed torque is inside the cut.'));
  return {
    element,
    show() {
      stage.show();
      choice.show();
    },
  };
}

/**
 * A change of force with its sign.
 * @param {number} force N.
 * @param {import('../document.js').Unit} unit
 */
export function signed(force, unit) {
  const text = withUnit(force, unit);
  return text.startsWith('-') || !/[1-9]/.test(text) ? text : `+${text}`;
}

/**
 * @param {import('./statics.js').Place} from
 * @param {import('./statics.js').Place} to
 * @param {number} by m.
 * @returns {[number, number]}
 */
function ahead([x, z], to, by) {
  const length = Math.hypot(to[0] - x, to[1] - z);
  return [x + ((by * (to[0] - x)) / length), z + ((by * (to[1] - z)) / length)];
}

/** @param {import('./statics.js').Place} from @param {import('./statics.js').Place} to */
function reach(from, to) {
  return ahead(from, to, 3);
}

/**
 * The end of a bar that is left at the cut.
 * @param {import('./stage.js').Window} window
 * @param {import('./statics.js').Place} joint
 * @param {import('./statics.js').Place} body
 */
function stub(window, joint, body) {
  return through(window, [joint, ahead(joint, body, 0.07)]);
}

/**
 * A bar's force on the axle, from where it is cut: away from the axle when the bar pulls, towards it when it pushes.
 * @param {import('./stage.js').Window} window
 * @param {import('./statics.js').Place} joint
 * @param {import('./statics.js').Place} body
 * @param {number} length px, positive pulling.
 */
function barArrow(window, joint, body, length) {
  if (Math.abs(length) < 1) {
    return '';
  }

  const near = ahead(joint, body, 0.09), far = ahead(joint, body, 0.09 + (Math.abs(length) / window.scale));
  const [from, to] = length > 0 ? [near, far] : [far, near];
  return arrow(window.x(from[0]), window.y(from[1]), window.x(to[0]), window.y(to[1]));
}

/**
 * What the springs bring, over the axle: down when they press more, up when they are relieved.
 * @param {import('./stage.js').Window} window
 * @param {number} length px.
 */
function down(window, length) {
  const x = window.x(0), y = window.y(0.62);
  return length > 0 ? arrow(x, y - length, x, y) : arrow(x, y, x, y + length);
}

/**
 * A torque about a point.
 * @param {number} x
 * @param {number} y
 * @param {number} r
 * @param {boolean} noseUp
 */
function turning(x, y, r, noseUp) {
  const side = noseUp ? 1 : -1;
  const [x0, x1] = [x + (side * 0.77 * r), x - (side * 0.77 * r)], top = y - (0.64 * r);
  return `M${px(x0)} ${px(y + (0.64 * r))}A${px(r)} ${px(r)} 0 1 ${noseUp ? 0 : 1} ${px(x1)} ${px(top + (1.28 * r))}m${px(side * -6)} ${px(-7)}l${px(side * 6)} 7l${px(side * 8)} -4`;
}

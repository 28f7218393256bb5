// @ts-check

import { html, put, svg } from '../elements.js';
import { inUnit, withUnit } from '../document.js';
import { px, through } from '../scene/path.js';
import { createWheel } from '../scene/wheel.js';
import { createControl } from './control.js';
import { followDrag } from './drag.js';
import { formulaOf } from './formula.js';
import { createLabel } from './label.js';
import { createStage } from './stage.js';

/** A point this near to the edge is not drawn as a point, px. */
const EDGE = 10;

/** On a drawing narrower than this the neutral line ends nearer to the car, px. */
const NARROW = 480;

/**
 * The drawing on the shop floor: both lines from the contact patch, with the reader's instant centre and centre of gravity.
 * @param {import('./lesson.js').Lesson} lesson
 */
export function createFloor(lesson) {
  const { reader, launches } = lesson, { units } = launches, { car } = launches.launches[0];
  const body = svg('path', { class: 'body-shape' });
  const ground = svg('path', { class: 'ground' });
  const rear = createWheel(car.rear.radius, false), front = createWheel(car.front.radius, false);
  const up = svg('path', { class: 'construction' });
  const neutral = svg('path', { class: 'neutral-line' });
  const lift = svg('path', { class: 'lift-line' }), further = svg('path', { class: 'lift-line further' });
  const barLines = svg('path', { class: 'bar-lines' });
  const bars = svg('path', { class: 'bar' });
  const joints = svg('path', { class: 'joint' });
  const contact = svg('circle', { class: 'contact-point', r: 3.5 });
  const ring = svg('circle', { class: 'instant-centre handle', r: 8 });
  const gravity = svg('g', { class: 'gravity handle' }, svg('circle', { r: 7 }), svg('path', { d: 'M0-7A7 7 0 0 1 7 0H0ZM0 7A7 7 0 0 1-7 0H0Z' }));
  const scale = svg('path', { class: 'percent-scale' }), reached = svg('circle', { class: 'percent-reached', r: 4 });
  const percent = createLabel('percent'), centreName = createLabel(), neutralName = createLabel(), patchName = createLabel('small muted'), heightName = createLabel('small muted'), hundred = createLabel('small'), farName = createLabel();
  const stage = createStage('floor', extent,
    [body, up, ground, rear.element, front.element, barLines, neutral, further, lift, bars, joints, contact, scale, reached, ring, gravity, ...[percent, centreName, neutralName, patchName, heightName, hundred, farName].map((label) => label.element)], draw);
  let window = /** @type {import('./stage.js').Window | null} */ (null);

  /** @param {number} width px. */
  function extent(width) {
    const { wheelbase, parallel, ahead: centre } = reader.values;
    return { behind: Math.max(0.2 * wheelbase, 1.15 * car.rear.radius, parallel ? 0 : (0.08 * wheelbase) - centre), ahead: (width < NARROW ? 1.2 : 1.4) * wheelbase, up: 0.5 * wheelbase, below: 40 };
  }

  /** @param {import('./stage.js').Window} now */
  function draw(now) {
    window = now;
    const { ahead, up: high, parallel, cgHeight, wheelbase } = reader.values, { statics, slope } = reader;
    const end = (now.width / now.scale) - now.left, stretch = wheelbase / car.wheelbase;
    body.setAttribute('d', through(now, car.outline.map(([x, z]) => /** @type {[number, number]} */ ([x * stretch, z])), true));
    ground.setAttribute('d', `M0 ${now.ground}H${now.width}`);
    rear.draw(now, [0, car.rear.height], 0, 0);
    front.draw(now, [wheelbase, car.front.height], 0, 0);
    const cgAhead = cgPlace(lesson, wheelbase);
    up.setAttribute('d', through(now, [[cgAhead, cgHeight], [wheelbase, cgHeight]]));
    gravity.setAttribute('transform', `translate(${px(now.x(cgAhead))} ${px(now.y(cgHeight))})`);
    neutral.setAttribute('d', through(now, [[0, 0], [end, statics.neutralSlope * end]]));
    put(contact, { cx: px(now.x(0)), cy: now.ground });

    const isPoint = !parallel && now.x(ahead) > EDGE && now.x(ahead) < now.width - EDGE && now.y(high) > EDGE && now.y(high) < now.height - EDGE;
    const tip = isPoint ? /** @type {[number, number]} */ ([ahead, high]) : edge(now, slope, !parallel && ahead < 0 ? -1 : 1);
    lift.setAttribute('d', tip ? through(now, [[0, 0], tip]) : '');
    put(ring, { display: isPoint ? null : 'none', cx: px(now.x(ahead)), cy: px(now.y(high)) });
    const drawn = reader.bars;
    bars.setAttribute('d', drawn ? through(now, [drawn.lowerAxle, drawn.lowerBody]) + through(now, [drawn.upperAxle, drawn.upperBody]) : '');
    joints.setAttribute('d', drawn ? Object.values(drawn).map(([x, z]) => `M${px(now.x(x) - 3)} ${px(now.y(z))}a3 3 0 1 0 6 0a3 3 0 1 0-6 0`).join('') : '');
    barLines.setAttribute('d', drawn && isPoint ? [drawn.lowerBody, drawn.upperBody].map((place) => through(now, [place, [ahead, high]])).join('') : '');

    // Read off over the front axle: the neutral line is at 100 % there, the other line at its own.
    const over = slope * wheelbase, isRead = Number.isFinite(over) && now.y(over) > EDGE && now.y(over) < now.height - EDGE;
    further.setAttribute('d', tip && Number.isFinite(slope) ? through(now, [tip, isRead ? [Math.max(wheelbase, tip[0]), slope * Math.max(wheelbase, tip[0])] : edge(now, slope, 1) ?? tip]) : '');
    scale.setAttribute('d', marks(now, wheelbase, cgHeight));
    put(reached, { display: isRead ? null : 'none', cx: px(now.x(wheelbase)), cy: isRead ? px(now.y(over)) : 0 });
    const isAbove = statics.percent >= 100, percentText = Number.isFinite(statics.percent) ? `${inUnit(statics.percent, units.percent)} %` : 'no percent';
    const at = isRead ? [wheelbase, over] : tip ?? [0, 0];
    percent.put(now, percentText, now.x(at[0]) - 10, now.y(at[1]) + (isAbove ? -8 : isRead ? 20 : -16), 'end');
    hundred.put(now, Math.abs(statics.percent - 100) < 14 ? '' : '100 %', now.x(wheelbase) - 10, now.y(cgHeight) + (isAbove ? 4 : -6), 'end');
    const isLow = high < 0.25 * wheelbase;
    centreName.put(now, isPoint ? placeText(lesson) : '', now.x(ahead) + 4, now.y(high) + (isAbove && isLow ? -16 : 24));
    farName.put(now, isPoint ? '' : `${placeText(lesson)}${parallel ? '' : ', out of sight'}`, now.x(0.6 * wheelbase), now.ground + 18, 'middle');
    neutralName.put(now, 'neutral line', now.x(end) - 4, now.y(statics.neutralSlope * end) + (isAbove ? 18 : -9), 'end');
    patchName.put(now, 'contact patch', now.x(0), now.ground + 18, 'middle');
    heightName.put(now, `${withUnit(cgHeight, units.place)} up`, now.x(cgAhead), now.y(cgHeight) - 12, 'middle');
    return `Side view of a car, to scale. ${centreSentence(lesson)} The centre of gravity is ${withUnit(cgHeight, units.place)} up, the wheelbase ${withUnit(wheelbase, units.place)}. ${verdictOf(statics.percent)}`;
  }

  const { place, angle } = { place: units.place, angle: units.angle }, own = car.wheelbase;
  const ahead = createControl({ label: 'Instant centre ahead of the axle', unit: place, min: -0.6 * own, max: 2.6 * own, get: () => (reader.values.parallel ? NaN : reader.values.ahead), set: (value) => reader.set({ ahead: value }) });
  const high = createControl({ label: 'Instant centre above the ground', unit: place, min: -0.2 * own, max: 0.6 * own, get: () => (reader.values.parallel ? NaN : reader.values.up), set: (value) => reader.set({ up: value }) });
  const cg = createControl({ label: 'Centre of gravity above the ground', unit: place, min: 0.08 * own, max: 0.42 * own, get: () => reader.values.cgHeight, set: (value) => reader.set({ cgHeight: value }) });
  const climb = createControl({ label: 'Both bars climb to the front by', unit: angle, min: -0.35, max: 0.55, get: () => (reader.values.parallel ? reader.values.climb : NaN), set: (value) => reader.set({ climb: value }) });
  const parallel = html('input', { type: 'checkbox', id: 'parallel' });
  parallel.addEventListener('change', () => reader.set({ parallel: parallel.checked }));
  const verdict = html('output', { class: 'verdict', 'aria-live': 'polite' });
  const formula = formulaOf(lesson);
  const starts = html('div', { class: 'starts', role: 'group', 'aria-label': 'begin with' }, ...lesson.starts.map(({ name, values }) => {
    const button = html('button', { type: 'button' }, name);
    button.addEventListener('click', () => reader.set(values));
    return button;
  }));
  followDrag(stage.drawing, ring, () => window, ([x, z]) => reader.set({ ahead: rounded(x, place), up: rounded(z, place) }));
  followDrag(stage.drawing, gravity, () => window, ([, z]) => reader.set({ cgHeight: rounded(Math.max(0.08 * own, Math.min(0.42 * own, z)), place) }));

  const element = html('figure', { class: 'statics' }, stage.element, verdict, formula.element, starts,
    html('div', { class: 'controls-grid' }, ahead.element, high.element, cg.element,
      html('div', { class: 'control choice' }, parallel, html('label', { for: 'parallel' }, 'Bars parallel: the instant centre is infinitely far away')), climb.element),
    html('figcaption', { class: 'quiet' }, 'Drag the ring, the instant centre, or the centre of gravity; or use the sliders. The grey body is no measurement.'));
  return {
    element,
    show() {
      parallel.checked = reader.values.parallel;
      climb.element.hidden = !reader.values.parallel;
      verdict.textContent = verdictOf(reader.statics.percent);
      for (const part of [stage, formula, ahead, high, cg, climb]) {
        part.show();
      }
    },
  };
}

/**
 * What a percent means, in a sentence.
 * @param {number} percent
 */
export function verdictOf(percent) {
  if (!Number.isFinite(percent)) {
    return 'The instant centre stands right above the contact patch: there is no slope, and no percent.';
  }

  const whole = Math.round(percent);
  return whole > 100 ? `${whole} %: above the neutral line. Body and axle are pushed apart.`
    : whole === 100 ? '100 %: on the neutral line. The bars bring exactly the load that moves.'
      : whole > 0 ? `${whole} %: below the neutral line. The body sits down on the axle.`
        : whole === 0 ? '0 %: the line runs level. The bars bring nothing, the springs all.'
          : `${whole} %: the line falls to the front. The bars pull the body down on the axle.`;
}

/**
 * Where the whole car's centre of gravity is ahead of the rear axle: its share of the wheelbase stays.
 * @param {import('./lesson.js').Lesson} lesson
 * @param {number} wheelbase
 */
export function cgPlace(lesson, wheelbase) {
  const { frontLoad, rearLoad } = lesson.text.car;
  return (wheelbase * frontLoad) / (frontLoad + rearLoad);
}

/** @param {import('./lesson.js').Lesson} lesson */
function placeText(lesson) {
  const { parallel, ahead, up } = lesson.reader.values, { place } = lesson.launches.units;
  return parallel ? 'instant centre: infinitely far' : `instant centre ${inUnit(ahead, place)} | ${withUnit(up, place)}`;
}

/** @param {import('./lesson.js').Lesson} lesson */
function centreSentence(lesson) {
  const { parallel, ahead, up, climb } = lesson.reader.values, { place, angle } = lesson.launches.units;
  if (parallel) {
    return `The bars are parallel and climb by ${withUnit(climb, angle)}; the instant centre is infinitely far away.`;
  }

  return `The instant centre is ${withUnit(Math.abs(ahead), place)} ${ahead < 0 ? 'behind' : 'ahead of'} the axle and ${withUnit(Math.abs(up), place)} ${up < 0 ? 'below' : 'above'} the ground.`;
}

/**
 * Where a line from the contact patch leaves the drawing.
 * @param {import('./stage.js').Window} window
 * @param {number} slope
 * @param {1 | -1} side
 * @returns {[number, number] | null}
 */
function edge(window, slope, side) {
  if (!Number.isFinite(slope)) {
    return null;
  }

  const wide = (side > 0 ? (window.width - EDGE) / window.scale - window.left : window.left - (EDGE / window.scale));
  const room = side * slope > 0 ? (window.ground - EDGE) / window.scale : (window.height - window.ground - EDGE) / window.scale;
  const reach = Math.min(wide, slope === 0 ? wide : room / Math.abs(slope));
  return [side * reach, side * reach * slope];
}

/**
 * The upright over the front axle with a tick for every quarter of what the neutral line reaches there.
 * @param {import('./stage.js').Window} window
 * @param {number} wheelbase m.
 * @param {number} cgHeight m.
 */
function marks(window, wheelbase, cgHeight) {
  const x = px(window.x(wheelbase));
  let text = `M${x} ${window.ground}V${px(window.y(0.48 * wheelbase))}`;
  for (let quarter = 1; (quarter * cgHeight) / 4 < 0.48 * wheelbase; quarter++) {
    const long = quarter % 4 === 0 ? 7 : 3;
    text += `M${px(x - long)} ${px(window.y((quarter * cgHeight) / 4))}h${2 * long}`;
  }

  return text;
}

/**
 * @param {number} value
 * @param {import('../document.js').Unit} unit
 */
function rounded(value, unit) {
  return Number(inUnit(value, unit)) * unit.factor;
}

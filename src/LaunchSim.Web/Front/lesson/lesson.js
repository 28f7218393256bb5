// @ts-check

import { createCursor } from '../cursor.js';
import { decode } from '../document.js';
import { html } from '../elements.js';
import { createPlayer } from '../player.js';
import { createBalance } from './balance.js';
import { blockOf } from './blocks.js';
import { createCases } from './cases.js';
import { contentsOf } from './contents.js';
import { createCurves } from './curves.js';
import { createFloor } from './floor.js';
import { createFreeAxle } from './free-axle.js';
import { createFreeBody } from './free-body.js';
import { bound, partsOf } from './passage.js';
import { createReader } from './reader.js';
import { sourcesOf } from './sources.js';

/**
 * @typedef {{ key: string, letter: string, percent: string, click: string, ahead: number, up: number, launch: import('../document.js').Launch }} Case
 * @typedef {{
 *   title: string, opening: import('./passage.js').Passage[], chapters: { id: string, title: string, blocks: import('./blocks.js').Block[] }[],
 *   numbers: import('./passage.js').Numbers, cases: Omit<Case, 'launch'>[], outOfStep: string,
 *   car: import('./statics.js').Stiffness & { wheelbase: number, cgHeight: number, thrust: number, bars: import('./statics.js').Bars }
 * }} LessonText
 * @typedef {{
 *   text: LessonText, launches: import('../document.js').LaunchDocument, reader: import('./reader.js').Reader, cursor: import('../cursor.js').Cursor,
 *   starts: { name: string, values: Partial<import('./reader.js').Values> }[], caseOf(key: string): Case, draw(name: string): HTMLElement
 * }} Lesson
 */

/** Chapters in which something moves: they share the player. */
const MOVING = ['motion', 'damper', 'step'];

/** What a printed page shows of the moving cars, s. */
const PRINTED = 0.1;

/** @param {string} id */
function read(id) {
  return JSON.parse(/** @type {HTMLElement} */ (document.getElementById(id)).textContent ?? '');
}

/** @returns {Lesson} */
function lessonOf() {
  const launches = decode(read('document'));
  /** @type {LessonText} */
  const text = read('lesson-text');
  const { car } = text, { bars } = car;
  const cases = text.cases.map((one, i) => ({ ...one, launch: launches.launches[i] }));
  /** @param {string} key */
  const caseOf = (key) => /** @type {Case} */ (cases.find((one) => one.key === key));
  const length = (/** @type {import('./statics.js').Place} */ from, /** @type {import('./statics.js').Place} */ to) => Math.hypot(to[0] - from[0], to[1] - from[1]);
  const above = caseOf('above');
  const whole = { wheelbase: car.wheelbase, cgHeight: car.cgHeight, parallel: false };
  const reader = createReader(
    { ...whole, ahead: above.ahead, up: above.up, climb: Math.atan(car.cgHeight / car.wheelbase), thrust: car.thrust, rest: false },
    { lowerAxle: bars.lowerAxle, upperAxle: bars.upperAxle, lowerLength: length(bars.lowerAxle, bars.lowerBody), upperLength: length(bars.upperAxle, bars.upperBody) });
  const starts = [
    ...['below', 'at', 'above'].map(caseOf).map(({ percent, ahead, up }) => ({ name: `the ${percent} car`, values: { ...whole, ahead, up } })),
    { name: 'parallel bars', values: { ...whole, parallel: true, climb: Math.atan(car.cgHeight / car.wheelbase) } },
    { name: 'instant centre behind', values: { ...whole, ahead: -0.25 * car.wheelbase, up: 0.1 * car.wheelbase } },
  ];
  const cursor = createCursor(Math.max(...launches.launches.map((launch) => launch.duration)));

  // Before whoever draws for paper.
  window.addEventListener('beforeprint', () => cursor.set(cursor.time === 0 ? PRINTED : cursor.time));

  /** @type {{ element: HTMLElement, show(): void }[]} */
  const statics = [];
  /** @type {Lesson} */
  const lesson = { text, launches, reader, cursor, starts, caseOf, draw: (name) => (DRAWINGS[name] ? DRAWINGS[name](lesson) : curves(name)) };
  const curves = createCurves(lesson);
  reader.subscribe(() => statics.forEach((drawing) => drawing.show()));

  /** @param {(lesson: Lesson) => { element: HTMLElement, show(): void }} create */
  const live = (create) => (/** @type {Lesson} */ of) => {
    const drawing = create(of);
    statics.push(drawing);
    drawing.show();
    return drawing.element;
  };
  /** @type {Record<string, (lesson: Lesson) => HTMLElement>} */
  const DRAWINGS = {
    'shop-floor': live(createFloor),
    'free-axle': live(createFreeAxle),
    'free-body': live(createFreeBody),
    'balance': live(createBalance),
    'three-cars': (of) => createCases(of, ['below', 'at', 'above'], (one) => one.percent, 'whole'),
    'three-dampers': (of) => createCases(of, ['soft', 'above', 'stiff'], (one) => `click ${one.click}`, 'rear'),
    'two-steps': (of) => createCases(of, ['above', text.outOfStep], (one) => `click ${one.click}`, 'whole'),
  };
  return lesson;
}

/** @param {Lesson} lesson */
function pageOf(lesson) {
  const { text, launches, cursor } = lesson;
  const sections = text.chapters.map(({ id, title, blocks }, i) => html('section', { id, class: 'chapter', 'aria-labelledby': `${id}-title` },
    html('h2', { id: `${id}-title` }, html('span', { class: 'chapter-number' }, String(i + 1)), title), ...blocks.map((block) => blockOf(block, lesson))));
  const bar = html('div', { class: 'player-bar' });
  bar.append(createPlayer(cursor, bar).element);
  const moving = html('div', { class: 'moving-chapters' }, ...sections.filter(({ id }) => MOVING.includes(id)), bar);
  const first = sections.findIndex(({ id }) => MOVING.includes(id));
  return [
    html('header', { class: 'title' }, html('h1', {}, bound(text.title)), ...text.opening.map((passage) => html('p', { class: 'opening' }, ...partsOf(passage, text.numbers)))),
    contentsOf(text.chapters, sections),
    html('main', {}, ...sections.slice(0, first), moving, ...sections.slice(first + MOVING.length)),
    html('footer', {}, sourcesOf(text.numbers), html('p', { class: 'quiet' }, `${launches.program}. The lesson's car is invented; its launches were solved when this page was made.`)),
  ];
}

/** @type {HTMLElement} */ (document.getElementById('lesson')).append(...pageOf(lessonOf()));
document.documentElement.dataset.ready = 'true';

// @ts-check

import { html } from '../elements.js';
import { withUnit } from '../document.js';
import { createControl } from './control.js';
import { signed } from './free-axle.js';
import { atRest, firstInstant } from './statics.js';
import { verdictOf } from './floor.js';

/**
 * The reader's numbers and what the statics makes of them, at the first instant and at rest.
 * @param {import('./lesson.js').Lesson} lesson
 */
export function createBalance(lesson) {
  const { reader, launches, text } = lesson, { units } = launches, { car } = text;
  /** @param {number} value */
  const force = (value) => withUnit(value, units.force);
  /** @param {number} value */
  const travel = (value) => signed(value, units.travel);
  /** @type {{ name: string, both?: (s: ReturnType<typeof import('./statics.js').staticsOf>) => string, each?: (m: import('./statics.js').Moment) => string, strong?: boolean }[]} */
  const rows = [
    { name: 'load that moves: thrust × height of the centre of gravity ÷ wheelbase', both: (s) => force(s.transfer) },
    { name: 'the bars press on the axle and lift at the body: thrust × slope', both: (s) => force(s.barsPush) },
    { name: 'over; below zero, missing', both: (s) => signed(s.apart, units.force), strong: true },
    { name: 'the rear springs bring', each: (m) => signed(m.springs, units.force) },
    { name: 'the rear tyres are pressed with', each: (m) => force(m.load), strong: true },
    { name: 'gap between body and axle', each: (m) => travel(m.gap) },
    { name: 'rear tyres, flatter by', each: (m) => travel(m.squash) },
    { name: 'rear end of the body, up', each: (m) => travel(m.rise) },
    { name: 'the front tyres are pressed with', each: (m) => force(m.front) },
    { name: 'front end of the body, up', each: (m) => travel(m.frontRise) },
  ];
  const own = launches.launches[0].car.wheelbase;
  const controls = [
    createControl({ label: 'Thrust of both rear tyres', unit: units.force, min: 0, max: 2 * car.thrust, get: () => reader.values.thrust, set: (value) => reader.set({ thrust: value }) }),
    createControl({ label: 'Percent (moves the instant centre up or down)', unit: units.percent, min: -100, max: 300, get: () => reader.statics.percent, set: reader.setPercent }),
    createControl({ label: 'Height of the centre of gravity', unit: units.place, min: 0.08 * own, max: 0.42 * own, get: () => reader.values.cgHeight, set: (value) => reader.set({ cgHeight: value }) }),
    createControl({ label: 'Wheelbase', unit: units.place, min: 0.7 * own, max: 1.4 * own, get: () => reader.values.wheelbase, set: (value) => reader.set({ wheelbase: value }) }),
  ];
  const cells = rows.map((row) => (row.both ? [html('td', { class: 'number', colspan: 2 })] : [html('td', { class: 'number' }), html('td', { class: 'number' })]));
  const table = html('table', { class: 'numbers' },
    html('caption', {}, 'What the statics says'),
    html('thead', {}, html('tr', {}, html('th', { scope: 'col' }, 'both sides together'), html('th', { scope: 'col', class: 'number' }, 'first instant'), html('th', { scope: 'col', class: 'number' }, 'at rest'))),
    html('tbody', {}, ...rows.map((row, i) => html('tr', { class: row.strong ? 'marked' : null }, html('th', { scope: 'row' }, row.name), ...cells[i]))));
  const verdict = html('output', { class: 'verdict', 'aria-live': 'polite' });
  const warning = html('p', { class: 'warning' });
  const element = html('figure', { class: 'statics balance' },
    html('div', { class: 'balance-parts' }, html('div', {}, html('div', { class: 'controls-grid' }, ...controls.map((control) => control.element)), verdict, warning), html('div', { class: 'wide' }, table)),
    html('figcaption', { class: 'quiet' }, 'Standing loads and the rates of springs and tyres are those of the lesson\'s car.'));
  return {
    element,
    show() {
      const { statics } = reader, first = firstInstant(statics, car), rest = atRest(statics, car);
      rows.forEach((row, i) => {
        const values = row.both ? [row.both(statics)] : row.each ? [row.each(first), row.each(rest)] : [];
        values.forEach((value, k) => {
          cells[i][k].textContent = Number.isFinite(statics.percent) ? value : 'none';
        });
      });
      verdict.textContent = Number.isFinite(statics.percent) ? `${verdictOf(statics.percent)} ${told(statics, units.force)}` : verdictOf(statics.percent);
      warning.textContent = warningOf(rest, statics, car);
      warning.hidden = warning.textContent === '';
      for (const control of controls) {
        control.show();
      }
    },
  };
}

/**
 * @param {ReturnType<typeof import('./statics.js').staticsOf>} statics
 * @param {import('../document.js').Unit} unit
 */
function told({ transfer, barsPush, apart, percent }, unit) {
  const over = withUnit(Math.abs(apart), unit);
  return Math.round(percent) === 100 ? `${withUnit(transfer, unit)} move, and the bars bring them.`
    : apart > 0 ? `${withUnit(transfer, unit)} move, the bars press with ${withUnit(barsPush, unit)}: ${over} push apart and press the tyres as hard, until the springs have given up as much.`
      : `${withUnit(transfer, unit)} move, the bars bring ${withUnit(barsPush, unit)}: ${over} have to come from springs that get shorter.`;
}

/**
 * Where the drawing ends.
 * @param {import('./statics.js').Moment} rest
 * @param {ReturnType<typeof import('./statics.js').staticsOf>} statics
 * @param {import('./lesson.js').LessonText['car']} car
 */
function warningOf(rest, statics, car) {
  return [
    rest.front < 0 ? 'The front tyres would have to be pulled down: they are in the air, and no more load can move. The numbers at rest are not to be had.' : '',
    statics.apart > car.rearSprings ? 'The rear springs would have to pull: they have gone loose. The gap would open farther than the table says.' : '',
    rest.load < 0 || car.rearLoad + statics.barsPush < 0 ? 'The bars would lift the tyres off the ground.' : '',
  ].filter((text) => text !== '').join(' ');
}

// @ts-check

import { svg } from '../elements.js';
import { withUnit } from '../document.js';
import { px, through } from './path.js';

/** A bar with less than this share of the largest force of the launch carries nothing that is worth a word. */
const QUIET = 0.02;

/** Slower than this a damper stands still, m/s (0.5 in/s). */
const STILL = 0.0127;

/**
 * Axle housing, bars, springs and dampers, wheelie bar. A bar that pulls and a damper that opens are solid, a bar that pushes
 * and a damper that closes are dashed.
 * @param {import('./pose.js').Pose} pose
 * @param {import('../document.js').LaunchDocument} doc
 */
export function createAxle(pose, doc) {
  const { car } = pose.launch;
  const housing = svg('path', { class: 'housing' });
  const bars = car.bars.map((bar) => createBar(bar, pose, doc));
  const units = car.units.map((unit) => createUnit(unit, pose));
  const wheelie = car.wheelieBar && svg('path', { class: 'wheelie-bar' });
  const element = svg('g', { class: 'axle' }, ...units.map((unit) => unit.element), ...(wheelie ? [wheelie] : []), housing, ...bars.map((bar) => bar.element));
  return {
    element,
    /** @param {import('./window.js').Window} window */
    draw(window) {
      const centre = pose.housing(0, car.rear.height);
      const arms = car.bars.flatMap((bar) => bar.axle && car.bars.length > 1 ? [through(window, [centre, pose.housing(...bar.axle)])] : []);
      housing.setAttribute('d', arms.join(''));
      for (const part of [...bars, ...units]) {
        part.draw(window);
      }

      if (wheelie && car.wheelieBar) {
        wheelie.setAttribute('d', through(window, [centre, pose.housing(...car.wheelieBar)]));
        wheelie.classList.toggle('loaded', pose.read('wheelie_bar_force_n') > 0);
      }
    },
  };
}

/**
 * @param {import('../document.js').Strut} bar
 * @param {import('./pose.js').Pose} pose
 * @param {import('../document.js').LaunchDocument} doc
 */
function createBar(bar, pose, doc) {
  const column = bar.name.startsWith('upper') ? 'upper_link_force_n' : 'lower_link_force_n';
  const most = Math.max(0, ...(pose.launch.columns[column] ?? []).map((force) => Math.abs(force) || 0));
  const line = svg('path', { class: 'bar' });
  const ends = [svg('circle', { class: 'joint', r: 3.2 }), svg('circle', { class: 'joint', r: 3.2 })];
  const words = svg('text', { class: 'small force', 'text-anchor': 'middle' });
  return {
    element: svg('g', {}, svg('title', {}, bar.name), line, ...ends, words),
    /** @param {import('./window.js').Window} window */
    draw(window) {
      if (!bar.axle || !bar.body) {
        return;
      }

      const from = pose.housing(...bar.axle), to = pose.body(...bar.body);
      line.setAttribute('d', through(window, [from, to]));
      [from, to].forEach(([x, z], i) => {
        ends[i].setAttribute('cx', String(px(window.x(x))));
        ends[i].setAttribute('cy', String(px(window.y(z))));
      });
      const force = pose.read(column);
      const loud = Math.abs(force) > QUIET * most;
      line.classList.toggle('pushes', loud && force < 0);
      words.textContent = loud && window.scale > 150 ? `${force < 0 ? 'pushes' : 'pulls'} ${withUnit(Math.abs(force), doc.units.force)}` : '';
      const up = column === 'upper_link_force_n' ? -8 : 16;
      const x = window.x(0.5 * (from[0] + to[0])), y = window.y(0.5 * (from[1] + to[1])) + up;
      const slant = (Math.atan2(window.y(to[1]) - window.y(from[1]), window.x(to[0]) - window.x(from[0])) * 180) / Math.PI;
      words.setAttribute('transform', `translate(${px(x)} ${px(y)}) rotate(${px(slant)})`);
    },
  };
}

/**
 * @param {import('../document.js').Strut} unit
 * @param {import('./pose.js').Pose} pose
 */
function createUnit(unit, pose) {
  const springs = unit.name.includes('spring'), damps = unit.name.includes('damper');
  const spring = svg('path', { class: 'spring' });
  const damper = svg('path', { class: 'damper' });
  return {
    element: svg('g', {}, svg('title', {}, unit.name), ...(damps ? [damper] : []), ...(springs ? [spring] : [])),
    /** @param {import('./window.js').Window} window */
    draw(window) {
      if (!unit.axle || !unit.body) {
        return;
      }

      const from = pose.housing(...unit.axle), to = pose.body(...unit.body);
      damper.setAttribute('d', through(window, [from, to]));
      const speed = pose.read('rear_damper_speed_mps');
      damper.classList.toggle('closes', speed < -STILL);
      damper.classList.toggle('moves', Math.abs(speed) >= STILL);
      spring.setAttribute('d', coil(window, from, to));
    },
  };
}

/**
 * @param {import('./window.js').Window} window
 * @param {readonly [number, number]} from
 * @param {readonly [number, number]} to
 */
function coil(window, from, to) {
  const turns = 9, half = 0.035 * window.scale;
  const x0 = window.x(from[0]), y0 = window.y(from[1]), dx = window.x(to[0]) - x0, dy = window.y(to[1]) - y0;
  const length = Math.hypot(dx, dy) || 1;
  let text = `M${px(x0)} ${px(y0)}`;
  for (let i = 1; i < 2 * turns; i++) {
    const share = 0.12 + ((0.76 * i) / (2 * turns)), side = i % 2 === 0 ? half : -half;
    text += `L${px(x0 + (share * dx) - ((side * dy) / length))} ${px(y0 + (share * dy) + ((side * dx) / length))}`;
  }

  return `${text}L${px(x0 + dx)} ${px(y0 + dy)}`;
}

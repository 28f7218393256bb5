// @ts-check

import { svg } from '../elements.js';
import { px } from './path.js';

/**
 * A wheel whose tyre the ground flattens and the carcass winds up.
 * @typedef {{ element: SVGGElement, draw(window: import('./window.js').Window, at: readonly [number, number], angle: number, windup: number): void }} Wheel
 */

/** Shares of the free radius: rim, hub, and where the sidewall's lines end. */
const RIM = 0.58, HUB = 0.12, BELT = 0.95;
const LINES = 14, SPOKES = 5;

/**
 * @param {number} radius The tyre's free radius, m.
 * @param {boolean} winds Whether its carcass winds up.
 * @returns {Wheel}
 */
export function createWheel(radius, winds) {
  const tire = svg('path', { class: 'tire' });
  const sidewall = svg('path', { class: 'sidewall' });
  const rim = svg('circle', { class: 'rim' });
  const spokes = svg('path', { class: 'spokes' });
  const element = svg('g', { class: 'wheel' }, tire, sidewall, rim, spokes);
  return {
    element,
    draw(window, [ahead, up], angle, windup) {
      const x = window.x(ahead), y = window.y(up), r = radius * window.scale, height = window.ground - y;
      tire.setAttribute('d', tireShape(window, ahead, up, radius));
      rim.setAttribute('cx', String(px(x)));
      rim.setAttribute('cy', String(px(y)));
      rim.setAttribute('r', String(px(RIM * r)));
      spokes.setAttribute('d', spread(SPOKES, (turn) => {
        const [c, s] = [Math.cos(angle + turn), Math.sin(angle + turn)];
        return `M${px(x + (HUB * r * c))} ${px(y + (HUB * r * s))}L${px(x + (0.94 * RIM * r * c))} ${px(y + (0.94 * RIM * r * s))}`;
      }));
      sidewall.setAttribute('d', spread(LINES, (turn) => sidewallLine(x, y, r, height, angle + turn, winds ? windup : 0)));
    },
  };
}

/**
 * A tyre that the ground flattens, as path data.
 * @param {import('./window.js').Window} window
 * @param {number} ahead
 * @param {number} up
 * @param {number} radius The free radius, m.
 */
export function tireShape(window, ahead, up, radius) {
  const x = window.x(ahead), y = window.y(up), r = radius * window.scale, height = window.ground - y;
  return height >= r ? round(x, y, r) : flattened(x, y, r, height);
}

/**
 * A line of the sidewall: upright where it meets rim and belt, slanted between by what the rim is ahead of the belt.
 * @param {number} x
 * @param {number} y
 * @param {number} r
 * @param {number} height Of the centre over the ground, px.
 * @param {number} angle Of its end at the rim, clockwise.
 * @param {number} windup
 */
function sidewallLine(x, y, r, height, angle, windup) {
  const outer = angle - windup;
  const down = Math.sin(outer);
  const reach = Math.min(BELT * r, down > 0 ? (height - (0.03 * r)) / down : BELT * r);
  const inner = RIM * r, middle = 0.5 * (inner + reach);
  /** @param {number} length @param {number} at */
  const point = (length, at) => `${px(x + (length * Math.cos(at)))} ${px(y + (length * Math.sin(at)))}`;
  return `M${point(inner, angle)}C${point(middle, angle)} ${point(middle, outer)} ${point(reach, outer)}`;
}

/**
 * @param {number} x
 * @param {number} y
 * @param {number} r
 */
function round(x, y, r) {
  return `M${px(x - r)} ${px(y)}a${px(r)} ${px(r)} 0 1 1 ${px(2 * r)} 0a${px(r)} ${px(r)} 0 1 1 ${px(-2 * r)} 0Z`;
}

/**
 * @param {number} x
 * @param {number} y
 * @param {number} r
 * @param {number} height
 */
function flattened(x, y, r, height) {
  const half = Math.sqrt(Math.max(0, (r * r) - (height * height)));
  return `M${px(x - half)} ${px(y + height)}A${px(r)} ${px(r)} 0 ${height > 0 ? 1 : 0} 1 ${px(x + half)} ${px(y + height)}Z`;
}

/**
 * @param {number} count
 * @param {(turn: number) => string} one
 */
function spread(count, one) {
  let text = '';
  for (let i = 0; i < count; i++) {
    text += one((2 * Math.PI * i) / count);
  }

  return text;
}

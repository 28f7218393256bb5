// @ts-check

import { px } from './path.js';

/**
 * A line with its head at the second point.
 * @param {number} x0
 * @param {number} y0
 * @param {number} x1
 * @param {number} y1
 */
export function arrow(x0, y0, x1, y1) {
  const length = Math.hypot(x1 - x0, y1 - y0), head = Math.min(8, 0.6 * length);
  const ux = (x1 - x0) / length, uy = (y1 - y0) / length;
  const bx = x1 - (head * ux), by = y1 - (head * uy), side = 0.45 * head;
  return `M${px(x0)} ${px(y0)}L${px(bx)} ${px(by)}M${px(x1)} ${px(y1)}L${px(bx - (side * uy))} ${px(by + (side * ux))}L${px(bx + (side * uy))} ${px(by - (side * ux))}Z`;
}

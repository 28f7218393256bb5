// @ts-check
import { svg } from '../elements.js';

/**
 * Words in a drawing.
 * @param {string} text
 * @param {number} x
 * @param {number} y Of the base line.
 * @param {string} className
 */
export function words(text, x, y, className) {
  return svg('text', { x: rounded(x), y: rounded(y), class: className }, text);
}

/**
 * A coordinate with as many digits as can be seen.
 * @param {number} pixels
 */
export function rounded(pixels) {
  return Math.round(pixels * 10) / 10;
}

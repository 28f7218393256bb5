// @ts-check

/**
 * Numbers for an attribute: tenths of a pixel are enough, and short.
 * @param {number} value
 */
export function px(value) {
  return Math.round(value * 10) / 10;
}

/**
 * A line through places of the world, as path data.
 * @param {import('./window.js').Window} window
 * @param {readonly (readonly [number, number])[]} places
 * @param {boolean} [closed]
 */
export function through(window, places, closed) {
  let text = '';
  for (const [ahead, up] of places) {
    text += `${text ? 'L' : 'M'}${px(window.x(ahead))} ${px(window.y(up))}`;
  }

  return closed ? `${text}Z` : text;
}

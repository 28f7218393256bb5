// @ts-check

import { html, put, svg } from '../elements.js';

/**
 * A drawing to scale that is as wide as its column.
 * @typedef {{ behind: number, ahead: number, up: number, below: number }} Extent What is seen from the contact point: behind, ahead and up, m; room below the ground, px.
 * @typedef {import('../scene/window.js').Window} Window
 */

/**
 * @param {string} name Its class.
 * @param {(width: number) => Extent} extent Told how wide the drawing is, px.
 * @param {SVGElement[]} parts
 * @param {(window: Window) => string} draw Draws, and says what is to be seen for those who do not see it.
 */
export function createStage(name, extent, parts, draw) {
  const drawing = svg('svg', { class: `scene ${name}`, role: 'img' }, ...parts);
  const element = html('div', { class: 'stage-host' });
  element.append(drawing);

  function show() {
    const width = Math.max(240, Math.round(element.clientWidth) || 640);
    const { behind, ahead, up, below } = extent(width);
    const scale = width / (behind + ahead), ground = Math.round(up * scale), height = ground + below;
    /** @type {Window} */
    const window = { view: 'whole', strip: 0, width, height, scale, left: behind, ground, x: (place) => (place + behind) * scale, y: (place) => ground - (place * scale) };
    put(drawing, { viewBox: `0 0 ${width} ${height}`, width, height });
    drawing.setAttribute('aria-label', draw(window));
  }

  new ResizeObserver(show).observe(element);
  return { element, drawing, show };
}

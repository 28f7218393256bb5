// @ts-check

import { put, svg } from '../elements.js';
import { px } from '../scene/path.js';

/**
 * Words in a drawing, kept inside of it.
 * @param {string} [kind] Classes.
 */
export function createLabel(kind = 'small') {
  const element = svg('text', { class: kind });
  return {
    element,
    /**
     * @param {import('../scene/window.js').Window} window
     * @param {string} text Empty hides it.
     * @param {number} x px.
     * @param {number} y px.
     * @param {'start' | 'middle' | 'end'} [anchor]
     */
    put(window, text, x, y, anchor = 'start') {
      element.textContent = text;
      put(element, { display: text ? null : 'none' });
      if (text) {
        // Its own length is known only where it is drawn; before that seven pixels a letter are near enough.
        const length = element.getComputedTextLength() || 7 * text.length;
        const left = x - (anchor === 'start' ? 0 : anchor === 'middle' ? length / 2 : length);
        const inside = Math.max(4, Math.min(left, window.width - length - 4));
        put(element, { x: px(inside), y: px(Math.max(14, Math.min(y, window.height - 5))) });
      }
    },
  };
}

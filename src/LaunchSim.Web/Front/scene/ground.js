// @ts-check

import { svg } from '../elements.js';
import { px } from './path.js';

const LABELS = 6;

/**
 * The track that passes beneath: a tick at each foot or half metre, a number at every tenth.
 * @param {import('../document.js').Unit} unit The unit of distance.
 */
export function createGround(unit) {
  const line = svg('path', { class: 'ground' });
  const ticks = svg('path', { class: 'ground-ticks' });
  const labels = Array.from({ length: LABELS }, () => svg('text', { class: 'small muted', 'text-anchor': 'middle' }));
  const element = svg('g', { 'aria-hidden': true }, line, ticks, ...labels);
  const spacing = unit.factor < 0.5 ? unit.factor : 0.5 * unit.factor;
  const every = unit.factor < 0.5 ? 5 : 4;
  return {
    element,
    /**
     * @param {import('./window.js').Window} window
     * @param {number} place Of the rear wheel along the track, m.
     */
    draw(window, place) {
      const y = window.ground;
      line.setAttribute('d', `M0 ${y}H${window.width}`);
      const first = Math.ceil((place - window.left) / spacing);
      const count = Math.floor(window.width / (spacing * window.scale));
      let text = '', used = 0;
      for (let i = first; i <= first + count; i++) {
        const x = px(window.x((i * spacing) - place));
        const named = i % every === 0;
        text += `M${x} ${y}v${named ? 7 : 4}`;
        if (named && used < LABELS && x > 14 && x < window.width - 14) {
          const label = labels[used++];
          label.setAttribute('x', String(x));
          label.setAttribute('y', String(y + 18));
          label.textContent = `${Math.round((i * spacing) / unit.factor)} ${unit.unit}`;
        }
      }

      ticks.setAttribute('d', text);
      for (; used < LABELS; used++) {
        labels[used].textContent = '';
      }
    },
  };
}

// @ts-check

import { html } from '../elements.js';
import { inUnit } from '../document.js';

/**
 * The formula of the percent written out with the reader's numbers.
 * @param {import('./lesson.js').Lesson} lesson
 */
export function formulaOf(lesson) {
  const { reader, launches } = lesson, { place, percent } = launches.units;
  const slope = html('span', { class: 'fraction' }), neutral = html('span', { class: 'fraction' }), result = html('strong');
  const element = html('p', { class: 'formula' }, 'percent = 100 × ', slope, ' ÷ ', neutral, ' = ', result);
  return {
    element,
    show() {
      const { parallel, ahead, up, climb, cgHeight, wheelbase } = reader.values, { statics } = reader;
      slope.textContent = parallel ? `tan ${inUnit(climb, launches.units.angle)}°` : `(${inUnit(up, place)} ÷ ${inUnit(ahead, place)})`;
      neutral.textContent = `(${inUnit(cgHeight, place)} ÷ ${inUnit(wheelbase, place)})`;
      result.textContent = Number.isFinite(statics.percent) ? `${inUnit(statics.percent, percent)} %` : 'none';
    },
  };
}

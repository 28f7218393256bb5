// @ts-check

import { html } from '../elements.js';

/**
 * Where every number of the text is from.
 * @param {import('./passage.js').Numbers} numbers
 */
export function sourcesOf(numbers) {
  return html('details', { class: 'sources' }, html('summary', {}, 'Where every number of the text is from'),
    html('div', { class: 'wide', tabindex: 0, role: 'region', 'aria-label': 'the numbers of the text' }, html('table', { class: 'numbers' },
      html('thead', {}, html('tr', {}, html('th', { scope: 'col' }, 'what it is'), html('th', { scope: 'col', class: 'number' }, 'number'))),
      html('tbody', {}, ...Object.values(numbers).map(({ meaning, text }) => html('tr', {}, html('th', { scope: 'row' }, meaning), html('td', { class: 'number' }, text)))))));
}

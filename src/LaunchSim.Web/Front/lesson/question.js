// @ts-check

import { html } from '../elements.js';
import { partsOf, plain } from './passage.js';

let count = 0;

/**
 * A question with its answer folded away. Where there are choices, opening the answer tells what was said before.
 * @param {import('./blocks.js').Question} question
 * @param {import('./passage.js').Numbers} numbers
 */
export function questionOf({ asked, answer, choices, right }, numbers) {
  const name = `question-${++count}`;
  const said = html('p', { class: 'you-said' });
  said.hidden = true;
  const details = html('details', {}, html('summary', {}, 'Answer'), said, ...answer.map((text) => html('p', {}, ...partsOf(text, numbers))));
  if (choices.length === 0) {
    return html('div', { class: 'question' }, html('p', { class: 'asked' }, ...partsOf(asked, numbers)), details);
  }

  const inputs = choices.map((_, i) => html('input', { type: 'radio', name, id: `${name}-${i}` }));
  inputs.forEach((input, i) => input.addEventListener('change', () => {
    said.hidden = false;
    said.textContent = `You said: ${plain(choices[i], numbers)}. ${i === right ? 'So it is.' : `It is otherwise: ${plain(choices[right], numbers)}.`}`;
  }));
  return html('div', { class: 'question' }, html('fieldset', {}, html('legend', { class: 'asked' }, ...partsOf(asked, numbers)),
    ...inputs.map((input, i) => html('span', { class: 'choice' }, input, html('label', { for: input.id }, ...partsOf(choices[i], numbers))))), details);
}

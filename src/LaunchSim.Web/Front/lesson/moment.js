// @ts-check

import { html } from '../elements.js';
import { atRest, firstInstant } from './statics.js';

/**
 * The reader's car at the moment that the reader looks at.
 * @param {import('./lesson.js').Lesson} lesson
 */
export function momentOf({ reader, text }) {
  return (reader.values.rest ? atRest : firstInstant)(reader.statics, text.car);
}

let count = 0;

/**
 * Chooses the moment: the first instant, or come to rest.
 * @param {import('./lesson.js').Lesson} lesson
 */
export function createMomentChoice({ reader }) {
  const name = `moment-${++count}`;
  const choices = [{ rest: false, text: 'the first instant: nothing has moved' }, { rest: true, text: 'at rest under the thrust: nothing moves any more' }].map(({ rest, text }) => {
    const input = html('input', { type: 'radio', name, id: `${name}-${rest}` });
    input.addEventListener('change', () => reader.set({ rest }));
    return { rest, input, element: html('span', { class: 'choice' }, input, html('label', { for: `${name}-${rest}` }, text)) };
  });
  return {
    element: html('fieldset', { class: 'moment' }, html('legend', {}, 'The forces are those of'), ...choices.map((choice) => choice.element)),
    show() {
      for (const { rest, input } of choices) {
        input.checked = reader.values.rest === rest;
      }
    },
  };
}

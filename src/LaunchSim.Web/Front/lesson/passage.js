// @ts-check

import { html } from '../elements.js';

/**
 * Text as the program wrote it: a number stands by its key, so that each tells where it is from.
 * @typedef {string | { n: string } | { t: string } | { s: string } | { c: string }} Part
 * @typedef {Part[]} Passage
 * @typedef {Record<string, { meaning: string, value: number, text: string }>} Numbers
 */

/**
 * @param {Passage} passage
 * @param {Numbers} numbers
 * @returns {(Node | string)[]}
 */
export function partsOf(passage, numbers) {
  return passage.map((part) => {
    if (typeof part === 'string') {
      return bound(part);
    }

    if ('n' in part) {
      const { meaning, value, text } = numbers[part.n];
      return html('data', { value, title: meaning }, text.replaceAll(' ', '\u00a0'));
    }

    return 't' in part ? html('em', {}, part.t) : 's' in part ? html('cite', {}, part.s) : html('code', {}, part.c);
  });
}

/**
 * Text whose numbers are not parted from their percent sign at a line's end.
 * @param {string} text
 */
export function bound(text) {
  return text.replaceAll(/(\d) %/g, '$1\u00a0%');
}

/**
 * A passage without marks.
 * @param {Passage} passage
 * @param {Numbers} numbers
 */
export function plain(passage, numbers) {
  return passage.map((part) => (typeof part === 'string' ? part : 'n' in part ? numbers[part.n].text : Object.values(part)[0])).join('');
}

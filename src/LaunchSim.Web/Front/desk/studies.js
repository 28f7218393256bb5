// @ts-check

import { html } from '../elements.js';

/**
 * The studies of the desk: what to change next, and how sure the launch is; with progress, and a way out.
 * @param {{ ask(what: 'next' | 'doubt'): number, cancel(): void, tryOut(edits: import('./set-up.js').Edit[]): void }} desk
 */
export function createStudies(desk) {
  const next = html('button', { type: 'button' }, 'What next?');
  const doubt = html('button', { type: 'button' }, 'How sure?');
  const bar = html('progress', { 'aria-label': 'progress' });
  const told = html('span', { role: 'status' });
  const cancel = html('button', { type: 'button' }, 'Cancel');
  const running = html('div', { class: 'running', hidden: true }, bar, told, cancel);
  const result = html('div', { class: 'next-list', 'aria-live': 'polite' });
  const element = html('section', { class: 'studies', 'aria-label': 'studies' }, html('div', { class: 'study-buttons' }, next, doubt), running, result);
  let number = 0;

  /** @param {'next' | 'doubt'} what */
  function begin(what) {
    number = desk.ask(what);
    if (number > 0) {
      running.hidden = false;
      bar.removeAttribute('value');
      told.textContent = 'begins';
    }
  }

  function end() {
    number = 0;
    running.hidden = true;
  }

  next.addEventListener('click', () => begin('next'));
  doubt.addEventListener('click', () => begin('doubt'));
  cancel.addEventListener('click', () => desk.cancel());
  return {
    element,
    end,
    /**
     * @param {any} message
     * @returns {boolean} Whether it was about a study of this desk.
     */
    take(message) {
      if (message.number !== number || number === 0) {
        return false;
      }

      switch (message.tell) {
        case 'progress':
          bar.max = message.of;
          bar.value = message.done;
          told.textContent = message.waiting ? 'waits for another desk\'s study' : `${message.done} of ${message.of} ${message.what}`;
          return true;
        case 'next':
          end();
          result.classList.remove('old');
          result.replaceChildren(...listOf(message, desk.tryOut));
          return true;
        case 'refused':
          end();
          result.replaceChildren(html('p', {}, message.errors.map((/** @type {any} */ error) => error.text).join(' ')));
          return true;
        case 'cancelled':
          end();
          return true;
        case 'doubt':
          end();
          return false;
        default:
          return false;
      }
    },
    /** What was found belongs to another set-up by now. */
    age() {
      result.classList.add('old');
    },
  };
}

/**
 * @param {any} message
 * @param {(edits: import('./set-up.js').Edit[]) => void} tryOut
 */
function listOf(message, tryOut) {
  const rows = [...message.singles, ...message.pairs].map((/** @type {any} */ row) => {
    const take = html('button', { type: 'button', 'aria-label': `Try ${row.words}` }, 'Try');
    take.addEventListener('click', () => tryOut(row.edits));
    return html('tr', { class: row.helps ? '' : 'quiet' }, html('td', {}, row.trouble ? null : take), html('th', { scope: 'row' }, row.words, ...(row.bars ?? []).map((/** @type {string} */ bar) => html('span', { class: 'bar-length quiet' }, bar))),
      html('td', { class: 'number' }, row.minutes === null ? '' : `${row.minutes} min`), html('td', {}, row.trouble ?? row.gain), html('td', { class: 'number' }, row.score ?? ''),
      ...(row.cells ?? message.aims.map(() => '')).map((/** @type {string} */ cell) => html('td', { class: 'number' }, cell)));
  });
  return [
    html('h2', { id: 'next-title' }, 'What next'),
    html('p', {}, message.conclusion),
    html('p', { class: 'old-note quiet' }, 'Found for another set-up than the present one; ask again.'),
    html('div', { class: 'wide', tabindex: 0, role: 'region', 'aria-label': 'changes as a table' }, html('table', {},
      html('thead', {}, html('tr', {}, ...['', 'change', 'takes', 'gains', 'score', ...message.aims].map((/** @type {string} */ text) => html('th', { scope: 'col' }, text || html('span', { class: 'only-heard' }, 'try it'))))),
      html('tbody', {}, html('tr', {}, html('td'), html('th', { scope: 'row' }, 'as it is'), html('td'), html('td'), html('td', { class: 'number' }, message.score), ...message.now.map((/** @type {string} */ cell) => html('td', { class: 'number' }, cell))), ...rows))),
    ...message.notes.map((/** @type {string} */ text) => html('p', { class: 'quiet' }, text)),
  ];
}

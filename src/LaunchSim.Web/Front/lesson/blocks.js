// @ts-check

import { html } from '../elements.js';
import { partsOf } from './passage.js';
import { questionOf } from './question.js';

/**
 * @typedef {import('./passage.js').Passage} Passage
 * @typedef {{ name: Passage, cells: Passage[], marked: boolean }} Row
 * @typedef {{ kind: 'table', caption: Passage, columns: Passage[], rows: Row[] }} Table
 * @typedef {{ kind: 'question', asked: Passage, answer: Passage[], choices: Passage[], right: number }} Question
 * @typedef {{ kind: 'paragraph', text: Passage } | { kind: 'heading', title: string } | { kind: 'points', points: Passage[] } | { kind: 'note', title: string, texts: Passage[] }
 *   | { kind: 'drawing', name: string } | { kind: 'spread', blocks: Block[], beside: Block } | Table | Question} Block
 */

/**
 * A piece of a chapter.
 * @param {Block} block
 * @param {import('./lesson.js').Lesson} lesson
 * @returns {HTMLElement}
 */
export function blockOf(block, lesson) {
  const { numbers } = lesson.text;
  switch (block.kind) {
    case 'paragraph':
      return html('p', {}, ...partsOf(block.text, numbers));
    case 'heading':
      return html('h3', {}, block.title);
    case 'points':
      return html('ul', {}, ...block.points.map((point) => html('li', {}, ...partsOf(point, numbers))));
    case 'note':
      return html('div', { class: 'note', role: 'note', 'aria-label': block.title }, html('h4', {}, block.title), ...block.texts.map((text) => html('p', {}, ...partsOf(text, numbers))));
    case 'drawing':
      return lesson.draw(block.name);
    case 'spread':
      return html('div', { class: 'spread' }, html('div', { class: 'spread-text' }, ...block.blocks.map((part) => blockOf(part, lesson))), html('div', { class: 'spread-beside' }, blockOf(block.beside, lesson)));
    case 'table':
      return tableOf(block, numbers);
    case 'question':
      return questionOf(block, numbers);
  }
}

/**
 * @param {Table} table
 * @param {import('./passage.js').Numbers} numbers
 */
function tableOf({ caption, columns, rows }, numbers) {
  const head = html('tr', {}, ...columns.map((column, i) => html('th', { scope: 'col', class: i > 0 ? 'number' : null }, ...partsOf(column, numbers))));
  const body = rows.map(({ name, cells, marked }) => html('tr', { class: marked ? 'marked' : null },
    html('th', { scope: 'row' }, ...partsOf(name, numbers)), ...cells.map((cell) => html('td', { class: 'number' }, ...partsOf(cell, numbers)))));
  const title = html('caption', {}, ...partsOf(caption, numbers));
  return html('div', { class: 'wide', tabindex: 0, role: 'region', 'aria-label': title.textContent }, html('table', { class: 'numbers' }, title, html('thead', {}, head), html('tbody', {}, ...body)));
}

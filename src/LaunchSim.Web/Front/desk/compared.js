// @ts-check

import { html } from '../elements.js';

/**
 * How the set-up does by the file's aims, and against the pinned one.
 */
export function createCompared() {
  const element = html('section', { class: 'compared', 'aria-labelledby': 'compared-title' });
  return {
    element,
    /** @param {any} message The answer to `solve`. */
    show(message) {
      const { aims, score, compared, pinnedScore } = message;
      if (!aims) {
        element.replaceChildren();
        return;
      }

      const isPinned = pinnedScore !== undefined;
      element.replaceChildren(
        html('h2', { id: 'compared-title' }, isPinned ? 'Against the pinned set-up' : 'Against what is wanted'),
        ...(compared ?? []).map((/** @type {string} */ text) => html('p', {}, text)),
        html('div', { class: 'wide', tabindex: 0, role: 'region', 'aria-label': 'aims as a table' }, html('table', {},
          html('thead', {}, html('tr', {}, ...['aim', 'wanted', isPinned ? 'pinned' : '', 'now', isPinned ? 'against pinned' : 'off by, points'].filter(Boolean).map((text) => html('th', { scope: 'col' }, text)))),
          html('tbody', {}, ...aims.map((/** @type {any} */ aim) => html('tr', {}, html('th', { scope: 'row' }, aim.aim), html('td', { class: 'quiet' }, aim.wanted),
            isPinned ? html('td', { class: 'number' }, aim.pinned ?? '') : null, html('td', { class: 'number' }, aim.value),
            html('td', {}, isPinned ? aim.verdict ?? '' : aim.points === null ? '' : aim.points.toFixed(2)))),
          html('tr', {}, html('th', { scope: 'row' }, 'together, fewer is better'), html('td'), isPinned ? html('td', { class: 'number' }, pinnedScore) : null, html('td', { class: 'number' }, score), html('td'))))));
    },
  };
}

// @ts-check

import { html } from '../elements.js';

/**
 * @typedef {{ file?: string, line?: number, column?: number, source?: string, path?: string, text: string }} Finding
 */

/**
 * What is wrong, each with its place and the line that it is in.
 * @param {string} title
 * @param {Finding[]} findings
 */
export function findingsOf(title, findings) {
  return html('div', { class: 'findings' }, html('p', { class: 'findings-title' }, title), html('ul', {}, ...findings.map(({ file, line, column, source, path, text }) => html('li', {},
    html('span', { class: 'place' }, [file && line ? `${file}:${line}:${column}` : '', path ?? ''].filter(Boolean).join(' ')), html('span', {}, ` ${text}`),
    source ? html('code', { class: 'source' }, source) : null))));
}

// @ts-check

import { html } from '../elements.js';
import { findingsOf } from './findings.js';

/**
 * @typedef {{ file: string, token: string, program: string }} DeskData
 */

/**
 * Asks for a name and saves the set-up as a file of its own.
 * @param {DeskData} desk
 * @param {() => import('./set-up.js').Edit[]} edits
 */
export function createSave(desk, edits) {
  const stem = desk.file.replace(/\.ya?ml$/, '');
  const as = html('input', { id: 'save-as', required: true, value: `${stem}-2.yaml`, spellcheck: 'false', autocomplete: 'off' });
  const name = html('input', { id: 'save-name', required: true, maxlength: 200, autocomplete: 'off' });
  const notes = html('textarea', { id: 'save-notes', rows: 3, maxlength: 2000 });
  const trouble = html('div', { role: 'alert' });
  const save = html('button', { type: 'submit' }, 'Save');
  const close = html('button', { type: 'button' }, 'Close');
  const form = html('form', {}, html('h2', { id: 'save-title' }, 'Save as a variant'),
    html('p', { class: 'quiet' }, `A new file that begins from ${desk.file} and names only what was moved. No file is overwritten.`),
    html('label', { for: 'save-as' }, 'file'), as, html('label', { for: 'save-name' }, 'name of the set-up'), name, html('label', { for: 'save-notes' }, 'notes, may be left out'), notes, trouble,
    html('div', { class: 'dialog-buttons' }, save, close));
  const element = html('dialog', { 'aria-labelledby': 'save-title', 'data-keys': true }, form);
  close.addEventListener('click', () => element.close());
  form.addEventListener('submit', async (event) => {
    event.preventDefault();
    save.disabled = true;
    trouble.replaceChildren();
    try {
      const answer = await post('/save', desk.token, { file: desk.file, as: as.value, name: name.value, notes: notes.value, edits: edits() });
      const told = await answer.json();
      trouble.replaceChildren(answer.ok
        ? html('p', {}, `Saved: ${told.saved}. `, html('a', { href: `/desk?file=${encodeURIComponent(told.saved)}&token=${desk.token}` }, 'Open it'))
        : findingsOf('Nothing was saved.', told.errors ?? []));
    } catch {
      trouble.replaceChildren(html('p', {}, 'The desk does not answer; nothing was saved.'));
    }

    save.disabled = false;
  });
  return {
    element,
    open() {
      trouble.replaceChildren();
      element.showModal();
    },
  };
}

/**
 * Loads the page of what is on the desk, to send to a friend.
 * @param {DeskData} desk
 * @param {object} more
 * @returns {Promise<string>} What is to be said about it.
 */
export async function downloadPage(desk, more) {
  try {
    const answer = await post('/page', desk.token, { file: desk.file, ...more });
    if (!answer.ok) {
      const told = await answer.json();
      return `No page: ${told.errors.map((/** @type {any} */ error) => error.text).join(' ')}`;
    }

    const address = URL.createObjectURL(await answer.blob());
    const link = html('a', { href: address, download: desk.file.replace(/\.ya?ml$/, '.html') });
    link.click();
    setTimeout(() => URL.revokeObjectURL(address), 60_000);
    return 'The page is among your downloads.';
  } catch {
    return 'The desk does not answer; there is no page.';
  }
}

/**
 * @param {string} path
 * @param {string} token
 * @param {object} body
 */
function post(path, token, body) {
  return fetch(path, { method: 'POST', headers: { 'Content-Type': 'application/json', 'Desk-Token': token }, body: JSON.stringify(body) });
}

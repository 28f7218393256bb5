// @ts-check

import { html } from './elements.js';

/**
 * What happens, in the report's sentences, a column a launch.
 * @param {import('./document.js').LaunchDocument} doc
 */
export function sentencesOf(doc) {
  return html('section', { class: 'sentences', 'aria-labelledby': 'sentences-title' }, html('h2', { id: 'sentences-title' }, 'What happens'), html('div', { class: 'columns' }, ...doc.launches.map((launch, i) =>
    html('div', {}, doc.launches.length > 1 ? html('h3', {}, `${'ABC'[i]}  ${launch.name}`) : null, launch.stopped ? html('p', { class: 'stopped' }, launch.stopped) : null,
      ...launch.sentences.map(({ text }) => html('p', {}, text))))));
}

/**
 * How sure it is: in what share of the plausible cars each statement holds.
 * @param {import('./document.js').LaunchDocument} doc
 */
export function doubtsOf(doc) {
  if (doc.launches.every((launch) => !launch.doubt)) {
    return null;
  }

  return html('section', { class: 'doubts', 'aria-labelledby': 'doubts-title' }, html('h2', { id: 'doubts-title' }, 'How sure it is'), ...doc.launches.flatMap((launch, i) => {
    const { doubt } = launch;
    return doubt ? [html('div', {}, doc.launches.length > 1 ? html('h3', {}, `${'ABC'[i]}  ${launch.name}`) : null, html('p', {}, doubt.conclusion),
      html('div', { class: 'wide', tabindex: 0, role: 'region', 'aria-label': `statements and their shares, ${launch.name}` }, html('table', {},
        html('thead', {}, html('tr', {}, html('th', { scope: 'col' }, 'said'), html('th', { scope: 'col', class: 'number' }, 'holds in'), html('th', { scope: 'col' }, 'surely within'))),
        html('tbody', {}, ...doubt.statements.map(({ text, share, limits, own }) =>
          html('tr', {}, html('th', { scope: 'row' }, own ? text : `(not of this car) ${text}`), html('td', { class: 'number' }, share), html('td', { class: 'quiet' }, limits)))))),
      html('p', { class: 'quiet' }, [...doubt.notes, 'Plausible means: within the doubts that were drawn, in this model. What the model leaves out is in no share.'].join(' ')))] : [];
  }));
}

/**
 * Caution, limits, and what the page was made from.
 * @param {import('./document.js').LaunchDocument} doc
 */
export function footOf(doc) {
  return html('footer', {}, html('p', { class: 'caution' }, doc.caution), html('details', {}, html('summary', {}, 'What a model in one plane cannot know'), html('ul', {}, ...doc.launches[0].limits.map((text) => html('li', {}, text)))),
    html('p', { class: 'quiet' }, `The grey body is no measurement. ${doc.program}; ${doc.launches.map((launch) => `${launch.file}, ${launch.hash}`).join('; ')}.`));
}

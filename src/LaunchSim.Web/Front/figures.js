// @ts-check

import { html } from './elements.js';

/**
 * The figures of all launches, family by family, with the bounds of plausible cars where somebody asked for them.
 * @param {import('./document.js').LaunchDocument} doc
 */
export function figuresOf(doc) {
  const several = doc.launches.length > 1, doubted = doc.launches.map((launch) => launch.doubt);
  const head = html('tr', {}, html('th', { scope: 'col' }, 'figure'), ...doc.launches.flatMap((launch, i) => [
    html('th', { scope: 'col', class: 'number' }, several ? `${'ABC'[i]}` : 'value'),
    ...(doubted[i] ? [html('th', { scope: 'col' }, 'nine plausible cars in ten')] : []),
  ]), html('th', { scope: 'col' }, 'unit'));
  const bodies = doc.launches[0].figures.map((family, f) => {
    const rows = family.rows.flatMap((first, r) => {
      const figures = doc.launches.map((launch) => launch.figures[f]?.rows[r]?.key === first.key ? launch.figures[f].rows[r] : find(launch, first.key));
      if (figures.every((figure) => figure?.number === undefined)) {
        return [];
      }

      const unit = figures.find((figure) => figure?.unit !== undefined)?.unit ?? '';
      return [html('tr', { 'data-figure': first.key }, html('th', { scope: 'row' }, first.name), ...figures.flatMap((figure, i) => [
        html('td', { class: 'number', title: figure?.reason }, figure?.number ?? 'none'),
        ...(doubted[i] ? [html('td', { class: 'quiet' }, doubted[i]?.figures[first.key] ?? '')] : []),
      ]), html('td', { class: 'quiet' }, unit))];
    });
    return rows.length === 0 ? null : html('tbody', {}, html('tr', { class: 'family' }, html('th', { scope: 'rowgroup', colspan: head.children.length }, family.title)), ...rows);
  });
  const differ = new Set(doc.launches.map((launch) => launch.duration.toFixed(3))).size > 1;
  const missing = missingOf(doc.launches[0]);
  return html('section', { class: 'figures', 'aria-labelledby': 'figures-title' }, html('h2', { id: 'figures-title' }, 'Figures'),
    differ ? html('p', { class: 'quiet' }, `The launches are not of one length (${doc.launches.map((launch) => `${launch.duration.toFixed(3)} s`).join(', ')}): what is largest, lowest or counted in all is over each one's own.`) : null,
    html('div', { class: 'wide', tabindex: 0, role: 'region', 'aria-label': 'figures as a table' }, html('table', {}, html('thead', {}, head), ...bodies)),
    missing.length > 0 ? html('details', {}, html('summary', {}, 'Figures without a value in this launch'), html('ul', {}, ...missing.map((text) => html('li', {}, text)))) : null);
}

/**
 * @param {import('./document.js').Launch} launch
 * @param {string} key
 */
function find(launch, key) {
  for (const family of launch.figures) {
    const found = family.rows.find((row) => row.key === key);
    if (found) {
      return found;
    }
  }

  return undefined;
}

/** @param {import('./document.js').Launch} launch */
function missingOf(launch) {
  /** @type {Map<string, string[]>} */
  const byReason = new Map();
  for (const { reason, name } of launch.figures.flatMap((family) => family.rows)) {
    if (reason !== undefined) {
      byReason.set(reason, [...(byReason.get(reason) ?? []), name]);
    }
  }

  return [...byReason].map(([reason, names]) => `${names.join('; ')} (${reason})`);
}

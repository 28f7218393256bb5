// @ts-check
import { numberText } from './data.js';
import { html } from '../elements.js';
import { valueAt } from './sample.js';

/** @typedef {import('./data.js').ChartData} ChartData */

// Coarse enough to be read, s; a long run gets fewer rows than that would make.
const STEP = 0.05;
const MOST_ROWS = 61;

// On paper a few instants, across.
const ON_PAPER = [0, 0.05, 0.1, 0.15, 0.2, 0.3, 0.4, 0.6, 0.8, 1];

/**
 * The values of a chart as a table: folded, and made when it is opened. On paper a short one of a few instants stands
 * below the chart, unless it was left open.
 */
export function createTable() {
  const body = html('div', { class: 'chart-table-scroll' });
  const details = html('details', { class: 'chart-table' }, html('summary', {}, 'Values as a table'), body);
  const paper = html('div', { class: 'chart-paper-table' });
  const element = html('div', { class: 'chart-tables' }, details, paper);
  /** @type {ChartData | null} */
  let data = null;

  function open() {
    if (data !== null && details.open && body.childElementCount === 0) {
      body.append(upright(data, evenly(data)));
      body.tabIndex = 0;
      body.setAttribute('role', 'region');
      body.setAttribute('aria-label', `Values: ${data.title}`);
    }
  }

  function onPaper() {
    paper.replaceChildren(...(data === null || details.open ? [] : [across(data, few(data))]));
  }

  details.addEventListener('toggle', open);
  window.addEventListener('beforeprint', onPaper);
  return {
    element,

    /** @param {ChartData} shown */
    show(shown) {
      data = shown;
      body.replaceChildren();
      paper.replaceChildren();
      open();
    },
    dispose() {
      window.removeEventListener('beforeprint', onPaper);
    },
  };
}

/** @param {ChartData} data */
function lastOf(data) {
  return Math.max(0, ...data.curves.map(({ times }) => times[times.length - 1] ?? 0));
}

/** @param {ChartData} data @returns {number[]} */
function evenly(data) {
  const last = lastOf(data);
  const step = STEP * Math.max(1, Math.ceil(last / STEP / (MOST_ROWS - 1) - 1e-9));
  const rows = Math.floor(last / step + 1e-9) + 1;
  return Array.from({ length: rows }, (_, row) => row * step);
}

/** @param {ChartData} data @returns {number[]} */
function few(data) {
  const last = lastOf(data);
  return (data.instants ?? ON_PAPER).filter((time) => time <= last);
}

/** @param {number} value @param {number} decimals */
function cell(value, decimals) {
  return html('td', {}, Number.isFinite(value) ? numberText(value, decimals) : '–');
}

/** @param {string} text @param {'col' | 'row'} scope */
function heading(text, scope) {
  return html('th', { scope }, text);
}

/** @param {ChartData} data */
function captioned({ title, unit }) {
  return html('caption', {}, unit === '' ? title : `${title}, ${unit}`);
}

// An instant a row: for a screen.
/** @param {ChartData} data @param {ReadonlyArray<number>} instants */
function upright(data, instants) {
  const head = html('thead', {}, html('tr', {}, heading('s', 'col'), ...data.curves.map((curve) => heading(curve.label, 'col'))));
  const rows = instants.map((time) => html('tr', {}, heading(time.toFixed(2), 'row'), ...data.curves.map((curve) => cell(valueAt(curve.times, curve.values, time), data.decimals))));
  return html('table', {}, captioned(data), head, html('tbody', {}, ...rows));
}

// A curve a row: short, for paper.
/** @param {ChartData} data @param {ReadonlyArray<number>} instants */
function across(data, instants) {
  const head = html('thead', {}, html('tr', {}, heading('s', 'col'), ...instants.map((time) => heading(time.toFixed(2), 'col'))));
  const rows = data.curves.map((curve) => html('tr', {}, heading(curve.label, 'row'), ...instants.map((time) => cell(valueAt(curve.times, curve.values, time), data.decimals))));
  return html('table', {}, head, html('tbody', {}, ...rows));
}

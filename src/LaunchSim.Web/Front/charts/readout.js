// @ts-check
import { hasValue, letterOf, numberText, quantityText } from './data.js';
import { html, svg } from '../elements.js';
import { valueAt } from './sample.js';

/** @typedef {import('./data.js').ChartData} ChartData */
/** @typedef {import('./data.js').Curve} Curve */

const NOTHING = '–';

// A sample of points, as wide as one of a line.
const POINTS = 'M5 5h0M13 5h0M21 5h0M29 5h0';

/**
 * What each curve is at an instant: a sample of its line, its name, the number and its unit; and what happens at that
 * instant. It is the legend too.
 */
export function createReadout() {
  const element = html('ul', { class: 'chart-readout' });
  const when = document.createTextNode('');
  const events = document.createTextNode('');
  /** @type {ChartData | null} */
  let data = null;
  /** @type {Text[]} */
  let numbers = [];
  let happening = -1;

  return {
    element,

    /** @param {ChartData} shown */
    show(shown) {
      data = shown;
      happening = -1;
      numbers = shown.curves.map(() => document.createTextNode(''));
      const digits = Math.max(1, ...shown.curves.map((curve) => digitsOf(curve, shown.decimals)));
      element.style.setProperty('--digits', String(digits));
      element.replaceChildren(
        html('li', { class: 'chart-when' }, html('span', { class: (shown.marks?.length ?? 0) > 0 ? 'chart-now chart-now-events' : 'chart-now' }, when, events)),
        ...shown.curves.map((curve, i) => item(curve, numbers[i], shown.unit)),
        ...(shown.band === undefined ? [] : [html('li', { class: 'chart-legend' }, swatch('chart-band-swatch'), html('span', {}, shown.band))]),
        ...(shown.strip === undefined ? [] : [html('li', { class: 'chart-legend' }, swatch('chart-strip-swatch'), html('span', {}, shown.strip.text))]),
      );
    },

    /**
     * @param {number} time s.
     * @param {boolean} isPointed Whether it is where the pointer is, and not where the cursor is.
     */
    update(time, isPointed) {
      if (data === null) {
        return;
      }

      write(when, `${isPointed ? 'pointer' : 'at'} ${time.toFixed(3)} s`);
      for (let i = 0; i < numbers.length; i++) {
        const { times, values } = data.curves[i];
        const value = valueAt(times, values, time);
        write(numbers[i], Number.isFinite(value) ? numberText(value, data.decimals) : NOTHING);
      }

      const now = keyAt(data, time);
      if (now !== happening) {
        happening = now;
        const text = eventsAt(data, time);
        write(events, text === '' ? '' : `: ${text}`);
      }
    },

    /**
     * The same in one sentence, for those who do not see it.
     * @param {number} time
     */
    text(time) {
      const shown = /** @type {ChartData} */ (data);
      const values = shown.curves.map((curve) => {
        const value = valueAt(curve.times, curve.values, time);
        return `${curve.label} ${Number.isFinite(value) ? quantityText(value, shown.decimals, shown.unit) : 'no value'}`;
      });
      const text = eventsAt(shown, time);
      return `${time.toFixed(3)} s: ${values.join(', ')}${text === '' ? '' : `; ${text}`}`;
    },
  };
}

/** @param {Text} node @param {string} text */
function write(node, text) {
  if (node.data !== text) {
    node.data = text;
  }
}

/** @param {Curve} curve @param {Text} number @param {string} unit */
function item(curve, number, unit) {
  const li = html('li', {}, sample(curve), html('span', {}, curve.label));
  if (hasValue(curve.values)) {
    li.append(html('span', { class: 'chart-value' }, number), html('span', { class: 'chart-unit' }, unit));
  } else {
    li.append(html('span', { class: 'chart-unit chart-none' }, `no value in this run${curve.reason === undefined ? '' : `: ${curve.reason}`}`));
  }

  return li;
}

/** @param {Curve} curve */
function sample(curve) {
  const kinds = curve.closing === undefined ? [curve.style] : ['solid', 'dash'];
  const length = 34 / kinds.length;
  const lines = kinds.map((kind, i) => svg('path', { d: kind === 'points' ? POINTS : `M${i * length} 5h${length}`, class: `chart-curve tone-${curve.tone} line-${kind}`, 'stroke-width': curve.weight ?? 2.2 }));
  return svg('svg', { viewBox: '0 0 34 10', width: 34, height: 10, class: 'chart-sample', 'aria-hidden': 'true' }, ...lines);
}

/** @param {string} className */
function swatch(className) {
  return svg('svg', { viewBox: '0 0 34 10', width: 34, height: 10, class: 'chart-sample', 'aria-hidden': 'true' }, svg('rect', { width: 34, height: 10, class: className }));
}

/** @param {Curve} curve @param {number} decimals */
function digitsOf({ values }, decimals) {
  let low = 0;
  let high = 0;
  for (const value of values) {
    low = value < low ? value : low;
    high = value > high ? value : high;
  }

  return Math.max(numberText(low, decimals).length, numberText(high, decimals).length);
}

/**
 * A number that differs when other things happen; comparing it costs no text.
 * @param {ChartData} data
 * @param {number} time
 */
function keyAt({ marks = [] }, time) {
  let key = 0;
  for (let i = 0; i < marks.length; i++) {
    key = holds(marks[i], time) ? (key * 31 + i + 1) | 0 : key;
  }

  return key;
}

/** @param {ChartData} data @param {number} time */
function eventsAt({ marks = [], curves }, time) {
  const several = curves.some((curve) => curve.launch > 0);
  const now = marks.filter((mark) => holds(mark, time));
  const texts = [...new Set(now.map(({ text }) => text))];
  return texts.map((text) => (several ? `${now.filter((mark) => mark.text === text).map(({ launch }) => letterOf(launch)).sort().join(', ')} ${text}` : text)).join(several ? '; ' : ', ');
}

// What takes no time is told for two hundredths.
/** @param {import('./data.js').Mark} mark @param {number} time */
function holds({ time: from, until }, time) {
  return time >= from && time <= (until ?? from + 0.02);
}

// @ts-check
import { bringIn, zoomAbout } from './range.js';
import { indexAt } from './sample.js';

/** @typedef {import('../cursor.js').Cursor} Cursor */
/** @typedef {import('./range.js').TimeRange} TimeRange */

const MANY = 10;
const ZOOM = 1.5;

/**
 * Keys on a plot that has the focus: arrows move the cursor by a sample, with Shift by ten; Home and End go to the ends; +
 * and − zoom about the cursor, 0 and Escape show the whole run.
 * @param {HTMLElement} area The plot.
 * @param {Cursor} cursor
 * @param {TimeRange} range
 * @param {() => Float64Array} samples The instants of the first curve.
 * @param {() => void} moved Told when a key has moved the cursor.
 * @returns {() => void} Ends it.
 */
export function followKeys(area, cursor, range, samples, moved) {
  /** @param {number} by Samples. */
  function step(by) {
    const times = samples();
    const at = indexAt(times, cursor.time);
    // From between two samples a step back goes to the earlier one.
    const from = by < 0 && at >= 0 && cursor.time > times[at] + 1e-9 ? at + 1 : at;
    const to = Math.min(times.length - 1, Math.max(0, from + by));
    go(times.length === 0 ? cursor.time : times[to]);
  }

  /** @param {number} time */
  function go(time) {
    cursor.set(time);
    bringIn(range, cursor.time);
    moved();
  }

  /** @param {number} factor */
  function zoom(factor) {
    const isInside = cursor.time >= range.from && cursor.time <= range.to;
    zoomAbout(range, isInside ? cursor.time : (range.from + range.to) / 2, factor);
  }

  /** @param {KeyboardEvent} event @returns {boolean} Whether the key means something here. */
  function press(event) {
    const samples = event.shiftKey ? MANY : 1;
    switch (event.key) {
      case 'ArrowLeft':
      case 'ArrowDown':
        step(-samples);
        return true;
      case 'ArrowRight':
      case 'ArrowUp':
        step(samples);
        return true;
      case 'Home':
        go(0);
        return true;
      case 'End':
        go(cursor.duration);
        return true;
      case '+':
      case '=':
        zoom(1 / ZOOM);
        return true;
      case '-':
      case '_':
        zoom(ZOOM);
        return true;
      case '0':
      case 'Escape': {
        // With nothing to undo here Escape is for what surrounds the chart.
        const wasWhole = range.isWhole;
        range.reset();
        return !wasWhole;
      }

      default:
        return false;
    }
  }

  /** @param {KeyboardEvent} event */
  function onKey(event) {
    if (!event.altKey && !event.ctrlKey && !event.metaKey && press(event)) {
      // The page has keys of its own for the time.
      event.preventDefault();
      event.stopPropagation();
    }
  }

  area.addEventListener('keydown', onKey);
  return () => area.removeEventListener('keydown', onKey);
}

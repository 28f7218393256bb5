// @ts-check
import { rounded } from './text.js';
import { indexAt } from './sample.js';

/** @typedef {import('./plane.js').Plane} Plane */

// Points nearer than that are a smear, px.
const APART = 4;

/**
 * A line through samples as the text of a path. Where more than two samples share a pixel's width only the lowest and the
 * highest of them are kept, in their order, so that no peak is lost. Not a number parts the line.
 * @param {Float64Array} times
 * @param {Float64Array} values
 * @param {Plane} plane
 * @param {(i: number) => boolean} [isDrawn] Which samples belong to the line; all when left out.
 */
export function linePath(times, values, plane, isDrawn) {
  let text = '';
  let isDown = false;
  eachKept(times, values, plane, (i) => {
    const value = values[i];
    if (!Number.isFinite(value) || (isDrawn !== undefined && !isDrawn(i))) {
      isDown = false;
      return;
    }

    text += `${isDown ? 'L' : 'M'}${rounded(plane.x(times[i]))} ${rounded(plane.y(value))}`;
    isDown = true;
  });
  return text;
}

/**
 * Samples as points, the text of a path of lines without length that have round ends. Of several that would lie within one
 * another one is kept.
 * @param {Float64Array} times
 * @param {Float64Array} values
 * @param {Plane} plane
 */
export function pointPath(times, values, plane) {
  let text = '';
  let last = -Infinity;
  for (let i = 0; i < times.length; i++) {
    const x = plane.x(times[i]);
    if (Number.isFinite(values[i]) && x - last >= APART) {
      text += `M${rounded(x)} ${rounded(plane.y(values[i]))}h0`;
      last = x;
    }
  }

  return text;
}

/**
 * The area between two edges as the text of a path.
 * @param {Float64Array} times
 * @param {Float64Array} low
 * @param {Float64Array} high
 * @param {Plane} plane
 */
export function bandPath(times, low, high, plane) {
  let text = '';
  let back = '';
  let start = '';
  const close = () => {
    text += start === '' ? '' : `${start}${back}Z`;
    start = back = '';
  };

  // Edges are smooth: every second pixel is enough.
  const stride = Math.max(1, Math.floor((2 * countIn(times, plane)) / Math.max(1, plane.right - plane.left)));
  const [first, last] = spanOf(times, plane);
  for (let i = first; i <= last; i = i < last ? Math.min(last, i + stride) : i + 1) {
    if (!Number.isFinite(low[i]) || !Number.isFinite(high[i])) {
      close();
      continue;
    }

    const x = rounded(plane.x(times[i]));
    start += `${start === '' ? 'M' : 'L'}${x} ${rounded(plane.y(high[i]))}`;
    back = `L${x} ${rounded(plane.y(low[i]))}${back}`;
  }

  close();
  return text;
}

/**
 * The first and the last sample that a line over the plane needs: one beyond each edge.
 * @param {Float64Array} times
 * @param {Plane} plane
 * @returns {[number, number]}
 */
function spanOf(times, plane) {
  return [Math.max(0, indexAt(times, plane.from)), Math.min(times.length - 1, indexAt(times, plane.to) + 1)];
}

/** @param {Float64Array} times @param {Plane} plane */
function countIn(times, plane) {
  const [first, last] = spanOf(times, plane);
  return last - first + 1;
}

/**
 * @param {Float64Array} times
 * @param {Float64Array} values
 * @param {Plane} plane
 * @param {(i: number) => void} keep
 */
function eachKept(times, values, plane, keep) {
  const [first, last] = spanOf(times, plane);
  if (last - first < 2 * (plane.right - plane.left)) {
    for (let i = first; i <= last; i++) {
      keep(i);
    }

    return;
  }

  for (let i = first; i <= last; ) {
    const column = Math.floor(plane.x(times[i]));
    let lowest = -1;
    let highest = -1;
    let gap = -1;
    for (; i <= last && Math.floor(plane.x(times[i])) === column; i++) {
      if (!Number.isFinite(values[i])) {
        gap = i;
      } else if (lowest < 0) {
        lowest = highest = i;
      } else {
        lowest = values[i] < values[lowest] ? i : lowest;
        highest = values[i] > values[highest] ? i : highest;
      }
    }

    // A gap within the pixel parts the line there.
    const kept = [lowest, highest, gap].sort((a, b) => a - b);
    kept.forEach((index, k) => {
      if (index >= 0 && index !== kept[k - 1]) {
        keep(index);
      }
    });
  }
}

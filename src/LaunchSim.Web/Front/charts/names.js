// @ts-check
import { STRIDE, clearance, overlap, reachOf } from './boxes.js';
import { svg } from '../elements.js';
import { rounded, words } from './text.js';
import { GUTTER } from './layout.js';
import { TEXT, shortened, wrapped } from './ruler.js';

/** @typedef {import('./boxes.js').Box} Box */
/** @typedef {import('./plane.js').Plane} Plane */
/** @typedef {(text: string) => number} Ruler */

// From a line to its name; from one name to the next; as far as it matters how far others are, px.
const NEAR = 4;
const APART = 2;
const ENOUGH = 36;

// How far from a point its words may stand.
const DISTANCES = [8, 20, 36];

// A name that covers something is worse than any distance.
const COVERED = 1000;

/**
 * Names beside the plot, each at the height at which its line ends, moved apart where they would meet, with a thin line
 * to the end of the curve.
 * @param {ReadonlyArray<{ text: string, className: string, end: { x: number, y: number } | null }>} names
 * @param {Plane} plane
 * @param {Ruler} ruler
 */
export function besideNames(names, plane, ruler) {
  const group = svg('g');
  const left = plane.right + 14;
  const room = plane.bottom - plane.top + 10;
  const width = GUTTER - 16;
  const all = names.map(({ text }) => wrapped(text, width, ruler));
  const isTight = all.reduce((sum, lines) => sum + lines.length, 0) * TEXT.line > room;
  const line = Math.min(TEXT.line, isTight ? room / names.length : TEXT.line);
  const placed = names.flatMap(({ text, className, end }, i) => {
    if (end === null) {
      return [];
    }

    const lines = isTight ? [shortened(text, width, ruler)] : all[i];
    const height = lines.length * line;
    return [{ lines, className, end, height, top: end.y - height / 2 }];
  });

  placed.sort((a, b) => a.end.y - b.end.y);
  apart(placed, plane.top - 8, plane.bottom + 2);
  for (const { lines, className, end, height, top } of placed) {
    const middle = top + height / 2;
    group.append(svg('path', { d: `M${rounded(end.x + 2)} ${rounded(end.y)}L${plane.right + 3} ${rounded(end.y)}L${left - 3} ${rounded(middle)}`, class: `chart-leader ${className}` }));
    lines.forEach((line, i) => group.append(words(line, left, top + i * TEXT.line + 11.5, `chart-name ${className}`)));
  }

  return group;
}

/**
 * Moves boxes in their order apart and into their bounds.
 * @param {Array<{ top: number, height: number }>} boxes By height.
 * @param {number} top
 * @param {number} bottom
 */
function apart(boxes, top, bottom) {
  // Those that meet form a block, which stands where its members on the average would like to.
  /** @type {Array<{ first: number, count: number, top: number, height: number }>} */
  const blocks = [];
  boxes.forEach((box, i) => {
    blocks.push({ first: i, count: 1, top: Math.max(top, Math.min(bottom - box.height, box.top)), height: box.height });
    for (let last = blocks[blocks.length - 1], before = blocks[blocks.length - 2]; before !== undefined && before.top + before.height > last.top; before = blocks[blocks.length - 2]) {
      const middle = (before.count * (before.top + before.height / 2) + last.count * (last.top + last.height / 2)) / (before.count + last.count);
      before.count += last.count;
      before.height += last.height;
      before.top = Math.max(top, Math.min(bottom - before.height, middle - before.height / 2));
      blocks.pop();
      last = before;
    }
  });

  for (const block of blocks) {
    let at = block.top;
    for (let i = block.first; i < block.first + block.count; i++) {
      boxes[i].top = at;
      at += boxes[i].height;
    }
  }
}

/**
 * A name within the plot, above or below its own line where it is farthest from the others.
 * @param {string} text
 * @param {string} className
 * @param {Float64Array} profile Its line.
 * @param {ReadonlyArray<Float64Array>} others The other lines.
 * @param {Box[]} taken Where other words are; the name's place is added.
 * @param {Plane} plane
 * @param {Ruler} ruler
 * @param {{ must?: boolean, apart?: number }} [how] Whether it is written even where it covers something; how far from all
 *   other lines its own has to be there, px.
 */
export function nameWithin(text, className, profile, others, taken, plane, ruler, { must = true, apart = 0 } = {}) {
  const width = ruler(text);
  const half = Math.ceil(width / 2 / STRIDE);
  /** @type {Box | null} */
  let best = null;
  let most = must ? -Infinity : -COVERED / 2;
  for (let i = half; i < profile.length - half; i += 3) {
    const alone = others.reduce((least, other) => Math.min(least, Number.isFinite(other[i]) ? Math.abs(other[i] - profile[i]) : Infinity), ENOUGH);
    if (!Number.isFinite(profile[i]) || alone < apart) {
      continue;
    }

    const own = reachOf(profile, i - half, i + half);
    const left = plane.left + i * STRIDE - width / 2;
    for (const top of [own.top - NEAR - TEXT.line + 2, own.bottom + NEAR]) {
      const box = { left, top, right: left + width, bottom: top + TEXT.line - 2 };
      const slope = Math.max(own.bottom - profile[i], profile[i] - own.top);
      // Of places that are as good, the later one: curves part with time.
      const score = freedom(box, others, taken, plane) + alone - slope + i / profile.length;
      if (score > most) {
        [best, most] = [box, score];
      }
    }
  }

  if (best === null) {
    return null;
  }

  taken.push(best);
  return words(text, best.left, best.bottom - 1.5, `chart-name ${className}`);
}

/**
 * Words beside a point, where they cover nothing; a little off, with a thin line to the point, when there is no room at it.
 * @param {string} text
 * @param {string} className
 * @param {{ x: number, y: number }} at
 * @param {boolean} above Whether above is better than below.
 * @param {ReadonlyArray<Float64Array>} lines
 * @param {Box[]} taken
 * @param {Plane} plane
 * @param {Ruler} ruler
 */
export function nameBeside(text, className, at, above, lines, taken, plane, ruler) {
  const width = ruler(text);
  const height = TEXT.line - 2;
  for (const far of DISTANCES) {
    const up = at.y - far - height;
    const down = at.y + far;
    const rows = above ? [up, down] : [down, up];
    const beside = at.y - height / 2;
    const places = [...rows.flatMap((top) => [[at.x - width / 2, top], [at.x + 4, top], [at.x - 4 - width, top]]), [at.x + far + 2, beside], [at.x - far - 2 - width, beside]];
    for (const [x, top] of places) {
      const left = Math.max(plane.left + APART, Math.min(plane.right - width, x));
      const box = { left, top, right: left + width, bottom: top + height };
      if (freedom(box, lines, taken, plane) > -COVERED / 2) {
        taken.push(box);
        const name = words(text, left, box.bottom - 1.5, className);
        const foot = { x: Math.min(box.right, Math.max(left, at.x)), y: top > at.y ? top : top + height < at.y ? top + height : at.y };
        return far === DISTANCES[0] ? name : svg('g', {}, svg('path', { d: `M${rounded(at.x)} ${rounded(at.y)}L${rounded(foot.x)} ${rounded(foot.y)}`, class: `chart-leader ${className}` }), name);
      }
    }
  }

  return null;
}

/** @param {Box} box @param {ReadonlyArray<Float64Array>} lines @param {ReadonlyArray<Box>} taken @param {Plane} plane */
function freedom(box, lines, taken, plane) {
  let score = ENOUGH;
  for (const line of lines) {
    const far = clearance(box, line, plane.left);
    score = Math.min(score, far < 0 ? -COVERED : far);
  }

  const isOut = box.left < plane.left || box.right > plane.right || box.top < plane.top - 6 || box.bottom > plane.bottom;
  return score - (isOut ? COVERED : 0) - COVERED * taken.filter((other) => overlap(box, other)).length;
}

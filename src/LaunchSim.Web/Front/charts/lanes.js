// @ts-check
import { letterOf } from './data.js';
import { rounded, svg, words } from './elements.js';

/** @typedef {import('./data.js').Mark} Mark */
/** @typedef {import('./plane.js').Plane} Plane */

/** Height of a lane of events, px. */
export const LANE = 17;

// Room between a word and what is beside it, px; the least width at which a spell is seen.
const GAP = 5;
const LEAST = 2;

/**
 * Finds what happened its places above the plot: a lane, whether it is free there, where its bar begins and ends, and where
 * its words stand, not a number where there is no room for them. With several launches each has a lane of its own.
 * @param {ReadonlyArray<Mark>} marks In order of time.
 * @param {Pick<Plane, 'left' | 'right' | 'from' | 'to' | 'x'>} plane
 * @param {number} edge Where the drawing ends on the right, px.
 * @param {number} most How many lanes there may be.
 * @param {boolean} several Whether there are several launches.
 * @param {(text: string) => number} ruler
 */
export function placesOf(marks, plane, edge, most, several, ruler) {
  const ends = new Array(most).fill(plane.left - 2 * GAP);
  return marks.flatMap((mark) => {
    const last = mark.until ?? mark.time;
    if (last < plane.from || mark.time > plane.to) {
      return [];
    }

    const from = Math.max(plane.left, plane.x(mark.time));
    const to = Math.max(from + LEAST, Math.min(plane.right, plane.x(last)));
    const width = ruler(mark.text);
    const lane = several ? Math.min(mark.launch, most - 1) : firstFree(ends, from);

    // Words stand behind their tick, else before it; where others are there is a short tick and nothing else.
    const isFree = ends[lane] <= from;
    const at = !isFree ? NaN : from + GAP + width <= edge ? from + GAP : ends[lane] + width + GAP <= from ? from - GAP - width : NaN;
    if (isFree) {
      ends[lane] = Math.max(to, Number.isNaN(at) ? to : at + width) + GAP;
    }

    return [{ mark, lane, from, to, at, isFree }];
  });
}

/** @param {number[]} ends @param {number} from */
function firstFree(ends, from) {
  const free = ends.findIndex((end) => end <= from);
  return free >= 0 ? free : ends.indexOf(Math.min(...ends));
}

/**
 * What happened, above the plot along its time: a tick where it begins, a bar for as long as it lasts, a few words.
 * @param {ReadonlyArray<Mark>} marks In order of time.
 * @param {Plane} plane
 * @param {import('./layout.js').Layout} layout
 * @param {boolean} several
 * @param {(text: string) => number} ruler
 */
export function lanes(marks, plane, layout, several, ruler) {
  const group = svg('g', { class: 'chart-lanes' });
  const top = plane.top - layout.lanes * LANE - 3;
  for (let lane = 0; several && lane < layout.lanes; lane++) {
    group.append(words(letterOf(lane), plane.left - 7, top + lane * LANE + 12, 'chart-number chart-left'));
  }

  const bars = svg('g');
  const texts = svg('g');
  for (const { mark, lane, from, to, at, isFree } of placesOf(marks, plane, layout.width, layout.lanes, several, ruler)) {
    const y = top + lane * LANE;
    const x = rounded(from);
    if (isFree) {
      bars.append(svg('rect', { x, y: y + 1, width: rounded(to - from), height: LANE - 3, class: 'chart-spell' }, [svg('title', {}, [mark.text])]));
    }

    if (mark.time >= plane.from) {
      texts.append(svg('path', { d: `M${x} ${isFree ? y + 1 : y + LANE - 5}V${y + LANE - 2}`, class: 'chart-tick' }, [svg('title', {}, [mark.text])]));
    }

    if (!Number.isNaN(at)) {
      texts.append(words(mark.text, at, y + 12, 'chart-event'));
    }
  }

  group.append(bars, texts);
  return group;
}

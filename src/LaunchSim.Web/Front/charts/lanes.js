// @ts-check
import { letterOf } from './data.js';
import { svg } from '../elements.js';
import { rounded, words } from './text.js';

/** @typedef {import('./data.js').Mark} Mark */
/** @typedef {import('./plane.js').Plane} Plane */

/** Height of a lane of events, px. */
export const LANE = 17;

// Room between a word and what is beside it, px; the least width at which a spell is seen; height of its bar.
const GAP = 5;
const LEAST = 2;
const BAR = 3;

/**
 * Finds what happened its places above the plot: a lane, where its bar begins and ends, and where its words stand, not a
 * number where there is no room for them. With several launches each has a lane of its own.
 * @param {ReadonlyArray<Mark>} marks In order of time.
 * @param {Pick<Plane, 'left' | 'right' | 'from' | 'to' | 'x'>} plane
 * @param {number} edge Where the drawing ends on the right, px.
 * @param {number} most How many lanes there may be.
 * @param {boolean} several Whether there are several launches.
 * @param {(text: string) => number} ruler
 */
export function placesOf(marks, plane, edge, most, several, ruler) {
  const ends = new Array(most).fill(plane.left - 2 * GAP);
  const bars = new Array(most).fill(0);
  return marks.flatMap((mark) => {
    const last = mark.until ?? mark.time;
    if (last < plane.from || mark.time > plane.to) {
      return [];
    }

    const from = Math.max(plane.left, plane.x(mark.time));
    const to = Math.max(from + LEAST, Math.min(plane.right, plane.x(last)));
    const width = ruler(mark.text);
    const lane = several ? Math.min(mark.launch, most - 1) : laneFor(ends, bars, from);

    // Words stand behind their tick, else before it; where others are there is a short tick and its bar.
    const at = ends[lane] > from ? NaN : from + GAP + width <= edge ? from + GAP : ends[lane] + width + GAP <= from ? from - GAP - width : NaN;
    ends[lane] = Number.isNaN(at) ? ends[lane] : Math.max(from, at + width) + GAP;
    bars[lane] = Math.max(bars[lane], to);
    return [{ mark, lane, from, to, at }];
  });
}

// Where neither words nor a bar are, else where no words are, else where the words end first.
/** @param {number[]} ends @param {number[]} bars @param {number} from */
function laneFor(ends, bars, from) {
  const empty = ends.findIndex((end, lane) => end <= from && bars[lane] <= from);
  const free = empty >= 0 ? empty : ends.findIndex((end) => end <= from);
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
  const top = plane.top - layout.lanes * LANE - 4;
  for (let lane = 0; several && lane < layout.lanes; lane++) {
    group.append(words(letterOf(lane), plane.left - 7, top + lane * LANE + 12, 'chart-number chart-left'));
  }

  for (const { mark, lane, from, to, at } of placesOf(marks, plane, layout.width, layout.lanes, several, ruler)) {
    const foot = top + (lane + 1) * LANE - 1;
    const hasWords = !Number.isNaN(at);
    const event = svg('g', {},
      svg('title', {}, mark.text),
      svg('rect', { x: rounded(from), y: foot - BAR, width: rounded(to - from), height: BAR, class: 'chart-spell' }),
    );
    if (mark.time >= plane.from) {
      event.append(svg('path', { d: `M${rounded(from)} ${hasWords ? foot - LANE + 3 : foot - BAR - 2}V${foot}`, class: 'chart-tick' }));
    }

    if (hasWords) {
      event.append(at < from ? words(mark.text, from - GAP, foot - BAR - 2, 'chart-event chart-left') : words(mark.text, at, foot - BAR - 2, 'chart-event'));
    }

    group.append(event);
  }

  return group;
}

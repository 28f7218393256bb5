// @ts-check

// Less than this cannot be told apart in samples of a millisecond, s.
const LEAST = 0.005;

/**
 * The part of the time that all charts of a page show.
 *
 * @typedef {object} TimeRange
 * @property {number} from Seconds from release.
 * @property {number} to Seconds from release.
 * @property {number} duration The whole run, s.
 * @property {boolean} isWhole Whether all of the run is shown.
 * @property {(from: number, to: number) => void} set Shows a part; what lies outside of the run is left out.
 * @property {() => void} reset Shows all of the run.
 * @property {(duration: number) => void} reach Sets the length of the run anew.
 * @property {(listener: () => void) => () => void} subscribe Tells a listener of every change; returns what ends that.
 */

/**
 * @param {number} duration The length of the run, s.
 * @returns {TimeRange}
 */
export function createRange(duration) {
  let whole = duration;
  let from = 0;
  let to = duration;
  /** @type {ReadonlyArray<() => void>} */
  let listeners = [];

  /** @param {number} start @param {number} end */
  function set(start, end) {
    const length = Math.min(whole, Math.max(LEAST, Math.abs(end - start)));
    const first = Math.min(whole - length, Math.max(0, Math.min(start, end)));
    if (Number.isNaN(length) || (first === from && first + length === to)) {
      return;
    }

    from = first;
    to = first + length;
    for (const listener of listeners) {
      listener();
    }
  }

  return {
    get from() {
      return from;
    },
    get to() {
      return to;
    },
    get duration() {
      return whole;
    },
    get isWhole() {
      return from <= 0 && to >= whole;
    },
    set,
    reset() {
      set(0, whole);
    },
    reach(length) {
      const wasWhole = from <= 0 && to >= whole;
      whole = length;
      set(wasWhole ? 0 : from, wasWhole ? length : Math.min(to, length));
    },
    subscribe(listener) {
      listeners = [...listeners, listener];
      return () => {
        listeners = listeners.filter((other) => other !== listener);
      };
    },
  };
}

/**
 * Shows more or less of the run about an instant, which keeps its place.
 * @param {TimeRange} range
 * @param {number} time The instant, s.
 * @param {number} factor How much longer the shown part becomes.
 */
export function zoomAbout(range, time, factor) {
  const length = Math.max(LEAST, (range.to - range.from) * factor);
  const share = (time - range.from) / (range.to - range.from);
  range.set(time - share * length, time + (1 - share) * length);
}

/**
 * Shows as much of the run, earlier or later.
 * @param {TimeRange} range
 * @param {number} by Seconds.
 */
export function shiftBy(range, by) {
  const length = range.to - range.from;
  const from = Math.min(range.duration - length, Math.max(0, range.from + by));
  range.set(from, from + length);
}

/**
 * Shows an instant: the shown part moves no farther than it has to.
 * @param {TimeRange} range
 * @param {number} time The instant, s.
 */
export function bringIn(range, time) {
  if (time < range.from) {
    shiftBy(range, time - range.from);
  } else if (time > range.to) {
    shiftBy(range, time - range.to);
  }
}

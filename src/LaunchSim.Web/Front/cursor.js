// @ts-check

/**
 * The instant at which all of a page looks. Whatever shows it subscribes and is told at once, in the order of subscription.
 *
 * @typedef {object} Cursor
 * @property {number} time Seconds from release.
 * @property {number} duration The last instant there is, s.
 * @property {(time: number) => void} set Moves it; before the release and after the end there is nothing to look at, so it stays within.
 * @property {(duration: number) => void} reach Sets the last instant anew, as when other launches are shown.
 * @property {(listener: (time: number) => void) => () => void} subscribe Tells a listener of every move; returns what ends that.
 */

/**
 * @param {number} duration The last instant, s.
 * @returns {Cursor}
 */
export function createCursor(duration) {
  let time = 0;
  let end = duration;
  /** @type {ReadonlyArray<(time: number) => void>} */
  let listeners = [];

  /** @param {number} to */
  function set(to) {
    const next = Math.min(end, Math.max(0, to));
    if (next === time || Number.isNaN(next)) {
      return;
    }

    time = next;
    // The list is never changed, only replaced: a listener may leave while it is told.
    const told = listeners;
    for (let i = 0; i < told.length; i++) {
      told[i](time);
    }
  }

  return {
    get time() {
      return time;
    },
    get duration() {
      return end;
    },
    set,
    reach(to) {
      end = to;
      set(time);
    },
    subscribe(listener) {
      listeners = [...listeners, listener];
      return () => {
        listeners = listeners.filter((other) => other !== listener);
      };
    },
  };
}

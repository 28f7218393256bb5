// @ts-check

/**
 * The shared time: whoever shows something of the launch listens, whoever plays or points sets it.
 * @typedef {{ readonly time: number, readonly duration: number, set(time: number): void, subscribe(listener: () => void): () => void }} Cursor
 */

/**
 * @param {number} duration The longest launch's length, s.
 * @returns {Cursor}
 */
export function createCursor(duration) {
  /** @type {(() => void)[]} */
  let listeners = [];
  let time = 0;
  return {
    get time() {
      return time;
    },
    duration,
    set(value) {
      const next = Math.min(duration, Math.max(0, value));
      if (next !== time) {
        time = next;
        for (let i = 0; i < listeners.length; i++) {
          listeners[i]();
        }
      }
    },
    subscribe(listener) {
      listeners = [...listeners, listener];
      return () => {
        listeners = listeners.filter((other) => other !== listener);
      };
    },
  };
}

// @ts-check

/**
 * A cursor that only speaks while its listener's place is in sight: many scenes follow one time, and only those that are seen
 * are drawn.
 * @param {import('../cursor.js').Cursor} cursor
 * @param {HTMLElement} host
 * @returns {import('../cursor.js').Cursor}
 */
export function whileSeen(cursor, host) {
  /** @type {((time: number) => void)[]} */
  let listeners = [];
  let isSeen = false, isStale = false;

  function tell() {
    isStale = !isSeen;
    if (isSeen) {
      for (const listener of listeners) {
        listener(cursor.time);
      }
    }
  }

  new IntersectionObserver((entries) => {
    isSeen = entries[entries.length - 1].isIntersecting;
    if (isSeen && isStale) {
      tell();
    }
  }, { rootMargin: '200px' }).observe(host);
  cursor.subscribe(tell);
  window.addEventListener('beforeprint', () => {
    isSeen = true;
    tell();
  });
  return {
    get time() {
      return cursor.time;
    },
    get duration() {
      return cursor.duration;
    },
    set: cursor.set,
    reach: cursor.reach,
    subscribe(listener) {
      listeners = [...listeners, listener];
      return () => {
        listeners = listeners.filter((other) => other !== listener);
      };
    },
  };
}

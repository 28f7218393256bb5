// @ts-check

/**
 * @typedef {{ path: string, value: string }} Edit
 * @typedef {{
 *   readonly edits: Edit[], readonly canUndo: boolean, readonly canRedo: boolean, valueOf(path: string): string | undefined,
 *   move(path: string, value: string | null): void, put(edits: Edit[]): void, settle(): void, undo(): void, redo(): void, keep(paths: Set<string>): void,
 *   subscribe(listener: () => void): void
 * }} SetUp
 */

/**
 * What was moved on the desk away from the file, with its history: a drag is one step of it.
 * @returns {SetUp}
 */
export function createSetUp() {
  /** @type {Map<string, string>} */
  let now = new Map();
  /** @type {Map<string, string>[]} */
  let history = [now];
  let at = 0;
  /** @type {(() => void)[]} */
  const listeners = [];

  function tell() {
    for (const listener of listeners) {
      listener();
    }
  }

  /** @param {number} step */
  function go(step) {
    if (history[step]) {
      at = step;
      now = history[at];
      tell();
    }
  }

  const self = {
    get edits() {
      return [...now].map(([path, value]) => ({ path, value }));
    },
    get canUndo() {
      return at > 0;
    },
    get canRedo() {
      return at < history.length - 1;
    },
    /** @param {string} path */
    valueOf(path) {
      return now.get(path);
    },
    /**
     * Moves one value; null takes that of the file again.
     * @param {string} path
     * @param {string | null} value
     */
    move(path, value) {
      if ((now.get(path) ?? null) === value) {
        return;
      }

      now = new Map(now);
      if (value === null) {
        now.delete(path);
      } else {
        now.set(path, value);
      }

      tell();
    },
    /**
     * Moves several values at once, as one step.
     * @param {Edit[]} edits
     */
    put(edits) {
      now = new Map(now);
      for (const { path, value } of edits) {
        now.set(path, value);
      }

      self.settle();
      tell();
    },
    /** The hand rests: what was moved since the last time is one step of the history. */
    settle() {
      if (text(now) !== text(history[at])) {
        history = [...history.slice(0, at + 1), now];
        at = history.length - 1;
        tell();
      }
    },
    undo() {
      self.settle();
      go(at - 1);
    },
    redo() {
      go(at + 1);
    },
    /**
     * Forgets what can no longer be moved.
     * @param {Set<string>} paths
     */
    keep(paths) {
      history = history.map((step) => new Map([...step].filter(([path]) => paths.has(path))));
      now = new Map([...now].filter(([path]) => paths.has(path)));
    },
    /** @param {() => void} listener */
    subscribe(listener) {
      listeners.push(listener);
    },
  };
  return self;
}

/** @param {Map<string, string>} edits */
function text(edits) {
  return JSON.stringify([...edits].sort());
}

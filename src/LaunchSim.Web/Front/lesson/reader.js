// @ts-check

import { staticsOf } from './statics.js';

/**
 * The reader's own car: what the drawings of statics are made of. Whoever shows it listens, whoever changes it sets.
 * @typedef {{ ahead: number, up: number, parallel: boolean, climb: number, cgHeight: number, wheelbase: number, thrust: number, rest: boolean }} Values
 *   Instant centre ahead and up, m; whether the bars are parallel and how they climb, rad; CG height, wheelbase, m; thrust, N;
 *   whether the car has come to rest under it.
 * @typedef {{ lowerAxle: import('./statics.js').Place, upperAxle: import('./statics.js').Place, lowerLength: number, upperLength: number }} Joints
 * @typedef {{
 *   readonly values: Values, readonly slope: number, readonly statics: ReturnType<typeof staticsOf>, readonly bars: import('./statics.js').Bars | null,
 *   set(changes: Partial<Values>): void, setPercent(percent: number): void, subscribe(listener: () => void): void
 * }} Reader
 */

/** An instant centre nearer than this to the contact point's upright has no line through it that can be told from upright, m. */
const NO_ARM = 1e-9;

/**
 * @param {Values} first
 * @param {Joints} joints Where the bars are held on the axle, and how long they are drawn.
 * @returns {Reader}
 */
export function createReader(first, joints) {
  let values = first;
  /** @type {(() => void)[]} */
  const listeners = [];

  const slope = () => values.parallel ? Math.tan(values.climb) : Math.abs(values.ahead) < NO_ARM ? NaN : values.up / values.ahead;

  /** @param {Partial<Values>} changes */
  function set(changes) {
    values = { ...values, ...changes };
    for (const listener of listeners) {
      listener();
    }
  }

  return {
    get values() {
      return values;
    },
    get slope() {
      return slope();
    },
    get statics() {
      return staticsOf(slope(), values.cgHeight, values.wheelbase, values.thrust);
    },
    get bars() {
      return barsOf(values, joints);
    },
    set,
    setPercent(percent) {
      const wanted = (percent / 100) * (values.cgHeight / values.wheelbase);
      set(values.parallel ? { climb: Math.atan(wanted) } : { up: wanted * values.ahead });
    },
    subscribe(listener) {
      listeners.push(listener);
    },
  };
}

/**
 * Bars of the given lengths, from their joints on the axle forward along their lines; null when a line is upright or its joint
 * is the instant centre, so that no bar can be drawn.
 * @param {Values} values
 * @param {Joints} joints
 * @returns {import('./statics.js').Bars | null}
 */
function barsOf(values, { lowerAxle, upperAxle, lowerLength, upperLength }) {
  const lowerBody = along(lowerAxle, lowerLength, values), upperBody = along(upperAxle, upperLength, values);
  return lowerBody && upperBody && { lowerAxle, lowerBody, upperAxle, upperBody };
}

/**
 * @param {import('./statics.js').Place} joint
 * @param {number} length
 * @param {Values} values
 * @returns {import('./statics.js').Place | null}
 */
function along([ahead, up], length, values) {
  let x = values.ahead - ahead, z = values.up - up;
  if (values.parallel) {
    [x, z] = [Math.cos(values.climb), Math.sin(values.climb)];
  }

  if (Math.abs(x) < NO_ARM) {
    return null;
  }

  const share = (Math.sign(x) * length) / Math.hypot(x, z);
  return [ahead + (share * x), up + (share * z)];
}

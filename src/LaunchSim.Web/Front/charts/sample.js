// @ts-check

// Instants are multiples of the sample, and so are off by rounding.
const ROUNDING = 1e-9;

/**
 * The last sample at or before an instant: after a jump when it is at the jump.
 * @param {Float64Array} times Rising.
 * @param {number} time
 * @returns {number} -1 before the first one.
 */
export function indexAt(times, time) {
  const last = times.length - 1;
  if (last < 0 || time < times[0] - ROUNDING) {
    return -1;
  }

  // Samples are nearly even: the guess is off by a few at the most.
  const length = times[last] - times[0];
  let i = length > 0 ? Math.min(last, Math.max(0, Math.floor(((time - times[0]) / length) * last))) : last;
  while (i < last && times[i + 1] <= time + ROUNDING) {
    i++;
  }

  while (i > 0 && times[i] > time + ROUNDING) {
    i--;
  }

  return i;
}

/**
 * The value at an instant, straight between samples.
 * @param {Float64Array} times Rising.
 * @param {ArrayLike<number>} values
 * @param {number} time
 * @returns {number} Not a number outside of the samples and in a gap.
 */
export function valueAt(times, values, time) {
  const i = indexAt(times, time);
  if (i < 0) {
    return NaN;
  }

  const past = time - times[i];
  if (past <= ROUNDING) {
    return values[i];
  }

  return i + 1 < times.length ? values[i] + ((values[i + 1] - values[i]) * past) / (times[i + 1] - times[i]) : NaN;
}

/**
 * The same quantity at other instants.
 * @param {Float64Array} times
 * @param {ArrayLike<number>} values
 * @param {Float64Array} at
 */
export function resampled(times, values, at) {
  return at.map((time) => valueAt(times, values, time));
}

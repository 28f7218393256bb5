// @ts-check
import { indexAt } from './sample.js';

// Share of the extent that is left free at an end at which there are data: for names.
const ROOM = 0.12;

// So many of the last digit are worth the whole height at the least: what is not read out is not drawn large.
const DIGITS = 10;

// Share of the extent below which there is nothing to see.
const ROUNDING = 1e-6;

/**
 * From the lowest to the highest value that is to be in sight within a time.
 * @param {import('./data.js').ChartData} data
 * @param {number} from
 * @param {number} to
 * @returns {{ low: number, high: number }} High above low in any case.
 */
export function extentOf(data, from, to) {
  let low = data.zero ? 0 : Infinity;
  let high = data.zero ? 0 : -Infinity;

  /** @param {number} value */
  function take(value) {
    if (Number.isFinite(value)) {
      low = Math.min(low, value);
      high = Math.max(high, value);
    }
  }

  for (const curve of data.curves) {
    const first = Math.max(0, indexAt(curve.times, from));
    const last = Math.min(curve.times.length - 1, indexAt(curve.times, to) + 1);
    for (let i = first; i <= last; i++) {
      take(curve.values[i]);
      take(curve.low?.[i] ?? NaN);
      take(curve.high?.[i] ?? NaN);
    }
  }

  data.levels?.forEach((level) => take(level.value));
  return opened(low, high, Math.max(data.least ?? 0, DIGITS * 10 ** -data.decimals));
}

/** @param {number} low @param {number} high @param {number} least */
function opened(low, high, least) {
  if (low > high) {
    return { low: 0, high: least };
  }

  // A load of nothing is nothing but for rounding.
  const nothing = ROUNDING * Math.max(least, high - low);
  low = Math.abs(low) < nothing ? 0 : low;
  high = Math.abs(high) < nothing ? 0 : high;
  const wanted = Math.max(least, ROUNDING * Math.max(Math.abs(low), Math.abs(high)));
  const missing = wanted - (high - low);
  if (missing > 0) {
    [low, high] = high >= -low ? [low, high + missing] : [low - missing, high];
  }

  const room = ROOM * (high - low);
  return { low: low === 0 ? 0 : low - room, high: high === 0 ? 0 : high + room };
}

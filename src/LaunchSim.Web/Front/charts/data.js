// @ts-check

/**
 * What a chart shows. Times are seconds from release, values in the unit of the chart; not a number where there is none.
 *
 * @typedef {'solid' | 'dash' | 'dot' | 'points'} LineStyle Points stand for themselves, without a line between them.
 * @typedef {'ink' | 'rear' | 'front' | 'third' | 'fourth'} Tone
 *
 * @typedef {object} Curve
 * @property {string} label Its name, at the curve and in the read-out.
 * @property {number} launch Which launch it is of, from 0.
 * @property {Float64Array} values
 * @property {Float64Array} times Rising; the same instant twice is a jump.
 * @property {'rear' | 'front' | ''} end Which end of the car.
 * @property {LineStyle} style
 * @property {Tone} tone
 * @property {number} [weight] Thickness of the line, px.
 * @property {Float64Array} [low] Lower edge of what the doubt leaves open.
 * @property {Float64Array} [high] Upper edge.
 * @property {Uint8Array} [closing] Where it is 1 a damper closes, and the line is dashed in place of solid.
 * @property {string} [reason] Why it has no value, where it has none at all.
 *
 * @typedef {object} Mark Something that happened.
 * @property {number} time
 * @property {number} [until] Left out for what takes no time.
 * @property {string} text A few words.
 * @property {number} launch
 *
 * @typedef {object} Level A value to compare with.
 * @property {number} value
 * @property {string} text
 * @property {Tone | 'muted'} tone
 *
 * @typedef {object} Dot A point of a curve that has a name.
 * @property {number} time
 * @property {number} value
 * @property {string} text May be empty.
 * @property {Tone} tone
 * @property {boolean} above Whether its words are better above it than below.
 * @property {boolean} [ring] Drawn open.
 *
 * @typedef {object} Span A time between two points, drawn as a bracket at the height of the first one.
 * @property {{ time: number, value: number }} first
 * @property {{ time: number, value: number }} second
 * @property {string} text
 *
 * @typedef {object} ChartData
 * @property {string} name Plain name, for its place in a register.
 * @property {string} title What is plotted.
 * @property {string} explanation How to read it; may be empty.
 * @property {string} unit
 * @property {number} decimals
 * @property {Curve[]} curves
 * @property {boolean} [zero] Whether zero is always in sight.
 * @property {number} [least] The smallest extent worth drawing: less is not blown up to fill the height.
 * @property {Mark[]} [marks]
 * @property {Level[]} [levels]
 * @property {Dot[]} [dots]
 * @property {Span[]} [spans]
 * @property {{ low: number, high: number, text: string }} [strip] Between these two values nothing worth speaking of happens.
 * @property {string} [band] What the faint fill about a curve means.
 * @property {number[]} [instants] When its printed table tells the values.
 * @property {string} [reason] Why there is no value at all, if there is none.
 */

/**
 * A number as it is read out.
 * @param {number} value
 * @param {number} decimals
 */
export function numberText(value, decimals) {
  const text = value.toFixed(decimals);
  return text.startsWith('-') && Number(text) === 0 ? text.slice(1) : text;
}

/**
 * A number with its unit; degrees stand at the number.
 * @param {number} value
 * @param {number} decimals
 * @param {string} unit
 */
export function quantityText(value, decimals, unit) {
  const number = numberText(value, decimals);
  return unit === '' ? number : unit === '°' ? number + unit : `${number} ${unit}`;
}

/**
 * Whether there is any value.
 * @param {Float64Array} values
 */
export function hasValue(values) {
  for (let i = 0; i < values.length; i++) {
    if (Number.isFinite(values[i])) {
      return true;
    }
  }

  return false;
}

/**
 * The letter that stands for a launch beside others.
 * @param {number} launch From 0.
 */
export function letterOf(launch) {
  return String.fromCharCode(65 + launch);
}

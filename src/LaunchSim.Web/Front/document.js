// @ts-check

/**
 * @typedef {[number, number]} Place Ahead of the standing rear wheel centre and above the ground, m.
 * @typedef {{ unit: string, factor: number, decimals: number }} Unit A value in the unit is the SI value over the factor.
 * @typedef {{ height: number, radius: number, load: number, peakSlip: number }} StandingWheel Centre's height, free radius, m; load, N; the slip ratio past which grip falls.
 * @typedef {{ name: string, axle: Place | null, body: Place | null }} Strut A bar, or a spring or damper.
 * @typedef {{ bracket: string, name: string, inUse: boolean, onAxle: boolean, at: Place }} Hole
 * @typedef {{ percent: number | null, slope: number | null, ahead: number | null, up: number | null, neutralSlope: number | null }} StaticLine
 * @typedef {{
 *   wheelbase: number, rear: StandingWheel, front: StandingWheel, pitch: number, centreOfGravity: Place | null, bars: Strut[],
 *   units: Strut[], holes: Hole[], wheelieBar: Place | null, ballast: Place[], outline: Place[], line: StaticLine
 * }} Car
 * @typedef {{ key: string, name: string, number?: string, unit?: string, value?: number, reason?: string }} Figure
 * @typedef {{ title: string, rows: Figure[] }} FigureFamily
 * @typedef {{ kind: string, words: string, time: number, until?: number }} LaunchEvent
 * @typedef {{ part: string, lead: string, text: string }} Answer
 * @typedef {{ step: number, low: Float64Array, high: Float64Array }} Band Rows from the release on.
 * @typedef {{
 *   conclusion: string, notes: string[], bands: Record<string, Band>, figures: Record<string, string>,
 *   statements: { text: string, share: string, limits: string, own: boolean }[]
 * }} Doubt
 * @typedef {{
 *   key: string, words: string, end: 'rear' | 'front' | '', unit: Unit, predicted: Float64Array,
 *   traces: { label: string, times: Float64Array, values: Float64Array }[]
 * }} Measured One quantity of a pass: the prediction at the launch's own times, and what each log has; SI.
 * @typedef {{
 *   name: string, file: string, hash: string, notes: string, staticLine: string, stopped?: string, duration: number, step: number,
 *   times: Float64Array, columns: Record<string, Float64Array>, car: Car, answers: Answer[], figures: FigureFamily[],
 *   sentences: { key: string, text: string }[], limits: string[], events: LaunchEvent[], titles: Record<string, string>, doubt?: Doubt,
 *   measured?: Measured[], measuredNotes?: string[]
 * }} Launch
 * @typedef {{ program: string, unitSystem: string, units: Record<string, Unit>, caution: string, launches: Launch[] }} LaunchDocument
 */

/**
 * The launches as the engine wrote them, with their columns unpacked.
 * @param {any} json
 * @returns {LaunchDocument}
 */
export function decode(json) {
  return { ...json, launches: json.launches.map(launchOf) };
}

/**
 * A value in its unit, with the unit's digits.
 * @param {number} value In SI.
 * @param {Unit} unit
 */
export function inUnit(value, unit) {
  const text = (value / unit.factor).toFixed(unit.decimals);
  return text.startsWith('-') && !/[1-9]/.test(text) ? text.slice(1) : text;
}

/**
 * A value with its unit's name.
 * @param {number} value In SI.
 * @param {Unit} unit
 */
export function withUnit(value, unit) {
  return unit.unit === '°' ? `${inUnit(value, unit)}°` : `${inUnit(value, unit)} ${unit.unit}`;
}

/**
 * @param {any} json
 * @returns {Launch}
 */
function launchOf(json) {
  /** @type {Record<string, Float64Array>} */
  const columns = {};
  for (const [name, text] of Object.entries(json.columns)) {
    columns[name] = numbers(/** @type {string} */ (text));
  }

  return { ...json, columns, times: steps(json.rows, json.step), doubt: json.doubt && doubtOf(json.doubt), measured: json.measured?.map(measuredOf) };
}

/**
 * How sure a launch is, with its bands unpacked.
 * @param {any} json
 * @returns {Doubt}
 */
export function doubtOf(json) {
  /** @type {Record<string, Band>} */
  const bands = {};
  for (const [name, band] of Object.entries(json.bands)) {
    const { step, low, high } = /** @type {{ step: number, low: string, high: string }} */ (band);
    bands[name] = { step, low: numbers(low), high: numbers(high) };
  }

  return { ...json, bands };
}

/**
 * A quantity that was measured, unpacked.
 * @param {any} json
 * @returns {Measured}
 */
function measuredOf(json) {
  return {
    ...json,
    predicted: numbers(json.predicted),
    traces: json.traces.map((/** @type {{ label: string, times: string, values: string }} */ { label, times, values }) => ({ label, times: numbers(times), values: numbers(values) })),
  };
}

/**
 * Instants from 0 on; whole milliseconds without rounding's tail.
 * @param {number} count
 * @param {number} step
 */
function steps(count, step) {
  const milliseconds = Math.round(step * 1000);
  return Float64Array.from({ length: count }, (_, row) => (row * milliseconds) / 1000);
}

/** Whether this machine keeps numbers as the document has them. */
const IS_LITTLE = new Uint8Array(new Uint32Array([1]).buffer)[0] === 1;

/**
 * Little-endian single-precision numbers in base 64.
 * @param {string} text
 */
function numbers(text) {
  const packed = atob(text), count = packed.length;
  const bytes = new Uint8Array(count);
  for (let i = 0; i < count; i++) {
    bytes[i] = packed.charCodeAt(i);
  }

  if (IS_LITTLE) {
    return new Float64Array(new Float32Array(bytes.buffer));
  }

  const view = new DataView(bytes.buffer);
  return Float64Array.from({ length: count / 4 }, (_, i) => view.getFloat32(i * 4, true));
}

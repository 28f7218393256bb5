// @ts-check
import { hasValue, letterOf, quantityText } from './data.js';
import { resampled } from './sample.js';

/**
 * What charts read of a decoded document.
 *
 * @typedef {{ unit: string, factor: number, decimals: number }} Unit In the unit = SI / factor.
 * @typedef {{ key: string, value?: number | null }} Figure SI.
 * @typedef {{ kind: string, words: string, time: number, until?: number | null }} LaunchEvent
 * @typedef {{ step: number, low: ArrayLike<number>, high: ArrayLike<number> }} Band Nine plausible cars in ten stay within it; SI.
 *
 * @typedef {object} Launch
 * @property {string} name
 * @property {number} duration
 * @property {string} [stopped] Why the run came to no end of its own.
 * @property {Float64Array} times
 * @property {Readonly<Record<string, Float64Array | undefined>>} columns By the names of the trace, SI; one without any value is left out.
 * @property {{ wheelbase: number, rear: { load: number, peakSlip: number }, front: { load: number }, line: { percent: number | null } }} car
 * @property {ReadonlyArray<Figure | { rows: ReadonlyArray<Figure> }>} figures Plain, or family by family.
 * @property {ReadonlyArray<LaunchEvent>} events
 * @property {Readonly<Record<string, string>>} [titles] What each chart shows, in words.
 * @property {{ bands?: Readonly<Record<string, Band>> } | null} [doubt]
 * @property {ReadonlyArray<import('../document.js').Measured>} [measured] What was measured of it.
 * @property {ReadonlyArray<string>} [measuredNotes] How the data were laid over it.
 *
 * @typedef {{ units: Readonly<Record<string, Unit>>, launches: ReadonlyArray<Launch> }} LaunchSource
 *
 * @typedef {import('./data.js').Curve} Curve
 * @typedef {import('./data.js').Tone} Tone
 * @typedef {import('./data.js').LineStyle} LineStyle
 */

// Beside other launches colour, letter and line are the launch's: the first is ink and solid. The colours of rear and front
// come last, so that up to three launches are never taken for an end of the car.
/** @type {ReadonlyArray<{ tone: Tone, style: LineStyle, weight: number }>} */
const SET_UPS = [
  { tone: 'ink', style: 'solid', weight: 2.4 },
  { tone: 'third', style: 'dash', weight: 1.9 },
  { tone: 'fourth', style: 'dot', weight: 2.8 },
  { tone: 'rear', style: 'dash', weight: 2.8 },
  { tone: 'front', style: 'dot', weight: 2 },
];

// Where the line's style is taken, thickness tells the launches apart in its place.
const WEIGHTS = [3, 2.1, 1.4, 3.6, 1.2];

/**
 * How something is drawn when there is one launch, and what it keeps when there are several.
 *
 * @typedef {object} Look
 * @property {string} name Its name at the curve: `rear rise`.
 * @property {'rear' | 'front' | ''} [end]
 * @property {Tone} [tone] Its colour while there is one launch.
 * @property {LineStyle} [style] A style that it keeps beside other launches, as the front its dashes; left out, the launch's own.
 * @property {number} [weight] Its thickness while there is one launch, px.
 * @property {Uint8Array} [closing]
 * @property {string} [band] The column whose doubt surrounds it.
 * @property {string} [reason]
 */

/** Launches laid out for charts. */
export class LaunchView {
  /** @param {LaunchSource} source */
  constructor(source) {
    this.launches = source.launches;
    this.units = source.units;
    this.several = source.launches.length > 1;
  }

  /**
   * A unit of the document.
   * @param {string} name
   * @returns {Unit}
   */
  unit(name) {
    return this.units[name] ?? { unit: '', factor: 1, decimals: 3 };
  }

  /**
   * A column in a unit.
   * @param {Launch} launch
   * @param {string} column
   * @param {Unit} unit
   * @param {number} [sign] Minus one turns it round.
   * @returns {Float64Array} Without any value when the launch has no such column.
   */
  values(launch, column, unit, sign = 1) {
    const values = launch.columns[column];
    const scale = sign / unit.factor;
    return values === undefined ? new Float64Array(launch.times.length).fill(NaN) : Float64Array.from(values, (value) => value * scale);
  }

  /**
   * A figure in SI.
   * @param {Launch} launch
   * @param {string} key
   * @returns {number | null} None when it has no value in this run.
   */
  figure(launch, key) {
    for (const entry of launch.figures) {
      const row = 'rows' in entry ? entry.rows.find((one) => one.key === key) : entry.key === key ? entry : undefined;
      if (row !== undefined) {
        return row.value ?? null;
      }
    }

    return null;
  }

  /**
   * A number in a unit, as it is read out.
   * @param {number} value SI.
   * @param {Unit} unit
   */
  text(value, unit) {
    return quantityText(value / unit.factor, unit.decimals, unit.unit);
  }

  /**
   * A name with the launch's letter when there are several, which may stand alone.
   * @param {number} index
   * @param {string} name
   */
  named(index, name) {
    return this.several ? `${letterOf(index)} ${name}`.trim() : name;
  }

  /**
   * A launch's colour beside others.
   * @param {number} index
   * @param {Tone} alone While there is one.
   * @returns {Tone}
   */
  tone(index, alone) {
    return this.several ? SET_UPS[index % SET_UPS.length].tone : alone;
  }

  /**
   * A curve of a launch.
   * @param {number} index Which launch.
   * @param {Float64Array} values In the unit.
   * @param {Look} look
   * @param {{ factor: number, sign?: number }} [scale] Of the doubt's column.
   * @returns {Curve}
   */
  curve(index, values, look, scale = { factor: 1 }) {
    const launch = this.launches[index];
    const { tone, style, weight } = SET_UPS[index % SET_UPS.length];
    const keeps = look.style !== undefined || look.closing !== undefined;
    const lines = this.several
      ? { tone, style: look.style ?? (keeps ? 'solid' : style), weight: keeps ? WEIGHTS[index % WEIGHTS.length] : weight }
      : { tone: look.tone ?? 'ink', style: look.style ?? 'solid', weight: look.weight ?? 2.3 };
    return {
      // Beside other launches a chart's only quantity is named by its title.
      label: this.named(index, this.several && look.style === undefined ? '' : look.name),
      launch: index,
      end: look.end ?? '',
      times: launch.times,
      values,
      ...lines,
      ...(look.closing === undefined ? {} : { closing: look.closing }),
      ...(look.reason === undefined || hasValue(values) ? {} : { reason: look.reason }),
      ...this.#doubt(launch, look.band, scale),
    };
  }

  /**
   * One column of every launch.
   * @param {string} column
   * @param {Unit} unit
   * @param {Look} look
   * @param {number} [sign]
   */
  curves(column, unit, look, sign = 1) {
    return this.launches.map((launch, i) => this.curve(i, this.values(launch, column, unit, sign), look, { factor: unit.factor }));
  }

  /**
   * What happened, of some kinds, and where a run stopped before its end.
   * @param {ReadonlyArray<string>} kinds
   * @returns {import('./data.js').Mark[]}
   */
  marks(kinds) {
    return this.launches
      .flatMap((launch, i) => [
        ...launch.events.filter(({ kind }) => kinds.includes(kind)).map(({ words, time, until }) => ({ time, until: until ?? launch.duration, text: words, launch: i })),
        ...(launch.stopped === undefined ? [] : [{ time: launch.duration, text: 'run stopped', launch: i }]),
      ])
      .sort((a, b) => a.time - b.time);
  }

  /**
   * The same level for all launches where they agree to the eye, else one for each.
   * @param {(launch: Launch) => number | null | undefined} read In the unit.
   * @param {(value: number) => string} words
   * @param {Tone | 'muted'} tone While there is one.
   * @returns {import('./data.js').Level[]}
   */
  levels(read, words, tone) {
    const values = this.launches.map((launch) => read(launch) ?? NaN);
    const isOne = values.every((value) => Math.abs(value - values[0]) <= 0.005 * Math.abs(values[0]));
    return values
      .map((value, i) => ({ value, text: this.several && !isOne ? `${letterOf(i)} ${words(value)}` : words(value), tone: this.several ? (isOne ? /** @type {const} */ ('muted') : this.tone(i, 'ink')) : tone }))
      .filter((level, i) => Number.isFinite(level.value) && (i === 0 || !isOne));
  }

  /** What the faint fill means, where a launch has a doubt. */
  get bandText() {
    return this.launches.some((launch) => launch.doubt?.bands !== undefined) ? 'nine plausible cars in ten' : undefined;
  }

  /** @param {Launch} launch @param {string | undefined} column @param {{ factor: number }} scale */
  #doubt(launch, column, { factor }) {
    const band = column === undefined ? undefined : launch.doubt?.bands?.[column];
    if (band === undefined) {
      return {};
    }

    const at = Float64Array.from(band.low, (_, i) => i * band.step);
    /** @param {ArrayLike<number>} edge */
    const edge = (edge) => resampled(at, edge, launch.times).map((value) => value / factor);
    return { low: edge(band.low), high: edge(band.high) };
  }
}

/**
 * Where a damper closes: below a speed that nobody sees.
 * @param {Launch} launch
 * @param {string} column Its speed, positive longer, m/s.
 */
export function closingOf(launch, column) {
  const speeds = launch.columns[column];
  return speeds === undefined ? new Uint8Array(launch.times.length) : Uint8Array.from(speeds, (speed) => (speed < -0.0005 ? 1 : 0));
}


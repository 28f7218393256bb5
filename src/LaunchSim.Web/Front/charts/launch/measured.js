// @ts-check

/** @typedef {import('../view.js').LaunchView} LaunchView */
/** @typedef {import('../data.js').ChartData} ChartData */
/** @typedef {import('../data.js').Tone} Tone */

// Each log has a colour of its own; that it was measured is told by its points.
/** @type {ReadonlyArray<Tone>} */
const TONES = ['front', 'third', 'fourth'];

/**
 * What was measured of the first launch: points over the predicted line, a chart for each quantity.
 * @param {LaunchView} view
 * @returns {ChartData[]}
 */
export function measured(view) {
  const launch = view.launches[0];
  return (launch.measured ?? []).map(({ key, words, end, unit, predicted, traces }, first) => ({
    name: `measured-${key}`,
    title: words,
    explanation: ['Line: predicted. Points: measured.', ...(first === 0 ? launch.measuredNotes ?? [] : [])].join(' '),
    unit: unit.unit,
    decimals: unit.decimals,
    zero: true,
    curves: [
      { label: 'predicted', launch: 0, times: launch.times, values: predicted.map((value) => value / unit.factor), end, style: 'solid', tone: 'ink' },
      ...traces.map(({ label, times, values }, i) => ({
        label: traces.length === 1 ? 'measured' : `measured, ${label}`,
        launch: 0,
        times,
        values: values.map((value) => value / unit.factor),
        end,
        style: /** @type {'points'} */ ('points'),
        tone: TONES[i % TONES.length],
        weight: 4.4,
      })),
    ],
  }));
}

// @ts-check
import { closingOf } from '../view.js';

/** @typedef {import('../view.js').LaunchView} LaunchView */
/** @typedef {import('../data.js').ChartData} ChartData */

// Half an inch a second, m/s: slower than this counts as still. As much as is worth drawing at the least, m/s and N.
const STILL = 0.5 * 0.0254;
const LEAST_SPEED = 0.1;
const LEAST_FORCE = 100;

/** @param {'rear' | 'front'} end */
function stops(end) {
  return [`${end}-top-stop`, `${end}-bottom-stop`, `${end}-tire-off`];
}

/** @param {LaunchView} view @param {'rear' | 'front'} end @returns {ChartData} */
export function damperSpeed(view, end) {
  const unit = view.unit('shaftSpeed');
  const column = `${end}_damper_speed_mps`;
  const still = STILL / unit.factor;
  return {
    name: `${end}-damper-speed`,
    title: `Speed of the ${end} dampers`,
    explanation: 'Above zero they open, solid; below they close, dashed.',
    unit: unit.unit,
    decimals: unit.decimals,
    zero: true,
    least: LEAST_SPEED / unit.factor,
    marks: view.marks(stops(end)),
    strip: { low: -still, high: still, text: `still: within ${view.text(STILL, { ...unit, decimals: unit.unit === 'in/s' ? 1 : 0 })} either way` },
    curves: view.launches.map((launch, i) => view.curve(i, view.values(launch, column, unit), { name: `${end} dampers`, end, tone: end, closing: closingOf(launch, column) })),
  };
}

/** @param {LaunchView} view @param {'rear' | 'front'} end @returns {ChartData} */
export function damperForce(view, end) {
  const unit = view.unit('force');
  return {
    name: `${end}-damper-force`,
    title: `Force of the ${end} dampers and their stops, each side`,
    explanation: 'Above zero it pushes body and axle apart, below it holds them together; solid while the dampers open, dashed while they close.',
    unit: unit.unit,
    decimals: unit.decimals,
    zero: true,
    least: LEAST_FORCE / unit.factor,
    marks: view.marks(stops(end)),
    curves: view.launches.map((launch, i) => {
      const stop = launch.columns[`${end}_stop_force_n`];
      const force = view.values(launch, `${end}_damper_force_n`, unit).map((value, k) => value + (stop === undefined ? 0 : stop[k] / unit.factor));
      return view.curve(i, force, { name: `${end} dampers`, end, tone: end, closing: closingOf(launch, `${end}_damper_speed_mps`) });
    }),
  };
}

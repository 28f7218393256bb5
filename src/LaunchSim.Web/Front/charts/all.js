// @ts-check
import { bars } from './launch/bars.js';
import { damperForce, damperSpeed } from './launch/dampers.js';
import { axleTorque, engineSpeed } from './launch/driveline.js';
import { grip, slip } from './launch/grip.js';
import { instantCentre, percent, pinion } from './launch/linkage.js';
import { loadPaths, tyreLoads } from './launch/loads.js';
import { acceleration, speed } from './launch/motion.js';
import { measured } from './launch/measured.js';
import { gaps, rises } from './launch/rises.js';
import { gripTitle, loadsTitle, percentTitle, risesTitle, speedsTitle } from './launch/several.js';
import { LaunchView } from './view.js';

/** @typedef {import('./data.js').ChartData} ChartData */

/**
 * Charts that answer one question, one below the other.
 *
 * @typedef {object} ChartGroup
 * @property {string} name Plain name, as of the picture on paper where there is one.
 * @property {string} title What is seen, in words; what it is about where there are none.
 * @property {ChartData[]} charts
 */

/**
 * The register: one line a chart, or a few that belong together, in the order in which they are best looked at.
 * @type {ReadonlyArray<{ name: string, title: string, several?: (view: LaunchView) => string, charts: (view: LaunchView) => ChartData[] }>}
 */
const REGISTER = [
  { name: 'measured', title: 'Measured over predicted', charts: measured },
  { name: 'rises-and-gaps', title: 'Rises and gaps', several: risesTitle, charts: (view) => [rises(view), gaps(view)] },
  { name: 'tyre-loads', title: 'Tyre loads', several: loadsTitle, charts: (view) => [tyreLoads(view)] },
  { name: 'rear-load-by-path', title: 'Rear tyre load by path', charts: loadPaths },
  { name: 'damper-speeds', title: 'Damper speeds', several: speedsTitle, charts: (view) => [damperSpeed(view, 'rear'), damperSpeed(view, 'front')] },
  { name: 'damper-forces', title: 'Damper forces', charts: (view) => [damperForce(view, 'rear'), damperForce(view, 'front')] },
  { name: 'grip', title: 'Grip and slip', several: gripTitle, charts: (view) => [grip(view), slip(view)] },
  { name: 'bar-forces', title: 'Bar forces', charts: bars },
  { name: 'instant-centre', title: 'Percent and instant centre', several: percentTitle, charts: (view) => [percent(view), instantCentre(view), pinion(view)] },
  { name: 'driveline', title: 'Driveline', charts: (view) => [axleTorque(view), ...engineSpeed(view)] },
  { name: 'motion', title: 'Speed and acceleration', charts: (view) => [speed(view), acceleration(view)] },
];

/**
 * The charts of a document.
 * @param {import('./view.js').LaunchSource} source
 * @param {(name: string) => boolean} [isWanted] Of which groups; of all when left out.
 * @returns {ChartGroup[]}
 */
export function chartsOf(source, isWanted = () => true) {
  const view = new LaunchView(source);
  return view.launches.length === 0 ? [] : REGISTER.filter(({ name }) => isWanted(name))
    .map(({ name, title, several, charts }) => ({ name, title: (view.several ? several?.(view) : view.launches[0].titles?.[name]) ?? title, charts: charts(view) }))
    .filter(({ charts }) => charts.length > 0);
}

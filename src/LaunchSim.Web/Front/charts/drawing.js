// @ts-check
import { axes } from './axes.js';
import { STRIDE, profileOf } from './boxes.js';
import { hasValue, letterOf } from './data.js';
import { svg } from '../elements.js';
import { rounded, words } from './text.js';
import { extentOf } from './extent.js';
import { lanes } from './lanes.js';
import { layoutOf, leftOf } from './layout.js';
import { besideNames, nameWithin } from './names.js';
import { bandPath, linePath, pointPath } from './paths.js';
import { createPlane } from './plane.js';
import { points } from './points.js';
import { valueAt } from './sample.js';
import { ticksOf } from './ticks.js';

/** @typedef {import('./data.js').ChartData} ChartData */
/** @typedef {import('./data.js').Curve} Curve */
/** @typedef {import('./plane.js').Plane} Plane */

// Room that a number of an axis takes, px.
const ACROSS = 56;
const UP = 30;

// Lines nearer than that are one to the eye, px.
const APART = 7;

/**
 * All of a chart that stays when the cursor moves.
 * @param {ChartData} data
 * @param {{ from: number, to: number, duration: number }} range
 * @param {number} width px.
 * @param {(text: string) => number} ruler
 * @param {string} clip An id for the plot's edges that the page has once.
 * @returns {{ plane: Plane, height: number, parts: SVGElement[] }}
 */
export function drawing(data, range, width, ruler, clip) {
  const layout = layoutOf(width, data, range.duration, ruler);
  const extent = extentOf(data, range.from, range.to);
  const up = ticksOf(extent.low, extent.high, (layout.bottom - layout.top) / UP);
  const area = { left: leftOf(up.texts, ruler), top: layout.top, right: layout.right, bottom: layout.bottom };
  const plane = createPlane(area, range, extent);
  const across = ticksOf(range.from, range.to, (plane.right - plane.left) / ACROSS);
  const several = data.curves.some((curve) => curve.launch > 0);
  const isEmpty = !data.curves.some((curve) => hasValue(curve.values));
  const parts = [
    strip(data, plane),
    axes(plane, across, isEmpty ? { values: [], texts: [] } : up, layout),
    lanes(data.marks ?? [], plane, layout, several, ruler),
    svg('g', { 'clip-path': `url(#${clip})` },
      ...data.curves.flatMap((curve) => band(curve, plane)),
      ...(data.levels ?? []).map((level) => svg('path', { d: `M${plane.left} ${rounded(plane.y(level.value))}H${plane.right}`, class: `chart-level tone-${level.tone}` })),
      ...data.curves.flatMap((curve) => lines(curve, plane)),
    ),
    svg('clipPath', { id: clip }, svg('rect', { x: plane.left, y: plane.top - 2, width: Math.max(0, plane.right - plane.left), height: plane.bottom - plane.top + 4 })),
  ];
  parts.push(isEmpty ? words('no value in this run', (plane.left + plane.right) / 2, (plane.top + plane.bottom) / 2, 'chart-nothing chart-middle') : named(data, plane, layout.isWide, several, ruler));

  return { plane, height: layout.height, parts };
}

/** @param {ChartData} data @param {Plane} plane */
function strip(data, plane) {
  if (data.strip === undefined) {
    return svg('g');
  }

  const top = Math.max(plane.top, plane.y(data.strip.high));
  const height = Math.max(0, Math.min(plane.bottom, plane.y(data.strip.low)) - top);
  return svg('rect', { x: plane.left, y: rounded(top), width: plane.right - plane.left, height: rounded(height), class: 'chart-strip' });
}

/** @param {Curve} curve @param {Plane} plane */
function band(curve, plane) {
  return curve.low !== undefined && curve.high !== undefined
    ? [svg('path', { d: bandPath(curve.times, curve.low, curve.high, plane), class: `chart-band tone-${curve.tone}` })]
    : [];
}

/** @param {Curve} curve @param {Plane} plane */
function lines({ times, values, closing, style, tone, weight }, plane) {
  /** @param {string} kind @param {(i: number) => boolean} [isDrawn] */
  const line = (kind, isDrawn) => svg('path', { d: kind === 'points' ? pointPath(times, values, plane) : linePath(times, values, plane, isDrawn), class: `chart-curve tone-${tone} line-${kind}`, 'stroke-width': weight ?? 2.2 });

  // Both parts hold the sample behind their end, so that they meet.
  return closing === undefined
    ? [line(style)]
    : [line('solid', (i) => closing[i] === 0 || closing[Math.max(0, i - 1)] === 0), line('dash', (i) => closing[i] === 1 || closing[Math.max(0, i - 1)] === 1)];
}

/** @param {ChartData} data @param {Plane} plane @param {boolean} isWide @param {boolean} several @param {(text: string) => number} ruler */
function named(data, plane, isWide, several, ruler) {
  const profiles = data.curves.map((curve) => profileOf(curve, plane, valueAt));
  const levels = (data.levels ?? []).map((level) => new Float64Array(profileLength(plane)).fill(plane.y(level.value)));
  const all = [...profiles, ...levels];
  /** @type {import('./boxes.js').Box[]} */
  const taken = [];
  const group = svg('g', {}, points(data, plane, all, taken, ruler));
  if (isWide) {
    const ends = data.curves.map((curve, i) => ({ text: curve.label, className: `tone-${curve.tone}`, end: endOf(profiles[i], plane) }));
    group.append(besideNames(ends, plane, ruler));

    // Lines that lie together at their ends are told apart where they part.
    data.curves.forEach((curve, i) => {
      const name = several ? nameWithin(letterOf(curve.launch), `tone-${curve.tone}`, profiles[i], all.filter((_, other) => other !== i), taken, plane, ruler, { must: false, apart: APART }) : null;
      group.append(...(name === null ? [] : [name]));
    });
  } else {
    data.curves.forEach((curve, i) => {
      const name = nameWithin(curve.label, `tone-${curve.tone}`, profiles[i], all.filter((_, other) => other !== i), taken, plane, ruler);
      group.append(...(name === null ? [] : [name]));
    });
  }

  (data.levels ?? []).forEach((level, i) => {
    const own = profiles.length + i;
    const name = nameWithin(level.text, `chart-level-name tone-${level.tone}`, all[own], all.filter((_, other) => other !== own), taken, plane, ruler, { must: isWide });
    group.append(...(name === null ? [] : [name]));
  });
  return group;
}

/** @param {Plane} plane */
function profileLength(plane) {
  return Math.max(0, Math.floor((plane.right - plane.left) / STRIDE) + 1);
}

/** @param {Float64Array} profile @param {Plane} plane */
function endOf(profile, plane) {
  for (let i = profile.length - 1; i >= 0; i--) {
    if (Number.isFinite(profile[i])) {
      return { x: plane.left + i * STRIDE, y: profile[i] };
    }
  }

  return null;
}

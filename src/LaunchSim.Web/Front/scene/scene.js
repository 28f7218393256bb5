// @ts-check

import { html, svg } from '../elements.js';
import { createAxle } from './axle.js';
import { createBody } from './body.js';
import { createGauge } from './gauge.js';
import { createGround } from './ground.js';
import { createLines } from './lines.js';
import { createLoads } from './loads.js';
import { createOutline } from './outline.js';
import { createPose } from './pose.js';
import { createWheel } from './wheel.js';
import { windowOf } from './window.js';

/**
 * The moving side view: the first launch in full, the others as outlines.
 * @typedef {{
 *   element: HTMLElement, drawing: SVGSVGElement, readonly window: import('./window.js').Window, readonly pose: import('./pose.js').Pose,
 *   show(doc: import('../document.js').LaunchDocument): void, look(view: import('./window.js').ViewName): void, onDraw(listener: () => void): void
 * }} Scene
 */

/**
 * @param {import('../document.js').LaunchDocument} first
 * @param {import('../cursor.js').Cursor} cursor
 * @returns {Scene}
 */
export function createScene(first, cursor) {
  const drawing = svg('svg', { class: 'scene', role: 'img' });
  const element = html('div', { class: 'scene-host' });
  element.append(drawing);
  /** @type {import('./window.js').ViewName} */
  let view = 'whole';
  let doc = first;
  let parts = partsOf(doc);
  let window = windowOf(doc.launches, view, 800);
  /** @type {(() => void)[]} */
  const listeners = [];
  drawing.append(...parts.elements);

  // Asked for again it would lay out the whole page, which every change of a setting has just touched.
  let width = 800;

  function fit() {
    window = windowOf(doc.launches, view, Math.max(240, width));
    drawing.setAttribute('viewBox', `0 0 ${window.width} ${window.height}`);
    drawing.setAttribute('width', String(window.width));
    drawing.setAttribute('height', String(window.height));
    draw();
  }

  function draw() {
    for (const pose of parts.poses) {
      pose.seek(cursor.time);
    }

    for (const part of parts.drawn) {
      part.draw(window);
    }

    for (const listener of listeners) {
      listener();
    }
  }

  cursor.subscribe(draw);
  new ResizeObserver(() => {
    width = element.clientWidth || width;
    fit();
  }).observe(element);
  describe();
  return {
    element,
    drawing,
    get window() {
      return window;
    },
    get pose() {
      return parts.poses[0];
    },
    show(next) {
      doc = next;
      parts = partsOf(doc);
      drawing.replaceChildren(...parts.elements);
      describe();
      fit();
    },
    look(next) {
      view = next;
      fit();
    },
    onDraw(listener) {
      listeners.push(listener);
    },
  };

  function describe() {
    drawing.setAttribute('aria-label', `Side view of the car, to scale: ${doc.launches.map((launch) => launch.name).join(', ')}. The numbers of each instant stand in the table below it.`);
  }
}

/** @param {import('../document.js').LaunchDocument} doc */
function partsOf(doc) {
  const poses = doc.launches.map(createPose);
  const [pose] = poses, { car } = pose.launch;
  const ground = createGround(doc.units.distance);
  const body = createBody(pose), axle = createAxle(pose, doc), lines = createLines(pose, doc), loads = createLoads(pose, doc);
  const rear = createWheel(car.rear.radius, true), front = createWheel(car.front.radius, false);
  const most = largestMovement(pose.launch);
  const gauges = [createGauge('rear', pose, doc, most), createGauge('front', pose, doc, most)];
  const others = poses.slice(1).map((other, i) => createOutline(other, i + 1, 'BC'[i] ?? ''));
  const drawn = [
    { draw: (/** @type {import('./window.js').Window} */ window) => ground.draw(window, known(pose.read('rear_wheel_place_m'))) },
    body,
    { draw: (/** @type {import('./window.js').Window} */ window) => rear.draw(window, pose.housing(0, car.rear.height), pose.rearAngle(), known(pose.read('carcass_windup_rad'))) },
    { draw: (/** @type {import('./window.js').Window} */ window) => front.draw(window, pose.frontWheel(), pose.frontAngle(), 0) },
    axle, lines, loads, ...gauges, ...others,
  ];
  return {
    poses,
    drawn,
    elements: [body.element, ground.element, ...others.map((other) => other.element), rear.element, front.element, axle.element, lines.element, loads.element, ...gauges.map((gauge) => gauge.element)],
  };
}

/** @param {import('../document.js').Launch} launch */
function largestMovement(launch) {
  let most = 0.02;
  for (const name of ['rear_rise_m', 'front_rise_m', 'separation_m', 'front_travel_m']) {
    for (const value of launch.columns[name] ?? []) {
      most = Math.abs(value) > most ? Math.abs(value) : most;
    }
  }

  return most;
}

/** @param {number} value */
function known(value) {
  return Number.isFinite(value) ? value : 0;
}

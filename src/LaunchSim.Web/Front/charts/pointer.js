// @ts-check
import { shiftBy, zoomAbout } from './range.js';

/** @typedef {import('../cursor.js').Cursor} Cursor */
/** @typedef {import('./range.js').TimeRange} TimeRange */

// A pointer that moves less than that has not moved, px.
const STILL = 4;

// How much a turn of the wheel by a pixel zooms.
const WHEEL = 0.004;

/**
 * Mouse, pen and fingers on a plot. Mouse: hovering looks at an instant, a click moves the cursor there, dragging across
 * zooms to what was dragged over. Fingers: one moves the cursor, up and down still scrolls the page; two zoom.
 * @param {HTMLElement} area The plot.
 * @param {object} act
 * @param {Cursor} act.cursor
 * @param {TimeRange} act.range
 * @param {(clientX: number) => number} act.timeAt The instant below a place of the window, s.
 * @param {(time: number) => void} act.point Shows what is at an instant; not a number ends that.
 * @param {(from: number, to: number) => void} act.select Shows what would be zoomed to; not a number ends that.
 * @returns {() => void} Ends it.
 */
export function followPointer(area, { cursor, range, timeAt, point, select }) {
  const left = new AbortController();
  const options = { signal: left.signal };
  /** @type {Array<{ id: number, x: number, time: number }>} */
  let fingers = [];
  let startX = NaN;
  let startTime = NaN;
  let isDragging = false;

  function release() {
    startX = NaN;
    isDragging = false;
    select(NaN, NaN);
  }

  /** @param {PointerEvent} event */
  function moveFinger(event) {
    const finger = fingers.find(({ id }) => id === event.pointerId);
    if (finger === undefined) {
      return;
    }

    finger.x = event.clientX;
    if (fingers.length === 1) {
      isDragging ||= Math.abs(event.clientX - startX) > STILL;
      if (isDragging) {
        cursor.set(timeAt(event.clientX));
      }

      return;
    }

    // What is below each of two fingers stays below it.
    const [one, other] = fingers;
    const apart = timeAt(other.x) - timeAt(one.x);
    if (Math.abs(other.x - one.x) > STILL && (apart > 0) === (other.time > one.time)) {
      const length = ((range.to - range.from) * (other.time - one.time)) / apart;
      const from = one.time - ((timeAt(one.x) - range.from) * length) / (range.to - range.from);
      range.set(Math.max(0, from), from + length);
    }
  }

  area.addEventListener('pointerdown', (event) => {
    if (event.button !== 0) {
      return;
    }

    point(NaN);
    startX = event.clientX;
    startTime = timeAt(event.clientX);
    isDragging = false;
    if (event.pointerType === 'touch') {
      fingers = [...fingers, { id: event.pointerId, x: event.clientX, time: startTime }].slice(-2);
      fingers.forEach((finger) => (finger.time = timeAt(finger.x)));
    }

    area.setPointerCapture(event.pointerId);
  }, options);

  area.addEventListener('pointermove', (event) => {
    if (event.pointerType === 'touch') {
      moveFinger(event);
    } else if (Number.isNaN(startX)) {
      point(timeAt(event.clientX));
    } else if (isDragging || Math.abs(event.clientX - startX) > STILL) {
      isDragging = true;
      select(startTime, timeAt(event.clientX));
    }
  }, options);

  area.addEventListener('pointerup', (event) => {
    const wasPinch = fingers.length > 1;
    fingers = fingers.filter(({ id }) => id !== event.pointerId);
    if (Number.isNaN(startX) || wasPinch) {
      startX = NaN;
      return;
    }

    if (event.pointerType === 'touch' || !isDragging) {
      cursor.set(timeAt(event.clientX));
    } else {
      range.set(startTime, timeAt(event.clientX));
    }

    release();
  }, options);

  area.addEventListener('pointercancel', (event) => {
    fingers = fingers.filter(({ id }) => id !== event.pointerId);
    release();
  }, options);
  area.addEventListener('pointerleave', () => point(NaN), options);
  area.addEventListener('dblclick', () => range.reset(), options);
  area.addEventListener('keydown', (event) => {
    if (event.key === 'Escape' && !Number.isNaN(startX)) {
      event.stopImmediatePropagation();
      release();
    }
  }, options);

  area.addEventListener('wheel', (event) => {
    if (event.ctrlKey) {
      // A pinch on a touch pad comes as a wheel with this key.
      zoomAbout(range, timeAt(event.clientX), Math.exp(WHEEL * event.deltaY));
    } else if (!range.isWhole && Math.abs(event.deltaX) > Math.abs(event.deltaY)) {
      shiftBy(range, (event.deltaX * (range.to - range.from)) / area.clientWidth);
    } else {
      return;
    }

    event.preventDefault();
  }, { ...options, passive: false });

  return () => left.abort();
}

// @ts-check
import { drawing } from './drawing.js';
import { html, svg } from '../elements.js';
import { rounded } from './text.js';
import { followKeys } from './keys.js';
import { createNeedle } from './needle.js';
import { followPointer } from './pointer.js';
import { createReadout } from './readout.js';
import { createRuler } from './ruler.js';
import { createTable } from './table.js';

/** @typedef {import('../cursor.js').Cursor} Cursor */
/** @typedef {import('./range.js').TimeRange} TimeRange */
/** @typedef {import('./data.js').ChartData} ChartData */

// How wide a chart is laid out for paper, px; it is scaled to the column.
const PAPER = 720;

// Time without a move after which a chart with the focus says where the cursor is, ms: not at every frame of playing.
const SETTLED = 400;

// How far outside of the window a chart is drawn already.
const AHEAD = '300px';

let count = 0;

/**
 * A chart of curves against time that shares its cursor and its time range with all others of the page.
 * @param {HTMLElement} host What it is put into.
 * @param {Cursor} cursor
 * @param {TimeRange} range
 * @returns {{ element: HTMLElement, show: (data: ChartData) => void, dispose: () => void }}
 */
export function createChart(host, cursor, range) {
  const clip = `chart-clip-${++count}`;
  const title = html('span', { class: 'chart-title' });
  const unit = html('span', { class: 'chart-unit-name' });
  const whole = html('button', { type: 'button', class: 'chart-whole', hidden: true }, 'whole run');
  const explanation = html('p', { class: 'chart-explanation' });
  const readout = createReadout();
  const picture = svg('svg', { class: 'chart-picture', 'aria-hidden': 'true' });
  const selection = svg('rect', { class: 'chart-selection', visibility: 'hidden' });
  const pointed = createNeedle('chart-pointed');
  const needle = createNeedle('chart-cursor');
  // What moves is a drawing of its own, so that the browser lays out nothing else when it does.
  const overlay = svg('svg', { class: 'chart-overlay', 'aria-hidden': 'true' }, selection, pointed.element, needle.element);
  const area = html('div', { class: 'chart-area', role: 'slider', tabindex: 0, 'aria-valuemin': 0 }, picture, overlay);
  const table = createTable();
  const caption = html('figcaption', { class: 'chart-caption' }, html('span', {}, title, unit), whole);
  const element = html('figure', { class: 'chart' }, caption, explanation, readout.element, area, table.element);
  host.append(element);

  /** @type {ChartData | null} */
  let data = null;
  /** @type {import('./plane.js').Plane | null} */
  let plane = null;
  /** @type {((text: string) => number) | undefined} */
  let ruler;
  let width = 0;
  let isSeen = false;
  let isStale = true;
  let pointedAt = NaN;
  let settling = 0;

  function draw() {
    if (data === null || width <= 0) {
      return;
    }

    isStale = false;
    ruler ??= createRuler(picture);
    const drawn = drawing(data, range, width, ruler, clip);
    plane = drawn.plane;
    for (const one of [picture, overlay]) {
      one.setAttribute('viewBox', `0 0 ${width} ${drawn.height}`);
    }

    picture.replaceChildren(...drawn.parts);
    needle.fit(plane, data.curves);
    pointed.fit(plane, data.curves);
    whole.hidden = range.isWhole;
    look();
  }

  /** Draws now if it is seen, else when it will be. */
  function drawSoon() {
    isStale = true;
    if (isSeen) {
      draw();
    }
  }

  /** Shows what is at the cursor, or at the pointer while it is over the plot. */
  function look() {
    needle.place(cursor.time);
    pointed.place(pointedAt);
    const isPointed = !Number.isNaN(pointedAt);
    readout.update(isPointed ? pointedAt : cursor.time, isPointed);
  }

  function moved() {
    if (isSeen) {
      look();
      if (settling === 0) {
        settling = setTimeout(settle, SETTLED, cursor.time);
      }
    }
  }

  /** @param {number} before Where the cursor was. */
  function settle(before) {
    settling = before === cursor.time ? 0 : setTimeout(settle, SETTLED, cursor.time);
    if (settling === 0) {
      tell();
    }
  }

  function tell() {
    if (data !== null) {
      area.setAttribute('aria-valuemax', String(cursor.duration));
      area.setAttribute('aria-valuenow', cursor.time.toFixed(3));
      area.setAttribute('aria-valuetext', readout.text(cursor.time));
    }
  }

  /** @param {number} from @param {number} to */
  function select(from, to) {
    selection.setAttribute('visibility', plane === null || Number.isNaN(from) ? 'hidden' : 'visible');
    if (plane !== null && !Number.isNaN(from)) {
      const [left, right] = [from, to].sort((a, b) => a - b).map((time) => Math.min(plane?.right ?? 0, Math.max(plane?.left ?? 0, plane?.x(time) ?? 0)));
      selection.setAttribute('x', String(rounded(left)));
      selection.setAttribute('width', String(rounded(right - left)));
      selection.setAttribute('y', String(plane.top));
      selection.setAttribute('height', String(plane.bottom - plane.top));
    }
  }

  /** @param {number} clientX */
  function timeAt(clientX) {
    if (plane === null) {
      return cursor.time;
    }

    const box = picture.getBoundingClientRect();
    const time = plane.time(((clientX - box.left) * width) / box.width);
    return Math.min(range.to, Math.max(range.from, time));
  }

  /** @param {number} time */
  function point(time) {
    if (time !== pointedAt && !(Number.isNaN(time) && Number.isNaN(pointedAt))) {
      pointedAt = time;
      look();
    }
  }

  /** @param {number} wide */
  function fit(wide) {
    if (wide > 0 && wide !== width) {
      width = wide;
      draw();
    }
  }

  const onPaper = () => {
    width = PAPER;
    draw();
  };
  const onScreen = () => fit(Math.round(area.clientWidth));
  const sizes = new ResizeObserver(() => {
    const wide = Math.round(area.clientWidth);
    if (wide !== width && wide > 0) {
      width = wide;
      drawSoon();
    }
  });
  const views = new IntersectionObserver((entries) => {
    isSeen = entries[entries.length - 1].isIntersecting;
    if (isSeen && isStale) {
      draw();
    } else if (isSeen) {
      look();
    }
  }, { rootMargin: AHEAD });
  sizes.observe(area);
  views.observe(element);
  window.addEventListener('beforeprint', onPaper);
  window.addEventListener('afterprint', onScreen);
  whole.addEventListener('click', () => range.reset());
  area.addEventListener('focus', tell);
  const ends = [
    cursor.subscribe(moved),
    range.subscribe(drawSoon),
    followPointer(area, { cursor, range, timeAt, point, select }),
    followKeys(area, cursor, range, () => data?.curves[0]?.times ?? new Float64Array(0), tell),
    () => sizes.disconnect(),
    () => views.disconnect(),
    () => window.removeEventListener('beforeprint', onPaper),
    () => window.removeEventListener('afterprint', onScreen),
    () => clearTimeout(settling),
    () => table.dispose(),
  ];

  return {
    element,
    show(shown) {
      data = shown;
      title.textContent = shown.title;
      unit.textContent = shown.unit === '' ? '' : `, ${shown.unit}`;
      explanation.textContent = shown.reason ?? shown.explanation;
      explanation.hidden = explanation.textContent === '';
      area.setAttribute('aria-label', `${shown.title}${shown.unit === '' ? '' : `, ${shown.unit}`}, against time`);
      readout.show(shown);
      table.show(shown);
      tell();
      drawSoon();
    },
    dispose() {
      ends.forEach((end) => end());
      element.remove();
    },
  };
}

// @ts-check

import { html } from './elements.js';

/** How much slower than the world; the second is where it begins. */
const SPEEDS = [{ share: 1 / 20, text: '1/20' }, { share: 1 / 10, text: '1/10' }, { share: 1 / 5, text: '1/5' }, { share: 1 / 2, text: '1/2' }, { share: 1, text: 'real time' }];
const USUAL = 1;

/** Where motion is not wanted, playing shows a still every so often: s of the launch, ms on the clock. */
const STILL = 0.05, STILL_CLOCK = 600;

/** A step of the buttons and arrow keys, and of these with Shift, s. */
const STEP = 0.001, LEAP = 0.01;

/**
 * Plays the shared time in slow motion.
 * @param {import('./cursor.js').Cursor} cursor
 * @param {Document | HTMLElement} [listens] Where its keys are heard: anywhere on a page that is all launch, within the player on one that is read.
 */
export function createPlayer(cursor, listens = document) {
  const play = html('button', { type: 'button', class: 'play' }, 'Play');
  const back = html('button', { type: 'button', 'aria-label': 'one millisecond back', title: 'one millisecond back' }, '‹');
  const on = html('button', { type: 'button', 'aria-label': 'one millisecond on', title: 'one millisecond on' }, '›');
  const scrub = html('input', { type: 'range', min: 0, max: cursor.duration, step: STEP, value: 0, class: 'scrub', 'aria-label': 'time since release' });
  const clock = html('output', { class: 'clock' }, '0.000 s');
  const speed = html('select', { 'aria-label': 'speed' }, ...SPEEDS.map(({ text }, i) => html('option', { value: i, selected: i === USUAL }, text)));
  const element = html('div', { class: 'player', role: 'group', 'aria-label': 'play the launch' }, play, back, on, scrub, clock, html('label', { class: 'speed' }, html('span', {}, 'speed'), speed));
  const calm = matchMedia('(prefers-reduced-motion: reduce)');
  let frame = 0, timer = 0, before = 0, reached = 0;

  const isPlaying = () => frame !== 0 || timer !== 0;

  function stop() {
    cancelAnimationFrame(frame);
    clearInterval(timer);
    frame = timer = 0;
    play.textContent = 'Play';
  }

  function start() {
    if (cursor.time >= cursor.duration) {
      cursor.set(0);
    }

    play.textContent = 'Pause';
    reached = cursor.time;
    if (calm.matches) {
      timer = setInterval(() => advance(STILL), STILL_CLOCK);
    } else {
      before = performance.now();
      frame = requestAnimationFrame(step);
    }
  }

  /** @param {number} now */
  function step(now) {
    // The first frame's own time may lie before the click's.
    const passed = Math.max(0, now - before) / 1000;
    before = now;
    frame = requestAnimationFrame(step);
    advance(passed * SPEEDS[speed.selectedIndex].share);
  }

  /** @param {number} by s. */
  function advance(by) {
    // Whoever takes the time somewhere else, as with a click in a chart, wants to look there.
    if (cursor.time !== reached) {
      stop();
      return;
    }

    cursor.set(cursor.time + by);
    reached = cursor.time;
    if (cursor.time >= cursor.duration) {
      stop();
    }
  }

  /** @param {number} to s; playing pauses, for the hand has the time. */
  function go(to) {
    stop();
    cursor.set(to);
  }

  function toggle() {
    if (isPlaying()) {
      stop();
    } else {
      start();
    }
  }

  play.addEventListener('click', toggle);
  back.addEventListener('click', () => go(onGrid(-STEP)));
  on.addEventListener('click', () => go(onGrid(STEP)));
  scrub.addEventListener('input', () => go(scrub.valueAsNumber));
  cursor.subscribe(() => {
    scrub.max = String(cursor.duration);
    scrub.value = String(cursor.time);
    clock.textContent = `${cursor.time.toFixed(3)} s`;
    scrub.setAttribute('aria-valuetext', `${cursor.time.toFixed(3)} seconds`);
  });
  listens.addEventListener('keydown', (caught) => {
    const event = /** @type {KeyboardEvent} */ (caught);
    if (!event.defaultPrevented && !event.altKey && !event.ctrlKey && !event.metaKey && !takesKeys(event.target, event.key)) {
      const step = event.shiftKey ? LEAP : STEP;
      const action = /** @type {Record<string, () => void>} */ ({
        ' ': toggle,
        ArrowLeft: () => go(onGrid(-step)),
        ArrowRight: () => go(onGrid(step)),
        Home: () => go(0),
        End: () => go(cursor.duration),
      })[event.key];
      if (action) {
        event.preventDefault();
        action();
      }
    }
  });
  return { element, stop, get isPlaying() { return isPlaying(); } };

  /**
   * From one whole millisecond to the next.
   * @param {number} by s.
   */
  function onGrid(by) {
    return Math.round((cursor.time + by) * 1000) / 1000;
  }
}

/**
 * Whether what has the focus wants a key for itself.
 * @param {EventTarget | null} target
 * @param {string} key
 */
function takesKeys(target, key) {
  if (!(target instanceof Element)) {
    return false;
  }

  if (target instanceof HTMLInputElement && target.type === 'range') {
    return !target.classList.contains('scrub');
  }

  return target.matches('input, select, textarea, [contenteditable], [data-keys]') || (key === ' ' && target.matches('button, summary, a, [role="radio"], [role="button"]'));
}

// @ts-check

import { html } from '../elements.js';

/**
 * @typedef {{
 *   path: string, label: string, kind: 'holes' | 'steps' | 'number', value: string, unit: string, values?: string[],
 *   from?: number, to?: number, step?: number, range?: string, minutes: number | null, choice: boolean
 * }} Control
 */

/**
 * The handles for all that may be moved.
 * @param {import('./set-up.js').SetUp} setUp
 */
export function createControls(setUp) {
  const list = html('div', { class: 'handles' });
  const element = html('section', { class: 'settings', 'aria-label': 'settings' }, html('h2', {}, 'Settings'), list);
  /** @type {{ refresh(): void }[]} */
  let rows = [];
  let shown = '';
  setUp.subscribe(() => rows.forEach((row) => row.refresh()));
  return {
    element,
    /** @param {Control[]} controls */
    show(controls) {
      // A file that was saved without touching a control leaves the handle in the hand.
      const next = JSON.stringify(controls);
      if (next !== shown) {
        shown = next;
        const made = controls.map((control) => rowOf(control, setUp));
        rows = made;
        list.replaceChildren(...made.map((row) => row.element));
      }

      rows.forEach((row) => row.refresh());
    },
  };
}

/**
 * @param {Control} control
 * @param {import('./set-up.js').SetUp} setUp
 */
function rowOf(control, setUp) {
  const { path, label, minutes } = control;
  const id = `set-${path.replace(/[^\w]+/g, '-')}`;
  const value = html('output', { class: 'handle-value', for: id });
  const back = html('button', { type: 'button', class: 'handle-back' });
  const handle = control.kind === 'holes' ? holesOf(control, setUp, id) : control.kind === 'steps' ? stepsOf(control, setUp, id) : numberOf(control, setUp, id);
  const name = control.kind === 'holes' ? html('span', { id: `${id}-name`, class: 'handle-name' }, label) : html('label', { for: id, class: 'handle-name' }, label);
  const time = minutes === null ? null : html('span', { class: 'quiet' }, ` ${minutes} min`);
  back.addEventListener('click', () => {
    setUp.move(path, null);
    setUp.settle();
    handle.focus();
  });
  return {
    element: html('div', { class: 'handle', 'data-path': path, title: path }, html('div', { class: 'handle-head' }, html('span', {}, name, time), value), handle.element, back),
    refresh() {
      const moved = setUp.valueOf(path), now = moved ?? control.value;
      value.textContent = control.kind === 'holes' ? `hole ${now}` : now;
      back.hidden = moved === undefined || moved === control.value;
      back.textContent = `back to ${control.value}`;
      back.setAttribute('aria-label', `${label}: back to ${control.value}, as in the file`);
      handle.refresh(now);
    },
  };
}

/**
 * @param {Control} control
 * @param {import('./set-up.js').SetUp} setUp
 * @param {string} id
 */
function stepsOf(control, setUp, id) {
  const values = control.values ?? [];
  const slider = html('input', { type: 'range', id, min: 0, max: Math.max(0, values.length - 1), step: 1 });
  slider.addEventListener('input', () => move(control, setUp, values[slider.valueAsNumber]));
  slider.addEventListener('change', () => setUp.settle());
  return {
    element: slider,
    focus: () => slider.focus(),
    /** @param {string} now */
    refresh(now) {
      // The file's own value may lie between those that are offered: the handle stands at the nearest.
      const at = values.indexOf(now);
      slider.value = String(at >= 0 ? at : nearest(values, now));
      slider.setAttribute('aria-valuetext', now);
    },
  };
}

/**
 * @param {Control} control
 * @param {import('./set-up.js').SetUp} setUp
 * @param {string} id
 */
function numberOf(control, setUp, id) {
  const { from = 0, to = 0, step = 1, unit } = control;
  const decimals = Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
  const slider = html('input', { type: 'range', id, min: from, max: to, step });
  slider.addEventListener('input', () => move(control, setUp, `${slider.valueAsNumber.toFixed(decimals)}${unit && ` ${unit}`}`));
  slider.addEventListener('change', () => setUp.settle());
  return {
    element: slider,
    focus: () => slider.focus(),
    /** @param {string} now */
    refresh(now) {
      slider.value = String(parseFloat(now));
      slider.setAttribute('aria-valuetext', now);
    },
  };
}

/**
 * @param {Control} control
 * @param {import('./set-up.js').SetUp} setUp
 * @param {string} id
 */
function holesOf(control, setUp, id) {
  const buttons = (control.values ?? []).map((name) => {
    const input = html('input', { type: 'radio', name: id, value: name });
    input.addEventListener('change', () => {
      move(control, setUp, name);
      setUp.settle();
    });
    return { name, input, element: html('label', { class: 'hole-name' }, input, name) };
  });
  const element = html('div', { class: 'hole-names', role: 'radiogroup', 'aria-labelledby': `${id}-name` }, ...buttons.map((button) => button.element));
  return {
    element,
    focus: () => buttons[0]?.input.focus(),
    /** @param {string} now */
    refresh(now) {
      for (const { name, input } of buttons) {
        input.checked = name === now;
      }
    },
  };
}

/**
 * @param {Control} control
 * @param {import('./set-up.js').SetUp} setUp
 * @param {string} value
 */
function move(control, setUp, value) {
  setUp.move(control.path, value === control.value ? null : value);
}

/**
 * @param {string[]} values
 * @param {string} now
 */
function nearest(values, now) {
  const wanted = parseFloat(now);
  let best = 0;
  values.forEach((value, i) => {
    if (Math.abs(parseFloat(value) - wanted) < Math.abs(parseFloat(values[best]) - wanted)) {
      best = i;
    }
  });
  return best;
}

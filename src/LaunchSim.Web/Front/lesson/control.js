// @ts-check

import { html } from '../elements.js';
import { inUnit } from '../document.js';

let count = 0;

/**
 * A value that the reader changes: a slider and a field for the number, both with its unit.
 * @param {object} about
 * @param {string} about.label
 * @param {import('../document.js').Unit} about.unit
 * @param {number} about.min In SI.
 * @param {number} about.max
 * @param {() => number} about.get Not a number where there is none.
 * @param {(value: number) => void} about.set
 */
export function createControl({ label, unit, min, max, get, set }) {
  const id = `control-${++count}`;
  const step = 10 ** -unit.decimals;
  const low = Math.ceil(min / unit.factor / step) * step, high = Math.floor(max / unit.factor / step) * step;
  const limits = { min: low.toFixed(unit.decimals), max: high.toFixed(unit.decimals), step };
  const slider = html('input', { type: 'range', id, ...limits });
  const field = html('input', { type: 'number', inputmode: 'decimal', ...limits, 'aria-label': `${label}, ${spoken(unit.unit)}` });
  const element = html('div', { class: 'control' }, html('label', { for: id }, label), slider, html('span', { class: 'control-number' }, field, html('span', { class: 'control-unit' }, unit.unit)));
  slider.addEventListener('input', () => set(slider.valueAsNumber * unit.factor));
  field.addEventListener('input', () => {
    if (field.validity.valid && !Number.isNaN(field.valueAsNumber)) {
      set(field.valueAsNumber * unit.factor);
    }
  });
  field.addEventListener('change', show);

  function show() {
    const value = get();
    const text = Number.isFinite(value) ? inUnit(value, unit) : '';
    slider.value = text || '0';
    slider.setAttribute('aria-valuetext', text ? `${text} ${spoken(unit.unit)}` : 'none');
    slider.disabled = field.disabled = !text;
    if (document.activeElement !== field || Number(field.value) !== Number(text)) {
      field.value = text;
    }
  }

  return { element, show };
}

/** @param {string} unit */
function spoken(unit) {
  return { in: 'inches', lb: 'pounds', mm: 'millimetres', N: 'newtons', '%': 'percent', '°': 'degrees' }[unit] ?? unit;
}

// @ts-check
import { svg } from '../elements.js';
import { rounded } from './text.js';
import { valueAt } from './sample.js';

/** @typedef {import('./plane.js').Plane} Plane */
/** @typedef {import('./data.js').Curve} Curve */

/**
 * A vertical line at an instant with a dot on every curve. Moving it changes attributes and nothing else.
 * @param {string} className
 */
export function createNeedle(className) {
  const line = svg('path', { class: 'chart-needle' });
  const group = switched(svg('g', { class: className }, line));
  /** @type {ReadonlyArray<Curve>} */
  let curves = [];
  /** @type {ReadonlyArray<ReturnType<typeof switched<SVGCircleElement>>>} */
  let dots = [];
  /** @type {Plane | null} */
  let plane = null;

  return {
    element: group.element,

    /**
     * Fits it to a drawing.
     * @param {Plane} onto
     * @param {ReadonlyArray<Curve>} shown
     */
    fit(onto, shown) {
      plane = onto;
      curves = shown;
      line.setAttribute('d', `M0 ${onto.top}V${onto.bottom}`);
      dots = shown.map((curve) => switched(svg('circle', { r: 3.5, class: `chart-needle-dot tone-${curve.tone}` })));
      group.element.replaceChildren(line, ...dots.map((dot) => dot.element));
    },

    /** @param {number} time Where to, s; not a number hides it. */
    place(time) {
      const isIn = plane !== null && time >= plane.from && time <= plane.to;
      group.toggle(isIn);
      if (!isIn || plane === null) {
        return;
      }

      group.element.setAttribute('transform', `translate(${rounded(plane.x(time))} 0)`);
      for (let i = 0; i < dots.length; i++) {
        const value = valueAt(curves[i].times, curves[i].values, time);
        const hasValue = Number.isFinite(value);
        dots[i].toggle(hasValue);
        if (hasValue) {
          dots[i].element.setAttribute('cy', String(rounded(plane.y(value))));
        }
      }
    },
  };
}

/**
 * An element that is hidden to begin with. Asking for what is so already costs nothing.
 * @template {SVGElement} E
 * @param {E} element
 */
function switched(element) {
  let isShown = false;
  element.setAttribute('display', 'none');
  return {
    element,
    /** @param {boolean} show */
    toggle(show) {
      if (show !== isShown) {
        isShown = show;
        show ? element.removeAttribute('display') : element.setAttribute('display', 'none');
      }
    },
  };
}

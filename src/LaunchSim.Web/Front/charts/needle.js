// @ts-check
import { rounded, svg } from './elements.js';
import { valueAt } from './sample.js';

/** @typedef {import('./plane.js').Plane} Plane */
/** @typedef {import('./data.js').Curve} Curve */

/**
 * A vertical line at an instant with a dot on every curve. Moving it changes attributes and nothing else.
 * @param {string} className
 */
export function createNeedle(className) {
  const line = svg('path', { class: 'chart-needle' });
  const group = svg('g', { class: className, visibility: 'hidden' }, [line]);
  /** @type {ReadonlyArray<Curve>} */
  let curves = [];
  /** @type {SVGCircleElement[]} */
  let dots = [];
  /** @type {Plane | null} */
  let plane = null;

  return {
    element: group,

    /**
     * Fits it to a drawing.
     * @param {Plane} onto
     * @param {ReadonlyArray<Curve>} shown
     */
    fit(onto, shown) {
      plane = onto;
      curves = shown;
      line.setAttribute('d', `M0 ${onto.top}V${onto.bottom}`);
      dots = shown.map((curve) => svg('circle', { r: 3.5, class: `chart-needle-dot tone-${curve.tone}`, visibility: 'hidden' }));
      group.replaceChildren(line, ...dots);
    },

    /** @param {number} time Where to, s; not a number hides it. */
    place(time) {
      if (plane === null || !(time >= plane.from && time <= plane.to)) {
        group.setAttribute('visibility', 'hidden');
        for (const dot of dots) {
          dot.setAttribute('visibility', 'hidden');
        }

        return;
      }

      group.setAttribute('visibility', 'visible');
      group.setAttribute('transform', `translate(${rounded(plane.x(time))} 0)`);
      for (let i = 0; i < dots.length; i++) {
        const value = valueAt(curves[i].times, curves[i].values, time);
        if (Number.isFinite(value)) {
          dots[i].setAttribute('cy', String(rounded(plane.y(value))));
        }

        dots[i].setAttribute('visibility', Number.isFinite(value) ? 'visible' : 'hidden');
      }
    },
  };
}

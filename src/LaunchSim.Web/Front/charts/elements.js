// @ts-check

const SVG = 'http://www.w3.org/2000/svg';

/**
 * An element of a drawing.
 * @template {keyof SVGElementTagNameMap} Name
 * @param {Name} name
 * @param {Record<string, string | number>} [attributes]
 * @param {ReadonlyArray<Node | string>} [children]
 * @returns {SVGElementTagNameMap[Name]}
 */
export function svg(name, attributes = {}, children = []) {
  const element = document.createElementNS(SVG, name);
  for (const key in attributes) {
    element.setAttribute(key, String(attributes[key]));
  }

  element.append(...children);
  return element;
}

/**
 * An element of the page.
 * @template {keyof HTMLElementTagNameMap} Name
 * @param {Name} name
 * @param {string} [className]
 * @param {ReadonlyArray<Node | string>} [children]
 * @returns {HTMLElementTagNameMap[Name]}
 */
export function html(name, className = '', children = []) {
  const element = document.createElement(name);
  if (className !== '') {
    element.className = className;
  }

  element.append(...children);
  return element;
}

/**
 * Words in a drawing.
 * @param {string} text
 * @param {number} x
 * @param {number} y Of the base line.
 * @param {string} className
 */
export function words(text, x, y, className) {
  return svg('text', { x: rounded(x), y: rounded(y), class: className }, [text]);
}

/**
 * A coordinate with as many digits as can be seen.
 * @param {number} pixels
 */
export function rounded(pixels) {
  return Math.round(pixels * 10) / 10;
}

// @ts-check

/** @typedef {Record<string, string | number | boolean | null | undefined>} Attributes */

/**
 * An HTML element with attributes and children; text children become text, never markup.
 * @template {keyof HTMLElementTagNameMap} K
 * @param {K} name
 * @param {Attributes} [attributes] What is false, null or undefined is left out; true stands without a value.
 * @param {...(Node | string | null | undefined)} children
 * @returns {HTMLElementTagNameMap[K]}
 */
export function html(name, attributes, ...children) {
  const element = document.createElement(name);
  put(element, attributes);
  for (const child of children) {
    if (child !== null && child !== undefined) {
      element.append(child);
    }
  }

  return element;
}

/**
 * An SVG element with attributes and children.
 * @template {keyof SVGElementTagNameMap} K
 * @param {K} name
 * @param {Attributes} [attributes]
 * @param {...(Node | string)} children
 * @returns {SVGElementTagNameMap[K]}
 */
export function svg(name, attributes, ...children) {
  const element = document.createElementNS('http://www.w3.org/2000/svg', name);
  put(element, attributes);
  element.append(...children);
  return element;
}

/**
 * Sets or takes away attributes.
 * @param {Element} element
 * @param {Attributes} [attributes]
 */
export function put(element, attributes) {
  for (const [key, value] of Object.entries(attributes ?? {})) {
    if (value === false || value === null || value === undefined) {
      element.removeAttribute(key);
    } else {
      element.setAttribute(key, value === true ? '' : String(value));
    }
  }
}

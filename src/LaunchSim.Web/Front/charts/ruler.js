// @ts-check

/** Sizes of text in a chart, px. */
export const TEXT = { size: 12.5, line: 15 };

// Names and numbers come again with every drawing; more different ones than that are not kept.
const MOST = 500;

/**
 * Measures text in the font of an element, without laying anything out. Made once and kept: asking for the font is what costs.
 * @param {Element} element In the page.
 * @returns {(text: string) => number} Width in px.
 */
export function createRuler(element) {
  const context = document.createElement('canvas').getContext('2d');
  /** @type {Map<string, number>} */
  const known = new Map();
  if (context !== null) {
    // Names of curves are bold; what is not is a little narrower.
    context.font = `600 ${TEXT.size}px ${getComputedStyle(element).fontFamily || 'sans-serif'}`;
  }

  return (text) => {
    const width = known.get(text) ?? context?.measureText(text).width ?? text.length * TEXT.size * 0.55;
    if (known.size < MOST) {
      known.set(text, width);
    }

    return width;
  };
}

/**
 * Parts a text into lines that fit, at its spaces.
 * @param {string} text
 * @param {number} width
 * @param {(text: string) => number} ruler
 */
export function wrapped(text, width, ruler) {
  /** @type {string[]} */
  const lines = [];
  for (const word of text.split(' ')) {
    const longer = lines.length === 0 ? word : `${lines[lines.length - 1]} ${word}`;
    if (lines.length > 0 && ruler(longer) <= width) {
      lines[lines.length - 1] = longer;
    } else {
      lines.push(word);
    }
  }

  return lines;
}

/**
 * A text cut off where it would not fit.
 * @param {string} text
 * @param {number} width
 * @param {(text: string) => number} ruler
 */
export function shortened(text, width, ruler) {
  let kept = text;
  while (kept.length > 1 && ruler(kept === text ? text : `${kept}…`) > width) {
    kept = kept.slice(0, -1);
  }

  return kept === text ? text : `${kept.trimEnd()}…`;
}

// @ts-check

/** Sizes of text in a chart, px. */
export const TEXT = { size: 12.5, line: 15 };

/**
 * Measures text in the font of an element, without laying anything out.
 * @param {Element} element In the page.
 * @returns {(text: string) => number} Width in px.
 */
export function createRuler(element) {
  const context = document.createElement('canvas').getContext('2d');
  const family = getComputedStyle(element).fontFamily || 'sans-serif';
  if (context !== null) {
    // Names of curves are bold; what is not is a little narrower.
    context.font = `600 ${TEXT.size}px ${family}`;
  }

  return (text) => context?.measureText(text).width ?? text.length * TEXT.size * 0.55;
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

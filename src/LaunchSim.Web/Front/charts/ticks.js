// @ts-check

/**
 * Round numbers within a span: 1, 2 or 5 times a power of ten apart.
 * @param {number} low
 * @param {number} high Above low.
 * @param {number} most How many there may be, about.
 * @returns {{ values: number[], texts: string[] }}
 */
export function ticksOf(low, high, most) {
  const rough = (high - low) / Math.max(1, most);
  const power = Math.floor(Math.log10(rough));
  const share = rough / 10 ** power;
  // A little more than asked for is better than half of it.
  const digit = share <= 1.1 ? 1 : share <= 2.2 ? 2 : share <= 5.5 ? 5 : 10;
  const step = digit * 10 ** power;
  const decimals = Math.max(0, digit === 10 ? -power - 1 : -power);
  const values = [];
  const texts = [];
  for (let i = Math.ceil(low / step - 1e-9); i * step <= high + 1e-9 * step; i++) {
    // Divided where the step is a fraction: 3 × 0.1 is not 0.3.
    const value = power < 0 ? i * digit / 10 ** -power : i * step;
    values.push(value);
    texts.push(textOf(value, decimals, step));
  }

  return { values, texts };
}

/** @param {number} value @param {number} decimals @param {number} step */
function textOf(value, decimals, step) {
  if (value === 0 || (Math.abs(value) < 1e7 && decimals <= 6)) {
    return value === 0 ? '0' : value.toFixed(decimals);
  }

  // As many digits as tell one number from the next.
  const digits = Math.floor(Math.log10(Math.abs(value)) + 1e-9) - Math.floor(Math.log10(step) + 1e-9);
  return value.toExponential(Math.min(15, Math.max(0, digits))).replace('e+', 'e');
}

// @ts-check

/**
 * Where the world is on the drawing: to scale, the same both ways.
 * @typedef {{ width: number, height: number, scale: number, view: ViewName, strip: number, left: number, ground: number, x(ahead: number): number, y(up: number): number }} Window
 */

/** What a view looks at, in wheelbases of the longest car: behind and ahead of the rear wheel, above the ground. */
const VIEWS = {
  whole: { behind: 0.21, ahead: 1.2, up: 0.5 },
  rear: { behind: 0.34, ahead: 0.5, up: 0.42 },
};

/** Where the body ends behind and ahead of the rear wheel, in wheelbases. */
export const TAIL = 0.165;
export const NOSE = 1.165;

/** Width of a gauge, px; each end has one, beside the car where there is room. */
export const GAUGE = 128;

/** @typedef {keyof typeof VIEWS} ViewName */

/** Below the ground, for the arrows of the loads: px. */
const BELOW = 74;

/** On a drawing narrower than this the gauges stand above the car, in a strip of their own: px. */
const NARROW = 760, STRIP = 112;

/** Behind the wheelie bar, m. */
const BEHIND_BAR = 0.12;

/**
 * @param {import('../document.js').Launch[]} launches
 * @param {ViewName} view
 * @param {number} width px.
 * @returns {Window}
 */
export function windowOf(launches, view, width) {
  const wheelbase = Math.max(...launches.map((launch) => launch.car.wheelbase));
  const { behind, ahead, up } = VIEWS[view];
  const isNarrow = width < NARROW, isWhole = view === 'whole';
  let left = behind * wheelbase, bar = 0, top = up * wheelbase;
  for (const { car, columns } of launches) {
    left = Math.max(left, 1.3 * car.rear.radius);
    bar = Math.max(bar, car.wheelieBar ? BEHIND_BAR - car.wheelieBar[0] : 0);

    // The nose of a car that stands up.
    top = isWhole ? Math.max(top, (up * wheelbase) + (1.15 * largest(columns.front_rise_m))) : top;
  }

  let scale = width / (left + (ahead * wheelbase));
  if (isWhole && !isNarrow) {
    // A gauge on either side of the car, and the wheelie bar whole.
    const front = NOSE * wheelbase;
    scale = Math.min((width - (2 * GAUGE)) / ((TAIL * wheelbase) + front), (width - GAUGE) / (bar + front));
    left = ((width - GAUGE) / scale) - front;
  }

  const strip = isNarrow ? STRIP : 0;
  const height = Math.round((top * scale) + strip + BELOW);
  const ground = height - BELOW;
  return { width, height, scale, view, strip, left, ground, x: (place) => (place + left) * scale, y: (place) => ground - (place * scale) };
}

/** @param {Float64Array | undefined} values */
function largest(values) {
  let most = 0;
  for (const value of values ?? []) {
    most = value > most ? value : most;
  }

  return most;
}

// @ts-check

/**
 * Where the world is on the drawing: to scale, the same both ways.
 * @typedef {{ width: number, height: number, scale: number, view: ViewName, strip: number, left: number, ground: number, x(ahead: number): number, y(up: number): number }} Window
 */

/** What a view looks at, in wheelbases of the longest car: ahead of the rear wheel and above the ground. */
const VIEWS = {
  whole: { behind: 0.34, ahead: 1.4, up: 0.56 },
  rear: { behind: 0.34, ahead: 0.5, up: 0.42 },
};

/** @typedef {keyof typeof VIEWS} ViewName */

/** Below the ground, for the arrows of the loads: px. */
const BELOW = 74;

/** On a drawing narrower than this the gauges stand above the car, in a strip of their own: px. */
const NARROW = 900, STRIP = 112;

/**
 * @param {import('../document.js').Launch[]} launches
 * @param {ViewName} view
 * @param {number} width px.
 * @returns {Window}
 */
export function windowOf(launches, view, width) {
  const wheelbase = Math.max(...launches.map((launch) => launch.car.wheelbase));
  const { behind, ahead, up } = VIEWS[view];
  const isNarrow = width < NARROW;
  let left = (isNarrow ? 0.21 : behind) * wheelbase, top = (isNarrow && view === 'whole' ? 0.5 : up) * wheelbase;
  for (const { car, columns } of launches) {
    left = Math.max(left, 1.3 * car.rear.radius, view === 'whole' && !isNarrow && car.wheelieBar ? 0.12 - car.wheelieBar[0] : 0);
    if (view === 'whole') {
      // The nose of a car that stands up.
      const rise = largest(columns.front_rise_m);
      top = Math.max(top, (0.5 * wheelbase) + (1.15 * rise));
    }
  }

  const scale = width / (left + ((isNarrow && view === 'whole' ? 1.2 : ahead) * wheelbase));
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

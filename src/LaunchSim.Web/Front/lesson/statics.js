// @ts-check

/**
 * The statics of the lesson's drawing: a solid axle with its wheels as one free body, pushed at the contact point, held by two
 * bars whose lines meet at the instant centre. The axle's own mass is left out, and only what changes from the standing car is
 * looked at. All in SI; the engine says the same at the check points of the document.
 * @typedef {[number, number]} Place Ahead of the rear wheel centre and above the ground, m.
 * @typedef {{ lowerAxle: Place, lowerBody: Place, upperAxle: Place, upperBody: Place }} Bars
 * @typedef {{ rearLoad: number, frontLoad: number, rearSprings: number, rearRate: number, frontRate: number, rearTireRate: number, frontTireRate: number }} Stiffness Loads, N, and rates of both sides, N/m.
 * @typedef {{ load: number, springs: number, gap: number, squash: number, rise: number, front: number, frontGap: number, frontRise: number }} Moment
 */

/** Lines whose slopes differ by less count as parallel: rounding leaves some 1e-16. */
const PARALLEL = 1e-12;

/**
 * Where the lines of both bars meet; null when they are parallel.
 * @param {Bars} bars
 * @returns {Place | null}
 */
export function instantCentre(bars) {
  const lower = between(bars.lowerAxle, bars.lowerBody), upper = between(bars.upperAxle, bars.upperBody);
  const cross = (lower[0] * upper[1]) - (lower[1] * upper[0]);
  if (Math.abs(cross) < PARALLEL * Math.hypot(...lower) * Math.hypot(...upper)) {
    return null;
  }

  const from = between(bars.lowerAxle, bars.upperAxle);
  const share = ((from[0] * upper[1]) - (from[1] * upper[0])) / cross;
  return [bars.lowerAxle[0] + (share * lower[0]), bars.lowerAxle[1] + (share * lower[1])];
}

/**
 * Slope of the line from the contact point: to the instant centre, or along parallel bars.
 * @param {Bars} bars
 */
export function slopeOf(bars) {
  const centre = instantCentre(bars);
  const lower = between(bars.lowerAxle, bars.lowerBody);
  return centre === null ? lower[1] / lower[0] : centre[1] / centre[0];
}

/**
 * What the drawing says of a thrust.
 * @param {number} slope
 * @param {number} cgHeight m.
 * @param {number} wheelbase m.
 * @param {number} thrust N, forward.
 */
export function staticsOf(slope, cgHeight, wheelbase, thrust) {
  const neutralSlope = cgHeight / wheelbase;
  const transfer = thrust * neutralSlope;
  const barsPush = thrust * slope;
  return { neutralSlope, percent: (100 * slope) / neutralSlope, transfer, barsPush, apart: barsPush - transfer };
}

/**
 * Pull in each bar, both sides together, N: from the balance of the axle forward and of turning about the contact point. Not
 * finite where no two bars on these lines can hold the axle.
 * @param {Bars} bars
 * @param {number} thrust N.
 */
export function barForces(bars, thrust) {
  const lower = direction(bars.lowerAxle, bars.lowerBody), upper = direction(bars.upperAxle, bars.upperBody);
  const turnsLower = turn(bars.lowerAxle, lower), turnsUpper = turn(bars.upperAxle, upper);
  const whole = (lower[0] * turnsUpper) - (upper[0] * turnsLower);
  const pullLower = (-thrust * turnsUpper) / whole, pullUpper = (thrust * turnsLower) / whole;
  return { lower: pullLower, upper: pullUpper, press: -((pullLower * lower[1]) + (pullUpper * upper[1])) };
}

/**
 * The first instant: the thrust is there, nothing has moved, so springs and dampers bring nothing.
 * @param {ReturnType<typeof staticsOf>} statics
 * @param {Stiffness} car
 * @returns {Moment}
 */
export function firstInstant(statics, car) {
  return { load: car.rearLoad + statics.barsPush, springs: 0, gap: 0, squash: 0, rise: 0, front: car.frontLoad, frontGap: 0, frontRise: 0 };
}

/**
 * Come to rest under a steady thrust: the springs bring what the bars do not, or have lost what the bars bring too much.
 * @param {ReturnType<typeof staticsOf>} statics
 * @param {Stiffness} car
 * @returns {Moment}
 */
export function atRest(statics, car) {
  const { transfer, apart } = statics;
  const gap = apart / car.rearRate, squash = transfer / car.rearTireRate, frontGap = transfer / car.frontRate;
  return { load: car.rearLoad + transfer, springs: -apart, gap, squash, rise: gap - squash, front: car.frontLoad - transfer, frontGap, frontRise: frontGap + (transfer / car.frontTireRate) };
}

/**
 * How far the line of the push passes below a point, m; negative above it.
 * @param {number} slope
 * @param {Place} point
 */
export function passesBelow(slope, [ahead, up]) {
  return up - (slope * ahead);
}

/** @param {Place} from @param {Place} to @returns {Place} */
function between(from, to) {
  return [to[0] - from[0], to[1] - from[1]];
}

/** @param {Place} from @param {Place} to @returns {Place} */
function direction(from, to) {
  const [ahead, up] = between(from, to), length = Math.hypot(ahead, up);
  return [ahead / length, up / length];
}

/**
 * How a force of 1 N turns about the contact point, nose up positive.
 * @param {Place} at
 * @param {Place} along
 */
function turn(at, along) {
  return (at[0] * along[1]) - (at[1] * along[0]);
}

// @ts-check

/**
 * A launch read at one instant, and the places of its parts then: the ground's height is 0, and the rear wheel's place along
 * the track is 0, for the view travels with it.
 * @typedef {{
 *   readonly launch: import('../document.js').Launch,
 *   seek(time: number): void,
 *   read(column: string): number,
 *   body(ahead: number, up: number): [number, number],
 *   housing(ahead: number, up: number): [number, number],
 *   frontWheel(): [number, number],
 *   rearAngle(): number,
 *   frontAngle(): number
 * }} Pose
 */

/**
 * @param {import('../document.js').Launch} launch
 * @returns {Pose}
 */
export function createPose(launch) {
  const { car, columns, times } = launch;
  const rearTurn = turned(columns.wheel_speed_radps, launch.step);
  const frontTurn = turned(columns.front_wheel_speed_radps, launch.step);
  const leanX = -Math.sin(car.pitch), leanZ = Math.cos(car.pitch);
  let row = 0, part = 0;
  let bodyX = 0, bodyZ = 0, cos = 1, sin = 0, axleZ = 0, axleCos = 1, axleSin = 0, travel = 0;

  /** @param {Float64Array | undefined} values */
  function between(values) {
    if (!values || values.length === 0) {
      return NaN;
    }

    // A column that has a value on one side only shows that one: what ends or begins there is not half there.
    const from = values[row], to = part > 0 ? values[row + 1] : from;
    return Number.isNaN(from) || Number.isNaN(to) ? (part < 0.5 ? from : to) : from + (part * (to - from));
  }

  return {
    launch,
    seek(time) {
      const last = times.length - 1;
      const at = last < 1 ? 0 : Math.min(last, Math.max(0, time / launch.step));
      row = Math.min(Math.max(0, last - 1), Math.floor(at + 1e-9));
      part = last < 1 ? 0 : Math.max(0, at - row);
      const pitch = between(columns.pitch_nose_up_rad) || 0;
      [sin, cos] = [Math.sin(pitch), Math.cos(pitch)];
      const turn = pitch + (between(columns.pinion_change_rad) || 0);
      [axleSin, axleCos] = [Math.sin(turn), Math.cos(turn)];
      bodyX = (between(columns.body_place_m) - between(columns.rear_wheel_place_m)) || 0;
      bodyZ = car.rear.height + (between(columns.rear_rise_m) || 0);
      axleZ = times.length === 0 ? car.rear.height : between(columns.rear_wheel_height_m);
      travel = between(columns.front_travel_m) || 0;
    },
    read(column) {
      return between(columns[column]);
    },
    body(ahead, up) {
      const z = up - car.rear.height;
      return [bodyX + (cos * ahead) - (sin * z), bodyZ + (sin * ahead) + (cos * z)];
    },
    housing(ahead, up) {
      const z = up - car.rear.height;
      return [(axleCos * ahead) - (axleSin * z), axleZ + (axleSin * ahead) + (axleCos * z)];
    },
    frontWheel() {
      return this.body(car.wheelbase + (travel * leanX), car.front.height + (travel * leanZ));
    },
    rearAngle() {
      return between(rearTurn) || 0;
    },
    frontAngle() {
      return between(frontTurn) || 0;
    },
  };
}

/**
 * The angle that something has turned by, from its speed.
 * @param {Float64Array | undefined} speed rad/s.
 * @param {number} step s.
 */
function turned(speed, step) {
  const angle = new Float64Array(speed?.length ?? 0);
  for (let row = 1; row < angle.length; row++) {
    const before = /** @type {Float64Array} */ (speed);
    angle[row] = angle[row - 1] + (0.5 * step * ((before[row - 1] || 0) + (before[row] || 0)));
  }

  return angle;
}

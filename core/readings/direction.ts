import { angleBetween, distance, sub, type Vec3 } from '../geometry/vec.ts';
import { halfTurnRadians } from '../units/angle.ts';
import { clockHoursFromTurn, turnFromClockHours } from '../units/clock.ts';

/** Where a lamp stands as seen from the point it is aimed at. */
export interface LampDirection {
  /** Angle between the directions to camera and lamp: 0 = on the camera's axis, pi/2 = side, pi = behind. */
  readonly offAxisRadians: number;
  /** Hours in [0, 12), camera at six. */
  readonly clockHours: number;
  /** Height of the lamp above the level of the aim point. */
  readonly elevationRadians: number;
  readonly distanceMetres: number;
}

/** How far round the subject a place stands from the camera, counter-clockwise seen from above, -pi to pi. */
export const turnAround = (aim: Vec3, camera: Vec3, place: Vec3): number => {
  const bearing = (p: Vec3) => Math.atan2(p[0] - aim[0], aim[2] - p[2]);
  const turn = bearing(camera) - bearing(place);
  return halfTurnRadians(turn);
};

/** Clock, height and distance of a lamp round its aim point. Where lamp and camera coincide with the aim, angles are 0. */
export const lampDirection = (aim: Vec3, camera: Vec3, lamp: Vec3): LampDirection => {
  const toLamp = sub(lamp, aim);
  return {
    offAxisRadians: angleBetween(sub(camera, aim), toLamp),
    clockHours: clockHoursFromTurn(turnAround(aim, camera, lamp)),
    elevationRadians: Math.atan2(toLamp[1], Math.hypot(toLamp[0], toLamp[2])),
    distanceMetres: distance(aim, lamp),
  };
};

/**
 * Where to stand for a clock position: the inverse of `lampDirection` on the ground.
 *
 * @param levelDistanceMetres level distance from the aim point
 * @param height of the lamp over the ground, world y
 */
export const placeAtClock = (
  aim: Vec3,
  camera: Vec3,
  clockHours: number,
  levelDistanceMetres: number,
  height: number,
): Vec3 => {
  const bearing = Math.atan2(camera[0] - aim[0], aim[2] - camera[2]) - turnFromClockHours(clockHours);
  return [aim[0] + levelDistanceMetres * Math.sin(bearing), height, aim[2] - levelDistanceMetres * Math.cos(bearing)];
};

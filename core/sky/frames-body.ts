import { normalize, type Vec3 } from '../geometry/vec.ts';
import { apparentDirection } from './refraction.ts';
import type { SkyBody } from './sky-state.ts';

const wholeTurn = 2 * Math.PI;

/** The same angle in [0, 2 pi). */
export const wrapRadians = (radians: number): number => {
  const wrapped = radians - wholeTurn * Math.floor(radians / wholeTurn);
  return wrapped < wholeTurn ? wrapped : 0;
};

/**
 * True bearing of a direction in the scene's axes, clockwise from true north, 0 to 2 pi; 0 straight up and down.
 *
 * @param northRadians true bearing of the scene's north (-z)
 */
export const trueBearing = (toward: Vec3, northRadians: number): number =>
  toward[0] === 0 && toward[2] === 0 ? 0 : wrapRadians(Math.atan2(toward[0], -toward[2]) + northRadians);

/** Height of a direction over the horizon, radians. */
export const altitudeOf = (toward: Vec3): number => Math.atan2(toward[1], Math.hypot(toward[0], toward[2]));

/** A body from the way to it in the scene's axes, of any length but zero. */
export const bodyFromWay = (way: Vec3, northRadians: number): SkyBody => {
  const toward = normalize(way);
  return {
    toward,
    towardSeen: apparentDirection(toward),
    altitudeRadians: altitudeOf(toward),
    bearingRadians: trueBearing(toward, northRadians),
  };
};

/** Unit direction in the scene's axes of a true bearing and a height. */
export const directionFromBearing = (bearingRadians: number, altitudeRadians: number, northRadians: number): Vec3 => {
  const turn = bearingRadians - northRadians;
  const level = Math.cos(altitudeRadians);
  return [level * Math.sin(turn), Math.sin(altitudeRadians), -level * Math.cos(turn)];
};

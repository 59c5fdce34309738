import { dot, normalize, sub, type Vec3 } from '../geometry/vec.ts';
import type { CameraView } from './camera-view.ts';

/** Steepest that a camera is turned to, so that "level" keeps a meaning: 89 degrees. */
const steepestRadians = (89 * Math.PI) / 180;

/** Unit direction of a bearing (clockwise from north) and a height over the horizon, in world axes. */
const directionOf = (bearing: number, altitude: number): Vec3 => [
  Math.sin(bearing) * Math.cos(altitude),
  Math.sin(altitude),
  -Math.cos(bearing) * Math.cos(altitude),
];

/**
 * Turns a direction aside and up, as a head on a tripod does.
 *
 * @param forward unit, world axes
 * @param pan clockwise seen from above, radians
 * @param tilt upward, radians; held within 89 degrees of level
 */
export const turned = (forward: Vec3, pan: number, tilt: number): Vec3 => {
  const bearing = Math.atan2(forward[0], -forward[2]) + pan;
  const altitude = Math.asin(Math.min(Math.max(forward[1], -1), 1)) + tilt;
  return directionOf(bearing, Math.min(Math.max(altitude, -steepestRadians), steepestRadians));
};

/**
 * Which way a camera must look, from where it stands and with its roll kept, for a place to come out at a point of the
 * picture. Closed form: the tilt from the height of the sight line alone, then the bearing.
 *
 * @param point world axes; not the camera's own place
 * @param x 0 = left edge, 1 = right edge
 * @param y 0 = top edge, 1 = bottom edge
 * @returns unit direction; null where no tilt within 89 degrees of level does it
 */
export const forwardThatShows = (view: CameraView, point: Vec3, x: number, y: number): Vec3 | null => {
  const wanted = normalize(sub(point, view.position));
  const h = (2 * x - 1) * view.tanHalfWidth;
  const v = (1 - 2 * y) * view.tanHalfHeight;
  // the roll, from how far the camera's right hand is off level
  const isSteep = Math.abs(view.forward[1]) > 1 - 1e-9;
  const levelRight: Vec3 = isSteep ? view.right : normalize([-view.forward[2], 0, view.forward[0]]);
  const [c, s] = [dot(view.right, levelRight), dot(view.up, levelRight)];
  // the picture's point in a camera without roll: right, up, ahead
  const [right, up, ahead] = normalize([h * c + v * s, v * c - h * s, 1]);
  const reach = Math.hypot(up, ahead);
  if (Math.abs(wanted[1]) > reach) return null;
  const tilt = Math.asin(wanted[1] / reach) - Math.atan2(up, ahead);
  if (Math.abs(tilt) > steepestRadians) return null;
  const level = ahead * Math.cos(tilt) - up * Math.sin(tilt);
  // level parts of the sight line: `right` across and `level` along the camera's bearing
  const bearing = Math.atan2(wanted[0], -wanted[2]) - Math.atan2(right, level);
  return directionOf(bearing, tilt);
};

/**
 * Where the horizon of level ground runs through the picture: its heights at the left and right edges, in the units of
 * `viewDirection` (0 = top, 1 = bottom; beyond them outside). Null where the camera stands on its side.
 */
export const horizonLine = ({
  right,
  up,
  forward,
  tanHalfWidth,
  tanHalfHeight,
}: CameraView): readonly [left: number, right: number] | null => {
  // points with forward + h right + v up level: forward.y + h right.y + v up.y = 0
  if (Math.abs(up[1]) < 1e-6) return null;
  const at = (h: number) => (1 - -(forward[1] + h * tanHalfWidth * right[1]) / up[1] / tanHalfHeight) / 2;
  return [at(-1), at(1)];
};

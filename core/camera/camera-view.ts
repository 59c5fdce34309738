import { discFromSquare } from '../geometry/disc-from-square.ts';
import { add, cross, dot, normalize, scale, sub, type Vec3 } from '../geometry/vec.ts';

/** A camera in world axes. `right`, `up` and `forward` are unit and square to each other. */
export interface CameraView {
  readonly position: Vec3;
  readonly right: Vec3;
  readonly up: Vec3;
  readonly forward: Vec3;
  /** Half the sensor over the focal length: tangent of half the horizontal field. */
  readonly tanHalfWidth: number;
  readonly tanHalfHeight: number;
  /** Radius of the lens opening that rays start from; 0 = a pinhole, to which everything is sharp. */
  readonly lensRadiusMetres: number;
  /** Distance along the axis of the plane that is in focus. Of no effect with a pinhole. */
  readonly focusMetres: number;
}

/** What a lens and sensor need to become a view; positions in world axes, angles in radians, millimetres for glass. */
export interface CameraPlacement {
  readonly position: Vec3;
  readonly aim: Vec3;
  readonly rollRadians: number;
  readonly sensorWidthMm: number;
  readonly sensorHeightMm: number;
  readonly focalLengthMm: number;
}

/**
 * A distortion-free camera looking from `position` to `aim`. Roll turns the camera clockwise as the photographer sees it.
 * Straight up and straight down take north as the top of the picture.
 */
export const cameraView = (placement: CameraPlacement): CameraView => {
  const { position, aim, rollRadians, sensorWidthMm, sensorHeightMm, focalLengthMm } = placement;
  const forward = normalize(sub(aim, position));
  const top: Vec3 = Math.abs(forward[1]) > 1 - 1e-9 ? [0, 0, -1] : [0, 1, 0];
  const levelRight = normalize(cross(forward, top));
  const levelUp = cross(levelRight, forward);
  const c = Math.cos(rollRadians);
  const s = Math.sin(rollRadians);
  return {
    position,
    forward,
    right: sub(scale(levelRight, c), scale(levelUp, s)),
    up: add(scale(levelUp, c), scale(levelRight, s)),
    tanHalfWidth: sensorWidthMm / 2 / focalLengthMm,
    tanHalfHeight: sensorHeightMm / 2 / focalLengthMm,
    lensRadiusMetres: 0,
    focusMetres: 1,
  };
};

/**
 * A view through an open lens instead of a pinhole: a thin lens of diameter f/N. The field of view stays that of focus at
 * infinity, so that focusing does not change the framing; as a share of the object's distance the blur is exact.
 */
export const openLens = (
  view: CameraView,
  focalLengthMm: number,
  fNumber: number,
  focusMetres: number,
): CameraView => ({
  ...view,
  lensRadiusMetres: focalLengthMm / fNumber / 2000,
  focusMetres,
});

/** Where a ray starts, and its unit direction. */
export interface Ray {
  readonly origin: Vec3;
  readonly direction: Vec3;
}

/**
 * A ray through a point of the picture (as in `viewDirection`) and a point of the lens.
 *
 * @param lensU two numbers in [0, 1) that spread evenly over the lens; (0.5, 0.5) is its middle
 */
export const viewRay = (view: CameraView, x: number, y: number, lensU: number, lensV: number): Ray => {
  const { position, right, up, forward, lensRadiusMetres, focusMetres } = view;
  const h = (2 * x - 1) * view.tanHalfWidth;
  const v = (1 - 2 * y) * view.tanHalfHeight;
  const way = add(forward, add(scale(right, h), scale(up, v)));
  if (lensRadiusMetres === 0) return { origin: position, direction: normalize(way) };
  const [a, b] = discFromSquare(lensU, lensV);
  const offset = add(scale(right, a * lensRadiusMetres), scale(up, b * lensRadiusMetres));
  return { origin: add(position, offset), direction: normalize(sub(scale(way, focusMetres), offset)) };
};

/**
 * Unit direction through a point of the picture and the middle of the lens.
 *
 * @param x 0 = left edge, 1 = right edge
 * @param y 0 = top edge, 1 = bottom edge
 */
export const viewDirection = (view: CameraView, x: number, y: number): Vec3 =>
  viewRay({ ...view, lensRadiusMetres: 0 }, x, y, 0.5, 0.5).direction;

/** Picture place [x, y] of a world point, in the units of `viewDirection`; null at or behind the lens. */
export const projectPoint = (view: CameraView, point: Vec3): readonly [x: number, y: number] | null => {
  const offset = sub(point, view.position);
  const depth = dot(offset, view.forward);
  if (depth <= 1e-9) return null;
  const h = dot(offset, view.right) / depth / view.tanHalfWidth;
  const v = dot(offset, view.up) / depth / view.tanHalfHeight;
  return [(h + 1) / 2, (1 - v) / 2];
};

/** Whether a world point falls inside the picture's edges (walls in front of it are not considered). */
export const isInFrame = (view: CameraView, point: Vec3): boolean => {
  const place = projectPoint(view, point);
  return place !== null && place[0] >= 0 && place[0] <= 1 && place[1] >= 0 && place[1] <= 1;
};

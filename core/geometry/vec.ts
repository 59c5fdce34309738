/** A vector or point in metres, world axes unless the name says otherwise: x east, y up, z south. */
export type Vec3 = readonly [x: number, y: number, z: number];

export const add = (a: Vec3, b: Vec3): Vec3 => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
export const sub = (a: Vec3, b: Vec3): Vec3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
export const scale = (a: Vec3, s: number): Vec3 => [a[0] * s, a[1] * s, a[2] * s];
export const dot = (a: Vec3, b: Vec3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const cross = (a: Vec3, b: Vec3): Vec3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
export const length = (a: Vec3): number => Math.sqrt(a[0] * a[0] + a[1] * a[1] + a[2] * a[2]);
export const distance = (a: Vec3, b: Vec3): number => length(sub(a, b));
export const mix = (a: Vec3, b: Vec3, t: number): Vec3 => add(scale(a, 1 - t), scale(b, t));

/** Unit vector; callers pass a non-zero one. */
export const normalize = (a: Vec3): Vec3 => scale(a, 1 / length(a));

/** Angle between two directions in radians, 0 to pi; accurate near both ends. */
export const angleBetween = (a: Vec3, b: Vec3): number => Math.atan2(length(cross(a, b)), dot(a, b));

/** Two unit vectors square to a unit vector and to each other. `first` is level where that makes sense. */
export const basisAround = (axis: Vec3): { first: Vec3; second: Vec3 } => {
  const helper: Vec3 = Math.abs(axis[1]) > 0.999 ? [1, 0, 0] : [0, 1, 0];
  const first = normalize(cross(helper, axis));
  return { first, second: cross(axis, first) };
};

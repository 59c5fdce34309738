/** Three numbers: RGB, XYZ or LMS, as the name of the variable says. */
export type Triple = readonly [number, number, number];

/** Row-major 3x3. */
export type Matrix3 = readonly [Triple, Triple, Triple];

const dot = (a: Triple, b: Triple) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

/** Matrix times column. */
export const apply = (m: Matrix3, v: Triple): Triple => [dot(m[0], v), dot(m[1], v), dot(m[2], v)];

/** Transpose. */
const transpose = (m: Matrix3): Matrix3 => [
  [m[0][0], m[1][0], m[2][0]],
  [m[0][1], m[1][1], m[2][1]],
  [m[0][2], m[1][2], m[2][2]],
];

/** a times b: b is applied first. */
export const multiply = (a: Matrix3, b: Matrix3): Matrix3 => {
  const columns = transpose(b);
  const row = (r: Triple): Triple => [dot(r, columns[0]), dot(r, columns[1]), dot(r, columns[2])];
  return [row(a[0]), row(a[1]), row(a[2])];
};

const cross = (a: Triple, b: Triple): Triple => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

/** Inverse by cofactors; callers pass regular matrices. */
export const invert = (m: Matrix3): Matrix3 => {
  const a = cross(m[1], m[2]);
  const d = 1 / dot(m[0], a);
  const scale = (v: Triple): Triple => [v[0] * d, v[1] * d, v[2] * d];
  return transpose([scale(a), scale(cross(m[2], m[0])), scale(cross(m[0], m[1]))]);
};

import type { JsonField } from './json-field.ts';

/** Four columns of four numbers, as glTF writes matrices. */
export type Matrix = readonly number[];

export const identity: Matrix = [1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1];

/** `a` after `b`. */
export const multiply = (a: Matrix, b: Matrix): Matrix =>
  Array.from({ length: 16 }, (_, i) => {
    const [row, column] = [i % 4, i - (i % 4)];
    return [0, 1, 2, 3].reduce((sum, k) => sum + (a[k * 4 + row] as number) * (b[column + k] as number), 0);
  });

/** Matrix of a move, a turn (unit quaternion x, y, z, w) and a scale, in glTF's order: scale first, move last. */
export const compose = (move: readonly number[], turn: readonly number[], scale: readonly number[]): Matrix => {
  const [x, y, z, w] = turn as [number, number, number, number];
  const [sx, sy, sz] = scale as [number, number, number];
  const [mx, my, mz] = move as [number, number, number];
  return [
    ...[(1 - 2 * (y * y + z * z)) * sx, 2 * (x * y + z * w) * sx, 2 * (x * z - y * w) * sx, 0],
    ...[2 * (x * y - z * w) * sy, (1 - 2 * (x * x + z * z)) * sy, 2 * (y * z + x * w) * sy, 0],
    ...[2 * (x * z + y * w) * sz, 2 * (y * z - x * w) * sz, (1 - 2 * (x * x + y * y)) * sz, 0],
    ...[mx, my, mz, 1],
  ];
};

/** Placement of a node (glTF 2.0, section 3.5.3). */
export const nodeMatrix = (node: JsonField): Matrix => {
  if (node.get('matrix').isThere) return node.get('matrix').numbers(16, identity);
  return compose(
    node.get('translation').numbers(3, [0, 0, 0]),
    node.get('rotation').numbers(4, [0, 0, 0, 1]),
    node.get('scale').numbers(3, [1, 1, 1]),
  );
};

/** Whether it mirrors, so that triangles turn the other way round. */
export const isMirroring = (m: Matrix): boolean => {
  const at = (column: number, row: number) => m[column * 4 + row] as number;
  const minor = (a: number, b: number) => at(1, a) * at(2, b) - at(1, b) * at(2, a);
  return at(0, 0) * minor(1, 2) + at(0, 1) * minor(2, 0) + at(0, 2) * minor(0, 1) < 0;
};

/** Places `count` points of `from` into `into`, from its point `at` on. */
export const placePoints = (m: Matrix, from: Float32Array, into: Float64Array, at: number): void => {
  const [a, b, c, , d, e, f, , g, h, i, , x, y, z] = m as number[] as [
    ...[number, number, number, number],
    ...[number, number, number, number],
    ...[number, number, number, number],
    ...[number, number, number],
  ];
  for (let p = 0, q = at * 3; p < from.length; p += 3, q += 3) {
    const [u, v, w] = [from[p] as number, from[p + 1] as number, from[p + 2] as number];
    into[q] = a * u + d * v + g * w + x;
    into[q + 1] = b * u + e * v + h * w + y;
    into[q + 2] = c * u + f * v + i * w + z;
  }
};

import type { Vec3 } from '../geometry/vec.ts';

/** The nine real spherical harmonics up to the second order, in the order 1; y, z, x; xy, yz, 3z^2-1, xz, x^2-y^2. */
const basis = ([x, y, z]: Vec3): number[] => [
  0.282095,
  0.488603 * y,
  0.488603 * z,
  0.488603 * x,
  1.092548 * x * y,
  1.092548 * y * z,
  0.315392 * (3 * z * z - 1),
  1.092548 * x * z,
  0.546274 * (x * x - y * y),
];

/** What is left of each order under a cosine: pi, 2 pi / 3, pi / 4 (Ramamoorthi and Hanrahan 2001, eq. 8). */
const underCosine = [0, 1, 1, 1, 2, 2, 2, 2, 2].map(
  (order) => [Math.PI, (2 * Math.PI) / 3, Math.PI / 4][order] as number,
);

/**
 * Illuminance of a dome on open surfaces as nine numbers, for its quick first picture: exact but for what a cosine leaves
 * of higher orders, a few percent of a smooth sky and more of a narrow glow.
 *
 * @param directions of equal light, three numbers each
 * @param luxAllRound of all of them together
 */
export const harmonicsOf = (directions: Float32Array, luxAllRound: number): number[] => {
  const sums = new Array<number>(9).fill(0);
  for (let i = 0; i < directions.length; i += 3) {
    const toward: Vec3 = [directions[i] as number, directions[i + 1] as number, directions[i + 2] as number];
    for (const [k, value] of basis(toward).entries()) sums[k] = (sums[k] as number) + value;
  }
  const each = luxAllRound / (directions.length / 3);
  return sums.map((sum, k) => sum * each * (underCosine[k] as number));
};

/** Illuminance on an open surface by its normal, in the units of the harmonics; not under 0. */
export const harmonicLux = (harmonics: readonly number[], normal: Vec3): number =>
  Math.max(
    basis(normal).reduce((sum, value, k) => sum + value * (harmonics[k] as number), 0),
    0,
  );

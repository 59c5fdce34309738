/** A smooth random field over the plane, within -1 to 1, zero on average, with bumps about one unit across. */
export type Noise = (x: number, y: number) => number;

/** A lattice point's own 32 bits (multiply, shift and mix; the constants are those of the Murmur3 finaliser, public domain). */
const bitsOf = (i: number, j: number, seed: number): number => {
  let h = Math.imul(i, 0x27d4eb2f) ^ Math.imul(j, 0x165667b1) ^ Math.imul(seed, 0x9e3779b1);
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return (h ^ (h >>> 16)) >>> 0;
};

/** A number in [0, 1) that belongs to a lattice point. */
export const latticeValue = (i: number, j: number, seed: number): number => bitsOf(i, j, seed) / 4294967296;

/** Slope of the field at a lattice point: one of 64 directions, so that no cosine is taken in the inner loop. */
const directions = Float64Array.from({ length: 128 }, (_, n) => {
  const turn = (2 * Math.PI * (n >> 1)) / 64;
  return n % 2 === 0 ? Math.cos(turn) : Math.sin(turn);
});

/** Eases from 0 to 1 with first and second slope zero at both ends. */
const ease = (t: number): number => t * t * t * (t * (t * 6 - 15) + 10);

/** Largest size of a plane gradient noise of unit slopes: half the root of 2; what is left is stretched to 1. */
const stretch = Math.SQRT2;

/**
 * Gradient noise: a random slope at every lattice point, eased together between them (K. Perlin, Improving noise,
 * SIGGRAPH 2002, for the easing). Has continuous curvature. The same seed gives the same field.
 */
export const planeNoise = (seed: number): Noise => {
  const corner = (i: number, j: number, x: number, y: number): number => {
    const at = (bitsOf(i, j, seed) & 63) * 2;
    return (directions[at] as number) * x + (directions[at + 1] as number) * y;
  };
  return (x, y) => {
    const [i, j] = [Math.floor(x), Math.floor(y)];
    const [fx, fy] = [x - i, y - j];
    const [ex, ey] = [ease(fx), ease(fy)];
    const south = corner(i, j, fx, fy) * (1 - ex) + corner(i + 1, j, fx - 1, fy) * ex;
    const north = corner(i, j + 1, fx, fy - 1) * (1 - ex) + corner(i + 1, j + 1, fx - 1, fy - 1) * ex;
    return stretch * (south * (1 - ey) + north * ey);
  };
};

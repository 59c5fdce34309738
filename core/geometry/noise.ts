import { seededRandom } from './random.ts';

/** A smooth random value for every place, -1 to 1, with mean 0. */
export type Noise = (x: number, y: number, z: number) => number;

/** The twelve directions from the middle of a cube to its edges, as in Perlin's improved noise. */
const gradients = Int8Array.from([
  1, 1, 0, -1, 1, 0, 1, -1, 0, -1, -1, 0, 1, 0, 1, -1, 0, 1, 1, 0, -1, -1, 0, -1, 0, 1, 1, 0, -1, 1, 0, 1, -1, 0, -1,
  -1,
]);

/** Scrambles a corner of the lattice into one of the twelve; any good mixing of bits will do. */
const gradientAt = (i: number, j: number, k: number, seed: number): number => {
  let h = Math.imul(i, 0x8da6b343) ^ Math.imul(j, 0xd8163841) ^ Math.imul(k, 0xcb1ab31f) ^ seed;
  h = Math.imul(h ^ (h >>> 16), 0x7feb352d);
  h = Math.imul(h ^ (h >>> 15), 0x846ca68b);
  return ((h ^ (h >>> 16)) >>> 0) % 12;
};

/** Height at a place of the plane through a corner of the lattice, x, y and z from that corner. */
const slope = (i: number, j: number, k: number, x: number, y: number, z: number, seed: number): number => {
  const g = 3 * gradientAt(i, j, k, seed);
  return (gradients[g] as number) * x + (gradients[g + 1] as number) * y + (gradients[g + 2] as number) * z;
};

const mix = (a: number, b: number, t: number): number => a + t * (b - a);

const ease = (t: number): number => t * t * t * (t * (t * 6 - 15) + 10);

/** Gradient noise on a lattice of unit cells (K. Perlin 2002, Improving noise). */
const gradientNoise = (x: number, y: number, z: number, seed: number): number => {
  const [i, j, k] = [Math.floor(x), Math.floor(y), Math.floor(z)];
  const [fx, fy, fz] = [x - i, y - j, z - k];
  const [u, v, w] = [ease(fx), ease(fy), ease(fz)];
  const a = slope(i, j, k, fx, fy, fz, seed);
  const b = slope(i + 1, j, k, fx - 1, fy, fz, seed);
  const c = slope(i, j + 1, k, fx, fy - 1, fz, seed);
  const d = slope(i + 1, j + 1, k, fx - 1, fy - 1, fz, seed);
  const e = slope(i, j, k + 1, fx, fy, fz - 1, seed);
  const f = slope(i + 1, j, k + 1, fx - 1, fy, fz - 1, seed);
  const g = slope(i, j + 1, k + 1, fx, fy - 1, fz - 1, seed);
  const h = slope(i + 1, j + 1, k + 1, fx - 1, fy - 1, fz - 1, seed);
  const low = mix(mix(a, b, u), mix(c, d, u), v);
  const high = mix(mix(e, f, u), mix(g, h, u), v);
  return mix(low, high, w);
};

/** Cells of the lattice per bump, so that like places of neighbouring bumps lie about `sizeMetres` apart (measured in the test). */
const cellsPerBump = 1.2;
const octaves = 2;

/**
 * Noise of several sizes: the first has bumps about `sizeMetres` apart, each next one half the size and half the
 * height. Pressed together so that it comes near to -1 and 1 often and never passes them.
 *
 * @param seed any whole number; another one gives another noise
 */
export const roughNoise = (sizeMetres: number, seed: number): Noise => {
  const random = seededRandom(seed);
  const layers = Array.from({ length: octaves }, (_, o) => ({
    frequency: (cellsPerBump * 2 ** o) / sizeMetres,
    weight: 0.4 ** o,
    seed: Math.floor(random() * 4294967296) | 0,
    // lattice points, where noise is always 0, must not fall on the middle of a part
    shift: [random() * 256, random() * 256, random() * 256] as const,
  }));
  return (x, y, z) => {
    let sum = 0;
    for (const { frequency, weight, seed: own, shift } of layers)
      sum += weight * gradientNoise(x * frequency + shift[0], y * frequency + shift[1], z * frequency + shift[2], own);
    const strong = 2 * sum;
    return strong / Math.sqrt(1 + strong * strong);
  };
};

import { planeNoise } from './plane-noise.ts';

/** Moves a place of the plane, [u, v] in metres. */
export type Warp = (u: number, v: number) => readonly [u: number, v: number];

/**
 * Gives a round sheet a natural outline: a map of the disc into itself that leaves the middle alone and draws the rim
 * in, here more, there less. One to one as long as `deepest` is under a third.
 *
 * @param deepest largest share of the radius that the rim is drawn in
 * @param bays about how many bays the outline has
 */
export const naturalOutline = (radiusMetres: number, deepest: number, bays: number, seed: number): Warp => {
  const noise = planeNoise(seed ^ 0x5bd1e995);
  const round = bays / (2 * Math.PI);
  return (u, v) => {
    const away = Math.hypot(u, v);
    if (away === 0) return [u, v];
    const [c, s] = [u / away, v / away];
    const rough = Math.tanh(
      1.5 * noise(c * round + 17, s * round) + 0.8 * noise(c * round * 2.7, s * round * 2.7 + 31),
    );
    const share = away / radiusMetres;
    const factor = 1 - deepest * (0.5 + 0.5 * rough) * share * share;
    return [u * factor, v * factor];
  };
};

import { roughNoise } from './noise.ts';
import type { Skin } from './skin.ts';

/** How uneven a surface is. */
export interface Rough {
  /** How far it stands out or in at most. */
  readonly heightMetres: number;
  /** From bump to bump, about. */
  readonly sizeMetres: number;
  readonly seed: number;
}

/** Mean direction out of the surface at each corner, weighted by the area of the triangles there. */
const outwardDirections = ({ places, triangles }: Skin): Float64Array => {
  const out = new Float64Array(places.length);
  const p = (corner: number, axis: number) => places[3 * corner + axis] as number;
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [triangles[t] as number, triangles[t + 1] as number, triangles[t + 2] as number];
    const [ux, uy, uz] = [p(b, 0) - p(a, 0), p(b, 1) - p(a, 1), p(b, 2) - p(a, 2)];
    const [vx, vy, vz] = [p(c, 0) - p(a, 0), p(c, 1) - p(a, 1), p(c, 2) - p(a, 2)];
    const normal = [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx] as const;
    for (const corner of [a, b, c])
      for (let axis = 0; axis < 3; axis++)
        out[3 * corner + axis] = (out[3 * corner + axis] as number) + (normal[axis] as number);
  }
  toUnits(out);
  return out;
};

const toUnits = (directions: Float64Array): void => {
  for (let i = 0; i < directions.length; i += 3) {
    const [x, y, z] = [directions[i] as number, directions[i + 1] as number, directions[i + 2] as number];
    const length = Math.sqrt(x * x + y * y + z * z);
    const scale = length > 0 ? 1 / length : 0;
    directions[i] = x * scale;
    directions[i + 1] = y * scale;
    directions[i + 2] = z * scale;
  }
};

/** Directions averaged with those of neighbours some times over, so that near edges they fan out and never cross. */
const fannedOut = (directions: Float64Array, triangles: Uint32Array, times: number): Float64Array => {
  let from = directions;
  for (let time = 0; time < times; time++) {
    const to = from.slice();
    for (let t = 0; t < triangles.length; t += 3)
      for (let k = 0; k < 3; k++) {
        const [a, b] = [3 * (triangles[t + k] as number), 3 * (triangles[t + ((k + 1) % 3)] as number)];
        for (let axis = 0; axis < 3; axis++) to[a + axis] = (to[a + axis] as number) + (from[b + axis] as number);
      }
    toUnits(to);
    from = to;
  }
  return from;
};

/** Higher bumps than this share of their size would fold over. */
const steepest = 0.5;

/**
 * A skin pushed out and in by noise, which is the same wherever the place is the same: nothing tears. The foot of what
 * stands on the ground keeps its height, so that no gap opens under it.
 *
 * @param cellMetres length of the skin's triangles; bumps smaller than three of them are drawn that large
 * @param thickness how far the surface may move at each corner before it comes near the other side; metres
 * @param stands whether the lowest places are a foot; false for sheets
 */
export const roughened = (
  skin: Skin,
  rough: Rough,
  cellMetres: number,
  thickness: (corner: number) => number,
  stands: boolean,
): Skin => {
  if (rough.heightMetres <= 0) return skin;
  const { places, triangles } = skin;
  const sizeMetres = Math.max(rough.sizeMetres, 3 * cellMetres);
  const most = Math.min(rough.heightMetres, steepest * sizeMetres);
  const noise = roughNoise(sizeMetres, rough.seed);
  const times = Math.min(Math.ceil((most / cellMetres) ** 2), 8);
  const outward = fannedOut(outwardDirections(skin), triangles, times);
  let foot = Number.POSITIVE_INFINITY;
  for (let i = 1; i < places.length; i += 3) foot = Math.min(foot, places[i] as number);
  const moved = places.slice();
  for (let i = 0; i < places.length; i += 3) {
    const [x, y, z] = [places[i] as number, places[i + 1] as number, places[i + 2] as number];
    const move = noise(x, y, z) * Math.min(most, thickness(i / 3));
    const up = stands ? Math.min((y - foot) / (2 * most), 1) : 1;
    moved[i] = x + move * (outward[i] as number);
    moved[i + 1] = y + move * (outward[i + 1] as number) * up * up * (3 - 2 * up);
    moved[i + 2] = z + move * (outward[i + 2] as number);
  }
  return { places: moved, triangles };
};

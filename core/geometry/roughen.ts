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

const addTo = (sums: Float64Array, at: number, x: number, y: number, z: number): void => {
  sums[at] = (sums[at] as number) + x;
  sums[at + 1] = (sums[at + 1] as number) + y;
  sums[at + 2] = (sums[at + 2] as number) + z;
};

/** Mean direction out of the surface at each corner, weighted by the area of the triangles there. */
const outwardDirections = ({ places, triangles }: Skin): Float64Array => {
  const out = new Float64Array(places.length);
  for (let t = 0; t < triangles.length; t += 3) {
    const a = 3 * (triangles[t] as number);
    const b = 3 * (triangles[t + 1] as number);
    const c = 3 * (triangles[t + 2] as number);
    const [ax, ay, az] = [places[a] as number, places[a + 1] as number, places[a + 2] as number];
    const [ux, uy, uz] = [(places[b] as number) - ax, (places[b + 1] as number) - ay, (places[b + 2] as number) - az];
    const [vx, vy, vz] = [(places[c] as number) - ax, (places[c + 1] as number) - ay, (places[c + 2] as number) - az];
    const [x, y, z] = [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
    addTo(out, a, x, y, z);
    addTo(out, b, x, y, z);
    addTo(out, c, x, y, z);
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
        const b = 3 * (triangles[t + ((k + 1) % 3)] as number);
        addTo(to, 3 * (triangles[t + k] as number), from[b] as number, from[b + 1] as number, from[b + 2] as number);
      }
    toUnits(to);
    from = to;
  }
  return from;
};

/** Faces of an uneven surface that meet at more than this are an edge of the rock, not a bump. */
export const roughCreaseRadians = Math.PI / 3;

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

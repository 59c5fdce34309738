import type { Mesh } from '../mesh.ts';
import { evenColumns, zipColumns } from './columns.ts';
import { naturalOutline } from './outline.ts';
import { planeNoise } from './plane-noise.ts';
import { divideEvenly } from './reach.ts';
import { leastAcross, type SheetShape, sheetLiftMetres, smoothstep } from './sheet.ts';
import { smoothMesh } from './smooth-mesh.ts';

/** How much longer drifts are along the wind than across it. */
const stretch = 2.2;

/** A height field of snow, 0 to 1: broad swells and narrower ridges along u, the wind's way, steeper against it. */
export const driftField = (spacingMetres: number, seed: number): ((u: number, v: number) => number) => {
  const noise = planeNoise(seed);
  const other = planeNoise(seed ^ 0x68bc21eb);
  const s = spacingMetres;
  return (u, v) => {
    const swell = noise(u / (1.8 * stretch * s), v / (1.8 * s));
    // the sides of a drift lean down the wind: sampling up the wind where it is high steepens its windward edge
    const lean = 0.55 * s * (swell + 0.5 * noise(u / (1.1 * stretch * s) + 20, v / (0.7 * s)));
    const [du, dv] = [u + lean, v + 0.25 * s * other(u / (4 * s), v / (2 * s))];
    const drift = other(du / (stretch * s), dv / s);
    const ridge = noise(du / (0.9 * stretch * s) + 50, dv / (0.45 * s));
    const soft = Math.sqrt(ridge * ridge + 0.03);
    const sum = 0.42 * swell + 0.45 * drift + 0.6 * (0.34 - soft);
    return 0.5 + 0.5 * Math.tanh(1.5 * sum);
  };
};

/**
 * Snow drifts, drawn out along u. Smooth; at the rim they run out into the ground.
 *
 * @returns corners [v, up, -u], metres, about the middle of the sheet
 */
export const driftsMesh = (given: SheetShape): Mesh => {
  const shape = leastAcross(given, 1.5);
  const { radiusMetres, stepMetres } = divideEvenly(shape);
  const root = Math.sqrt(1.5);
  const columns = evenColumns(radiusMetres, stepMetres * root, stepMetres / root);
  const field = driftField(shape.spacingMetres, shape.seed);
  const warp = naturalOutline(radiusMetres, 0.22, 7, shape.seed);
  const points: number[] = [];
  for (const { v, u } of columns)
    for (const at of u) {
      const open = 1 - smoothstep(0.65, 1, Math.sqrt(at * at + v * v) / radiusMetres);
      const [x, y] = warp(at, v);
      points.push(y, open * (sheetLiftMetres + shape.heightMetres * field(at, v)), -x);
    }
  return smoothMesh({ points: Float64Array.from(points), triangles: zipColumns(columns) });
};

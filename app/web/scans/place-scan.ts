import type { ScanTriangles } from '../../../core/scan/scan-code.ts';
import { radiansFromDegrees } from '../../../core/units/angle.ts';
import type { RawMesh } from './scanned-mesh.ts';

/** Metres in a unit; feet and inches are exact by the international agreement of 1959. */
export const metresPerUnit = { m: 1, cm: 0.01, mm: 0.001, ft: 0.3048, in: 0.0254 } as const;
export type ScanUnit = keyof typeof metresPerUnit;

/** Which way of the file's axes is up. */
export type UpAxis = 'x' | 'y' | 'z' | '-x' | '-y' | '-z';

/** How a scan is put into the world. */
export interface Placing {
  readonly unit: ScanUnit;
  readonly upAxis: UpAxis;
  /** About the vertical, clockwise seen from above. */
  readonly turnDegrees: number;
  /** Its size over that in the file, where a measured length says otherwise; 1 when left out. */
  readonly scale?: number;
}

type Row = readonly [number, number, number];

/** Rows of the turn that brings the file's axes to x, y up, z; each is a proper turn, so nothing is mirrored. */
const uprightFromFile: Readonly<Record<UpAxis, readonly [Row, Row, Row]>> = {
  y: [[1, 0, 0], [0, 1, 0], [0, 0, 1]], // biome-ignore format: rows of a matrix
  '-y': [[1, 0, 0], [0, -1, 0], [0, 0, -1]], // biome-ignore format: rows of a matrix
  z: [[1, 0, 0], [0, 0, 1], [0, -1, 0]], // biome-ignore format: rows of a matrix
  '-z': [[1, 0, 0], [0, 0, -1], [0, 1, 0]], // biome-ignore format: rows of a matrix
  x: [[0, -1, 0], [1, 0, 0], [0, 0, 1]], // biome-ignore format: rows of a matrix
  '-x': [[0, 1, 0], [-1, 0, 0], [0, 0, 1]], // biome-ignore format: rows of a matrix
};

/**
 * Matrix from the file's axes and units to the world's (x east, y up, z south, metres), without the move to the ground:
 * nine numbers, row by row.
 */
export const worldFromFile = ({ unit, upAxis, turnDegrees, scale = 1 }: Placing): number[] => {
  const [x, y, z] = uprightFromFile[upAxis];
  const turn = radiansFromDegrees(turnDegrees);
  const [cos, sin, size] = [Math.cos(turn), Math.sin(turn), metresPerUnit[unit] * scale];
  const combine = (a: number, b: number) => x.map((value, k) => (a * value + b * (z[k] as number)) * size);
  return [...combine(cos, -sin), ...y.map((value) => value * size), ...combine(sin, cos)];
};

/**
 * Puts a mesh into the world: in metres, upright, turned, standing on the ground with the middle of its box over the
 * origin.
 */
export const placeScan = ({ positions, indices, colours }: RawMesh, placing: Placing): ScanTriangles => {
  const m = worldFromFile(placing);
  const [a, b, c, d, e, f, g, h, i] = m as [number, number, number, number, number, number, number, number, number];
  const placed = new Float64Array(positions.length);
  const [low, high] = [new Float64Array(3).fill(Infinity), new Float64Array(3).fill(-Infinity)];
  for (let p = 0; p < positions.length; p += 3) {
    const [u, v, w] = [positions[p] as number, positions[p + 1] as number, positions[p + 2] as number];
    placed[p] = a * u + b * v + c * w;
    placed[p + 1] = d * u + e * v + f * w;
    placed[p + 2] = g * u + h * v + i * w;
    for (let k = 0; k < 3; k++) {
      low[k] = Math.min(low[k] as number, placed[p + k] as number);
      high[k] = Math.max(high[k] as number, placed[p + k] as number);
    }
  }
  const [lowX, lowY, lowZ] = low as unknown as [number, number, number];
  const origin = [(lowX + (high[0] as number)) / 2, lowY, (lowZ + (high[2] as number)) / 2] as const;
  for (let p = 0; p < placed.length; p++) placed[p] = (placed[p] as number) - (origin[p % 3] as number);
  return { positions: placed, indices, colours };
};

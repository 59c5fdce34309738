import { type Skin, SkinBuilder } from '../skin.ts';
import type { Vec3 } from '../vec.ts';

/** Where a block is divided along x, y and z, from its one side to its other. */
export type BlockLines = readonly [x: readonly number[], y: readonly number[], z: readonly number[]];

/**
 * The six faces of a block divided along lines, each corner moved to where it belongs. Corners on the block's edges are
 * shared by its faces.
 */
export const latticeSkin = (lines: BlockLines, surface: (p: Vec3) => Vec3): Skin => {
  const builder = new SkinBuilder();
  const [nx, ny, nz] = lines.map((line) => line.length - 1) as [number, number, number];
  const known = new Map<number, number>();
  const corner = (i: number, j: number, k: number): number => {
    const key = (i * (ny + 1) + j) * (nz + 1) + k;
    const before = known.get(key);
    if (before !== undefined) return before;
    const made = builder.corner(surface([lines[0][i] as number, lines[1][j] as number, lines[2][k] as number]));
    known.set(key, made);
    return made;
  };
  for (let i = 0; i < nx; i++)
    for (let j = 0; j < ny; j++) {
      builder.quad(corner(i, j, nz), corner(i + 1, j, nz), corner(i + 1, j + 1, nz), corner(i, j + 1, nz));
      builder.quad(corner(i, j, 0), corner(i, j + 1, 0), corner(i + 1, j + 1, 0), corner(i + 1, j, 0));
    }
  for (let i = 0; i < nx; i++)
    for (let k = 0; k < nz; k++) {
      builder.quad(corner(i, ny, k), corner(i, ny, k + 1), corner(i + 1, ny, k + 1), corner(i + 1, ny, k));
      builder.quad(corner(i, 0, k), corner(i + 1, 0, k), corner(i + 1, 0, k + 1), corner(i, 0, k + 1));
    }
  for (let j = 0; j < ny; j++)
    for (let k = 0; k < nz; k++) {
      builder.quad(corner(nx, j, k), corner(nx, j + 1, k), corner(nx, j + 1, k + 1), corner(nx, j, k + 1));
      builder.quad(corner(0, j, k), corner(0, j, k + 1), corner(0, j + 1, k + 1), corner(0, j + 1, k));
    }
  return builder.build();
};

const quarter = Math.PI / 4;

/**
 * Lines across a side whose ends are round: even over its flat, and at even angles over its round ends.
 *
 * @param half half the length of the side, metres
 * @param radius of the round ends, 0 to `half`
 * @param divisions how many pieces; at least 6 where there is a flat between round ends
 */
export const roundedLines = (half: number, radius: number, divisions: number): number[] => {
  const flat = half - radius;
  if (flat <= half * 1e-9)
    return Array.from({ length: divisions + 1 }, (_, i) => half * Math.tan(((2 * i) / divisions - 1) * quarter));
  const arc = radius * quarter;
  const ends =
    radius > 0
      ? Math.min(Math.max(Math.round((divisions * arc) / (2 * (flat + arc))), 2), Math.floor((divisions - 1) / 2))
      : 0;
  const end = Array.from({ length: ends }, (_, i) => flat + radius * Math.tan(((i + 1) / ends) * quarter));
  const middles = divisions - 2 * ends;
  const middle = Array.from({ length: middles + 1 }, (_, i) => flat * ((2 * i) / middles - 1));
  return [...end.map((v) => -v).reverse(), ...middle, ...end];
};

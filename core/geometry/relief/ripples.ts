import type { Mesh } from '../mesh.ts';
import { type ChordLine, type Column, chordLines, zipColumns } from './columns.ts';
import { naturalOutline } from './outline.ts';
import { divideRipples } from './reach.ts';
import { naturalRipples, type RipplePattern } from './ripple-phase.ts';
import { rippleSection, sectionKnots } from './ripple-section.ts';
import { leastAcross, type SheetShape, sheetLiftMetres, smoothstep } from './sheet.ts';
import { smoothMesh } from './smooth-mesh.ts';

/** Least that the phase grows along a line, against an even ripple: forks would turn it back. */
const leastGrowth = 0.05;

/** One line of corners: at troughs, crests and between, each at the same place of its ripple. */
const columnAt = (
  { v, half, margin }: ChordLine,
  spacing: number,
  knots: readonly number[],
  pattern: RipplePattern,
): Column => {
  const steps = Math.max(Math.ceil((6 * half) / spacing), 1);
  const step = (2 * half) / steps;
  const [u, keys]: [number[], number[]] = [[-half], [pattern.phase(-half, v)]];
  let [behind, phase] = [keys[0] as number, keys[0] as number];
  const inner = half - Math.max(margin, (0.4 * spacing) / knots.length);
  for (let i = 1; i <= steps && half > 0; i++) {
    const at = -half + i * step;
    behind = phase;
    phase = Math.max(pattern.phase(at, v), behind + (leastGrowth * step) / spacing);
    for (let n = Math.floor(behind); n <= phase; n++)
      for (const knot of knots) {
        const key = n + knot;
        if (key <= behind || key > phase) continue;
        const place = at - (step * (phase - key)) / (phase - behind);
        if (Math.abs(place) > inner) continue;
        u.push(place);
        keys.push(key);
      }
  }
  if (half > 0) {
    u.push(half);
    keys.push(phase);
  }
  return { v, u, keys };
};

/** How a sheet of ripples is laid out: as finely as its triangles allow. */
interface Layout {
  readonly radiusMetres: number;
  readonly columns: readonly Column[];
}

const trianglesOf = (columns: readonly Column[]): number => 2 * columns.reduce((sum, { u }) => sum + u.length - 1, 0);

const layOut = (shape: SheetShape, pattern: RipplePattern | undefined): Layout & { lies: RipplePattern } => {
  const { spacingMetres, seed, maxTriangles } = shape;
  const division = divideRipples(shape);
  const { radiusMetres, corners } = division;
  const knots = sectionKnots(corners);
  // forks add corners that the division does not know of: then the columns stand a little farther apart
  for (let { alongSpacings } = division; ; alongSpacings *= 1.06) {
    const count = Math.max(Math.round((2 * radiusMetres) / (alongSpacings * spacingMetres)), 8);
    const along = (2 * radiusMetres) / count;
    const wander = Math.max(9 * spacingMetres, 4 * along);
    const lies = pattern ?? naturalRipples(spacingMetres, radiusMetres, wander, seed);
    const columns = chordLines(radiusMetres, count, 1).map((line) => columnAt(line, spacingMetres, knots, lies));
    if (count <= 8 || trianglesOf(columns) <= maxTriangles) return { radiusMetres, columns, lies };
  }
};

/**
 * Sand ripples: crests across u, their steep side toward +u. Smooth; at the rim they run out into the ground.
 *
 * @param pattern how they lie; natural ones where left out
 * @returns corners [v, up, -u], metres, about the middle of the sheet
 */
export const ripplesMesh = (given: SheetShape, pattern?: RipplePattern): Mesh => {
  // a sheet holds at least three ripples
  const shape = leastAcross(given, 1.5);
  const { spacingMetres, heightMetres, seed } = shape;
  const { radiusMetres, columns, lies } = layOut(shape, pattern);
  const warp = naturalOutline(radiusMetres, pattern ? 0 : 0.2, 9, seed);
  const runOut = Math.min(Math.max((2.5 * spacingMetres) / radiusMetres, 0.1), 0.6);
  const points: number[] = [];
  for (const { v, u, keys } of columns)
    u.forEach((at, i) => {
      const open = 1 - smoothstep(1 - runOut, 1, Math.hypot(at, v) / radiusMetres);
      const up = heightMetres * lies.strength(at, v) * rippleSection(keys[i] as number);
      const [x, y] = warp(at, v);
      points.push(y, open * (sheetLiftMetres + up), -x);
    });
  const triangles = zipColumns(columns, (left, right) => lies.gained(left.v, right.v));
  return smoothMesh({ points: Float64Array.from(points), triangles });
};

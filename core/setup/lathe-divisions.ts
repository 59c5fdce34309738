import { turnedProfile, turnedStretches } from './part-outlines.ts';
import { cellFor, pieces, piecesRound, type Rough, roughOf } from './rough-pieces.ts';
import type { PartOf } from './schema/setup.ts';

type Place = readonly [number, number];
/** How an uneven turned shape is divided. */
export interface LatheDivisions {
  /** Pieces round the axis. */
  readonly around: number;
  /** Of each turned stretch. */
  readonly pieces: readonly number[];
  readonly cellMetres: number;
  readonly triangles: number;
}

/** Pieces of an uneven turned shape. */
export const latheDivisions = (
  profile: readonly Place[],
  closed: boolean,
  sides: number,
  rough: NonNullable<Rough>,
): LatheDivisions => {
  const stretches = turnedStretches(profile, closed);
  const most = Math.max(...profile.map(([out]) => out));
  const at = (cellMetres: number): LatheDivisions => {
    const around = piecesRound(most, sides, cellMetres);
    const each = stretches.map(([a, b]) => pieces(Math.hypot(b[0] - a[0], b[1] - a[1]), cellMetres));
    // where a stretch meets the axis its last pieces are triangles
    const rows = stretches.reduce(
      (sum, [a, b], i) => sum + 2 * (each[i] as number) - (a[0] > 0 && b[0] > 0 ? 0 : 1),
      0,
    );
    return { around, pieces: each, cellMetres, triangles: around * rows };
  };
  return at(cellFor(rough, (cell) => at(cell).triangles));
};

/** Profile of a cylinder or a cone, lids included. */
export const postProfile = (radius: number, topRadius: number, height: number): readonly Place[] => [
  [0, 0],
  [radius, 0],
  [topRadius, height],
  ...(topRadius > 0 ? ([[0, height]] as const) : []),
];

/** Triangles of an even turned shape. */
export const latheTriangles = (profile: readonly Place[], closed: boolean, sides: number): number =>
  sides * turnedStretches(profile, closed).reduce((sum, [a, b]) => sum + (a[0] > 0 && b[0] > 0 ? 2 : 1), 0);

/** Triangles of a turned part, even or uneven. */
export const turnedTriangles = (part: PartOf<'turned'>): number => {
  const profile = turnedProfile(part);
  const rough = roughOf(part);
  return rough
    ? latheDivisions(profile, part.closed, part.sides, rough).triangles
    : latheTriangles(profile, part.closed, part.sides);
};

import { fewestRoundSides } from '../units/round-sides.ts';
import { loftSections, turnedProfile, turnedStretches } from './part-outlines.ts';
import type { PartOf } from './schema/setup.ts';

/** Most triangles that roughness divides a part into. */
const mostRoughTriangles = 20_000;

/** Pieces to a bump: finer ones would not show, coarser ones would miss it. */
const piecesPerBump = 5;

/** Larger than any part, metres. */
const endlessMetres = 1e5;

type Place = readonly [number, number];
type Rough = PartOf<'sphere'>['rough'];

/** What makes a part uneven; null where nothing does. */
export const roughOf = ({ rough }: { readonly rough: Rough }): Rough =>
  rough && rough.heightMetres > 0 ? rough : null;

/** Length of the pieces of an uneven part: a share of its bumps, or longer so that it stays under the limit. */
const cellFor = (rough: NonNullable<Rough>, trianglesAt: (cellMetres: number) => number): number => {
  let cell = rough.sizeMetres / piecesPerBump;
  for (;;) {
    const count = trianglesAt(cell);
    if (count <= mostRoughTriangles || cell > endlessMetres) return cell;
    cell *= Math.max(Math.sqrt(count / mostRoughTriangles), 1.02);
  }
};

const pieces = (lengthMetres: number, cellMetres: number, least = 1): number =>
  Math.max(Math.ceil(lengthMetres / cellMetres), least);

/** An even number, so that one line runs round the middle and a round part's lowest corner is its lowest place. */
const even = (count: number): number => 2 * Math.ceil(count / 2);

/** A round or dimpled box has a line about every 6 cm, from 6 to 64 of them a side. */
const smoothPieces = (lengthMetres: number): number => Math.min(pieces(lengthMetres, 0.06, 6), 64);

/** Triangles of a block whose sides are divided. */
export const blockTriangles = ([w, h, d]: readonly [number, number, number]): number => 4 * (w * d + w * h + d * h);

/** Pieces along width, height and depth of a box. */
export const boxDivisions = (part: PartOf<'box'>): readonly [width: number, height: number, depth: number] => {
  const { widthMetres, heightMetres, depthMetres, roundMetres, dimples } = part;
  const isDimpled = (dimples?.count ?? 0) > 0;
  const rough = roughOf(part);
  const each = (per: (lengthMetres: number) => number) =>
    [per(widthMetres), per(heightMetres), per(depthMetres)] as const;
  if (!rough) return roundMetres > 0 || isDimpled ? each(smoothPieces) : [1, 1, 1];
  const at = (cell: number) =>
    each((length) => pieces(length, cell, isDimpled ? smoothPieces(length) : roundMetres > 0 ? 6 : 3));
  return at(cellFor(rough, (cell) => blockTriangles(at(cell))));
};

/** Pieces along the sides of the block that an uneven ball is blown up from. */
export const ballDivisions = (part: PartOf<'sphere'>, rough: NonNullable<Rough>): number => {
  const { radiusMetres, radiusNorthMetres, heightMetres, sides } = part;
  const most = Math.max(radiusMetres, radiusNorthMetres ?? 0, (heightMetres ?? 0) / 2);
  const at = (cell: number) => even(pieces((Math.PI / 2) * most, cell, Math.ceil(sides / 4)));
  return at(cellFor(rough, (cell) => 12 * at(cell) ** 2));
};

/** Triangles of an even capsule: two domes and, where it is higher than wide, a shaft between them. */
export const capsuleTriangles = ({ radiusMetres, heightMetres, sides }: PartOf<'capsule'>): number => {
  const domes = 2 * sides * (2 * Math.ceil(sides / 4) - 1);
  return heightMetres - 2 * radiusMetres > 1e-6 ? domes + 2 * sides : domes;
};

/** Pieces across and upward of the block that an uneven capsule is blown up from. */
export const capsuleDivisions = (
  { radiusMetres, heightMetres, sides }: PartOf<'capsule'>,
  rough: NonNullable<Rough>,
): readonly [across: number, up: number] => {
  const at = (cell: number) => {
    const across = even(Math.max(pieces((Math.PI / 2) * radiusMetres, cell, Math.ceil(sides / 4)), 3));
    return [across, across + pieces(heightMetres - 2 * radiusMetres, cell, 3)] as const;
  };
  return at(cellFor(rough, (cell) => blockTriangles([at(cell)[0], at(cell)[1], at(cell)[0]])));
};

/** Pieces across and deep of an uneven sheet. */
export const planeDivisions = (
  { widthMetres, depthMetres }: PartOf<'plane'>,
  rough: NonNullable<Rough>,
): readonly [across: number, deep: number] => {
  const at = (cell: number) => [pieces(widthMetres, cell, 2), pieces(depthMetres, cell, 2)] as const;
  return at(cellFor(rough, (cell) => 2 * at(cell)[0] * at(cell)[1]));
};

/** Pieces round something of a radius: a multiple of the sides where these are flat, for flat faces keep their edges. */
const piecesRound = (radiusMetres: number, sides: number, cellMetres: number): number =>
  sides >= fewestRoundSides
    ? pieces(2 * Math.PI * radiusMetres, cellMetres, sides)
    : sides * pieces(2 * radiusMetres * Math.sin(Math.PI / sides), cellMetres);

export interface LatheDivisions {
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

/** Whether a ring has no ends: a gap too small to see is none. */
export const isWholeRing = ({ arcDegrees }: PartOf<'ring'>): boolean => arcDegrees > 360 - 1e-4;

/** Triangles of a ring's tube, and of its two ends if it has any. */
export const ringTriangles = (part: PartOf<'ring'>, [along, around]: readonly [number, number]): number =>
  2 * around * (isWholeRing(part) ? along : along + 1);

/** Pieces along and round a ring, even or uneven. */
export const ringDivisions = (part: PartOf<'ring'>): readonly [along: number, around: number] => {
  const { radiusMetres, tubeRadiusMetres, topShare, arcDegrees, sides } = part;
  const rough = roughOf(part);
  const share = arcDegrees / 360;
  const coarsest = Math.max(Math.ceil(share * Math.min(Math.max(2 * sides, 32), 77)), 3);
  if (!rough) return [coarsest, sides];
  const at = (cell: number) =>
    [
      pieces(share * 2 * Math.PI * radiusMetres, cell, coarsest),
      piecesRound(tubeRadiusMetres * Math.max(topShare, 1), sides, cell),
    ] as const;
  return at(cellFor(rough, (cell) => ringTriangles(part, at(cell))));
};

export interface LoftDivisions {
  readonly round: readonly number[];
  readonly spans: readonly number[];
  readonly cellMetres: number;
}

const total = (counts: readonly number[]): number => counts.reduce((sum, count) => sum + count, 0);

/** Triangles of a loft's skin and its two lids. */
export const loftTriangles = (round: number, spans: number): number => 2 * round * spans + 2 * (round - 2);

/** Pieces of an uneven loft: of each stretch of the outlines, as the longest one needs, and of each span. */
export const loftDivisions = (part: PartOf<'loft'>, rough: NonNullable<Rough>): LoftDivisions => {
  const sections = loftSections(part);
  const [first] = sections as [(typeof sections)[number]];
  const lengthOf = (a: readonly number[], b: readonly number[]) => Math.hypot(...a.map((v, i) => v - (b[i] as number)));
  const longest = first.outline.map((_, i) =>
    Math.max(
      ...sections.map(({ outline }) => lengthOf(outline[i] as Place, outline[(i + 1) % outline.length] as Place)),
    ),
  );
  const reach = sections.slice(1).map(({ outline, northMetres }, s) => {
    const south = sections[s] as (typeof sections)[number];
    const north = (i: number) => [...(outline[i] as Place), northMetres];
    return Math.max(...south.outline.map((p, i) => lengthOf([...p, south.northMetres], north(i))));
  });
  const at = (cellMetres: number): LoftDivisions => ({
    round: longest.map((length) => pieces(length, cellMetres)),
    spans: reach.map((length) => pieces(length, cellMetres)),
    cellMetres,
  });
  return at(
    cellFor(rough, (cell) => {
      const { round, spans } = at(cell);
      return loftTriangles(total(round), total(spans));
    }),
  );
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

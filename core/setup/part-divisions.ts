import { cellFor, pieces, piecesRound, type Rough, roughOf } from './rough-pieces.ts';
import type { PartOf } from './schema/setup.ts';

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

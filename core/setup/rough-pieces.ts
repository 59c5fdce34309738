import { fewestRoundSides } from '../units/round-sides.ts';
import type { PartOf } from './schema/setup.ts';

/** Most triangles that roughness divides a part into. */
const mostRoughTriangles = 20_000;

/** Pieces to a bump: finer ones would not show, coarser ones would miss it. */
const piecesPerBump = 5;

/** Larger than any part, metres. */
const endlessMetres = 1e5;

/** How uneven a part is, as the document has it. */
export type Rough = PartOf<'sphere'>['rough'];

/** What makes a part uneven; null where nothing does. */
export const roughOf = ({ rough }: { readonly rough: Rough }): Rough =>
  rough && rough.heightMetres > 0 ? rough : null;

/**
 * Length of the pieces of an uneven part, metres: a share of its bumps, or longer so that it stays under the limit.
 *
 * @param trianglesAt how many triangles pieces of a length make
 */
export const cellFor = (rough: NonNullable<Rough>, trianglesAt: (cellMetres: number) => number): number => {
  let cell = rough.sizeMetres / piecesPerBump;
  for (;;) {
    const count = trianglesAt(cell);
    if (count <= mostRoughTriangles || cell > endlessMetres) return cell;
    cell *= Math.max(Math.sqrt(count / mostRoughTriangles), 1.02);
  }
};

/** How many pieces of about `cellMetres` make up a length in metres. */
export const pieces = (lengthMetres: number, cellMetres: number, least = 1): number =>
  Math.max(Math.ceil(lengthMetres / cellMetres), least);

/** Pieces round something of a radius: a multiple of the sides where these are flat, for flat faces keep their edges. */
export const piecesRound = (radiusMetres: number, sides: number, cellMetres: number): number =>
  sides >= fewestRoundSides
    ? pieces(2 * Math.PI * radiusMetres, cellMetres, sides)
    : sides * pieces(2 * radiusMetres * Math.sin(Math.PI / sides), cellMetres);

import { loftSections } from './part-outlines.ts';
import { cellFor, pieces, type Rough } from './rough-pieces.ts';
import type { PartOf } from './schema/setup.ts';

type Place = readonly [number, number];
/** How an uneven loft is divided. */
export interface LoftDivisions {
  /** Pieces of each stretch of the outlines. */
  readonly round: readonly number[];
  /** Pieces from each section to the next. */
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

import type { Relief } from './schema/setup.ts';

/** Most triangles of a sheet of relief. */
export const maxSheetTriangles = 30_000;

/** Triangles of a strewn thing, large and small: an angular stone, a tuft of ten blades, a pebble, a piece of gravel. */
const strewnTriangles = { stones: [20, 20], tufts: [30, 30], pebbles: [60, 24], gravel: [20, 6] } as const;

/** The largest pebbles and pieces of gravel, one in so many, are drawn more richly than the rest. */
export const largeEvery = 8;

/** Triangles that a relief becomes; of a sheet, the most. `tests/core/setup/relief-detail.test.ts` holds it to the meshes. */
export const trianglesOfRelief = (relief: Relief): number => {
  if (!('count' in relief)) return maxSheetTriangles;
  const [ofLarge, ofSmall] = strewnTriangles[relief.kind];
  const large = Math.floor(relief.count / largeEvery);
  return large * ofLarge + (relief.count - large) * ofSmall;
};

/** How many things cover a circle at so many a square metre: a whole number, within what the document takes. */
export const countForDensity = (perSquareMetre: number, radiusMetres: number): number =>
  Math.min(Math.max(Math.round(perSquareMetre * Math.PI * radiusMetres ** 2), 0), 20_000);

/** How many a square metre so many things on a circle are. */
export const densityOfCount = (count: number, radiusMetres: number): number => count / (Math.PI * radiusMetres ** 2);

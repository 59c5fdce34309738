import type { Relief } from './schema/setup.ts';

/** Most triangles of a sheet of relief. */
export const maxSheetTriangles = 30_000;

/** Triangles of a strewn thing: an angular stone, a tuft of ten blades, a pebble. */
const strewnTriangles = { stones: 20, tufts: 30, pebbles: 24 } as const;

/** The largest pebbles, one in so many, are drawn rounder than the rest. */
export const largePebbleEvery = 8;
const largePebbleTriangles = 60;

/** Triangles that a relief becomes; of a sheet, the most. `tests/core/setup/relief-detail.test.ts` holds it to the meshes. */
export const trianglesOfRelief = (relief: Relief): number => {
  if (!('count' in relief)) return maxSheetTriangles;
  const large = relief.kind === 'pebbles' ? Math.floor(relief.count / largePebbleEvery) : 0;
  return large * largePebbleTriangles + (relief.count - large) * strewnTriangles[relief.kind];
};

/** How many things cover a circle at so many a square metre: a whole number, within what the document takes. */
export const countForDensity = (perSquareMetre: number, radiusMetres: number): number =>
  Math.min(Math.max(Math.round(perSquareMetre * Math.PI * radiusMetres ** 2), 0), 20_000);

/** How many a square metre so many things on a circle are. */
export const densityOfCount = (count: number, radiusMetres: number): number => count / (Math.PI * radiusMetres ** 2);

import { latticeValue } from './plane-noise.ts';

type Point = readonly [u: number, v: number];

/** A place and whose it is. */
export interface Site {
  readonly u: number;
  readonly v: number;
  /** Numbers of its lattice cell. */
  readonly i: number;
  readonly j: number;
}

/** One scattered site in every cell of a square lattice: nowhere crowded, nowhere in rows. */
export const siteOf = (i: number, j: number, spacing: number, seed: number): Site => ({
  i,
  j,
  u: (i + 0.5 + 0.78 * (latticeValue(i, j, seed) - 0.5)) * spacing,
  v: (j + 0.5 + 0.78 * (latticeValue(i, j, seed ^ 0x2545f491) - 0.5)) * spacing,
});

/** Cells round a cell, the nearest first: later ones seldom cut. */
const neighbours = [-2, -1, 0, 1, 2]
  .flatMap((di) => [-2, -1, 0, 1, 2].map((dj) => [di, dj] as const))
  .filter(([di, dj]) => di !== 0 || dj !== 0)
  .sort(([a, b], [c, d]) => a * a + b * b - c * c - d * d);

/** The part of a convex polygon on the near side of a line: where `n · p <= limit`. */
const cut = (polygon: readonly Point[], nu: number, nv: number, limit: number): Point[] => {
  const kept: Point[] = [];
  polygon.forEach((a, k) => {
    const b = polygon[(k + 1) % polygon.length] as Point;
    const [da, db] = [a[0] * nu + a[1] * nv - limit, b[0] * nu + b[1] * nv - limit];
    if (da <= 0) kept.push(a);
    if (da < 0 !== db < 0 && da !== db) {
      const t = da / (da - db);
      if (t > 0 && t < 1) kept.push([a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1])]);
    }
  });
  return kept;
};

/**
 * The plate round a site: all that lies nearer to it than to any other, less half a gap on every side. Convex, corners
 * counter-clockwise with u to the right and v up; empty where the gaps leave nothing.
 *
 * @param gap width of the gap toward another site, metres; the same seen from both, never over `widestGap`
 */
export const plateOf = (
  site: Site,
  spacing: number,
  seed: number,
  gap: (a: Site, b: Site) => number,
  widestGap: number,
): readonly Point[] => {
  const r = 2 * spacing;
  let polygon: Point[] = [
    [site.u - r, site.v - r],
    [site.u + r, site.v - r],
    [site.u + r, site.v + r],
    [site.u - r, site.v + r],
  ];
  for (const [di, dj] of neighbours) {
    const other = siteOf(site.i + di, site.j + dj, spacing, seed);
    const [du, dv] = [other.u - site.u, other.v - site.v];
    const apart = Math.sqrt(du * du + dv * dv);
    const [nu, nv] = [du / apart, dv / apart];
    const middle = ((site.u + other.u) / 2) * nu + ((site.v + other.v) / 2) * nv;
    let farthest = Number.NEGATIVE_INFINITY;
    for (const [u, v] of polygon) farthest = Math.max(farthest, u * nu + v * nv);
    if (farthest > middle - widestGap / 2) polygon = cut(polygon, nu, nv, middle - gap(site, other) / 2);
  }
  return polygon;
};

/** A place on the ground as [east, north] in metres. */
export type GroundPoint = readonly [east: number, north: number];

const turns = (o: GroundPoint, a: GroundPoint, b: GroundPoint) =>
  (a[0] - o[0]) * (b[1] - o[1]) - (a[1] - o[1]) * (b[0] - o[0]);

/** Convex hull, counter-clockwise seen from above, without repeats (Andrew's monotone chain). */
export const convexHull = (points: readonly GroundPoint[]): GroundPoint[] => {
  const sorted = [...points].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  if (sorted.length < 3) return sorted;
  const chain = (run: readonly GroundPoint[]) => {
    const hull: GroundPoint[] = [];
    for (const p of run) {
      while (hull.length > 1 && turns(hull.at(-2) as GroundPoint, hull.at(-1) as GroundPoint, p) <= 0) hull.pop();
      hull.push(p);
    }
    hull.pop();
    return hull;
  };
  return [...chain(sorted), ...chain(sorted.reverse())];
};

/** Ways in which the outermost places are looked for; sixteen leave few places to sort. */
const ways = Array.from({ length: 16 }, (_, k) => [Math.cos((Math.PI * k) / 8), Math.sin((Math.PI * k) / 8)] as const);

/** Those places that lie outermost in each of the ways. */
const outermost = (places: Float64Array): GroundPoint[] =>
  ways.map(([c, s]) => {
    let best = 0;
    let most = Number.NEGATIVE_INFINITY;
    for (let i = 0; i < places.length; i += 2) {
      const out = c * (places[i] as number) + s * (places[i + 1] as number);
      if (out <= most) continue;
      most = out;
      best = i;
    }
    return [places[best] as number, places[best + 1] as number];
  });

/**
 * The same as `convexHull` for a great many places, two numbers each. Places inside the figure of the outermost ones are
 * left out before the rest is sorted (Akl and Toussaint 1978): of a scan, nearly all.
 */
export const convexHullOfMany = (places: Float64Array): GroundPoint[] => {
  if (places.length === 0) return [];
  const inner = convexHull(outermost(places));
  // where each edge begins and the way along it, four numbers each
  const edges = Float64Array.from(
    inner.flatMap(([east, north], i) => {
      const [nextEast, nextNorth] = inner[(i + 1) % inner.length] as GroundPoint;
      return [east, north, nextEast - east, nextNorth - north];
    }),
  );
  const isWithin = (east: number, north: number): boolean => {
    for (let k = 0; k < edges.length; k += 4) {
      const [fromEast, fromNorth] = [east - (edges[k] as number), north - (edges[k + 1] as number)];
      if ((edges[k + 2] as number) * fromNorth - (edges[k + 3] as number) * fromEast <= 0) return false;
    }
    return inner.length > 2;
  };
  const kept: GroundPoint[] = [];
  for (let i = 0; i < places.length; i += 2) {
    const [east, north] = [places[i] as number, places[i + 1] as number];
    if (!isWithin(east, north)) kept.push([east, north]);
  }
  return convexHull(kept);
};

/** Whether a point lies inside or on a convex hull given counter-clockwise. */
export const isInsideHull = (hull: readonly GroundPoint[], p: GroundPoint): boolean =>
  hull.length > 2 && hull.every((a, i) => turns(a, hull[(i + 1) % hull.length] as GroundPoint, p) >= 0);

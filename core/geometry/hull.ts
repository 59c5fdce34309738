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

/** Whether a point lies inside or on a convex hull given counter-clockwise. */
export const isInsideHull = (hull: readonly GroundPoint[], p: GroundPoint): boolean =>
  hull.length > 2 && hull.every((a, i) => turns(a, hull[(i + 1) % hull.length] as GroundPoint, p) >= 0);

import { convexHull, type GroundPoint } from '../geometry/hull.ts';

/** A convex figure on the level. */
export interface Convex {
  /** Counter-clockwise seen from above. */
  readonly corners: readonly GroundPoint[];
  /** Three numbers an edge: the unit normal [east, north] to its inside, and what the edge itself has along that. */
  readonly edges: Float64Array;
  /** Least east and north, most east and north. */
  readonly box: readonly [number, number, number, number];
}

/** What lies less than this inside a figure counts as on its edge, metres: far over rounding, far under a step. */
const slackMetres = 1e-7;

/** @param corners of a convex figure, counter-clockwise; one without area has no inside */
export const convexOf = (corners: readonly GroundPoint[]): Convex => {
  const edges = Float64Array.from(
    corners.flatMap(([east, north], i) => {
      const [nextEast, nextNorth] = corners[(i + 1) % corners.length] as GroundPoint;
      const length = Math.hypot(nextEast - east, nextNorth - north) || 1;
      const [inEast, inNorth] = [(north - nextNorth) / length, (nextEast - east) / length];
      return [inEast, inNorth, inEast * east + inNorth * north];
    }),
  );
  const [easts, norths] = [corners.map(([east]) => east), corners.map(([, north]) => north)];
  return { corners, edges, box: [Math.min(...easts), Math.min(...norths), Math.max(...easts), Math.max(...norths)] };
};

/** Corners of the ring that stands for a circle round a walker. */
const ringCorners = 12;
/** A ring round the circle, not in it: what is grown by it keeps the whole radius clear. */
const ring = Array.from({ length: ringCorners }, (_, k): GroundPoint => {
  const [turn, out] = [(2 * Math.PI * (k + 0.5)) / ringCorners, 1 / Math.cos(Math.PI / ringCorners)];
  return [out * Math.cos(turn), out * Math.sin(turn)];
});

/** A hull grown all round by a distance, at most 3.6 % more at its corners. */
export const grown = (hull: readonly GroundPoint[], metres: number): Convex =>
  convexOf(
    convexHull(
      metres > 0
        ? hull.flatMap(([east, north]) => ring.map(([e, n]): GroundPoint => [east + e * metres, north + n * metres]))
        : hull,
    ),
  );

/** Whether a point lies inside, not on the edge. */
export const holds = ({ edges, box }: Convex, [east, north]: GroundPoint): boolean => {
  if (east <= box[0] || north <= box[1] || east >= box[2] || north >= box[3]) return false;
  for (let k = 0; k < edges.length; k += 3)
    if ((edges[k] as number) * east + (edges[k + 1] as number) * north - (edges[k + 2] as number) <= slackMetres)
      return false;
  return edges.length > 6;
};

/** Whether a straight way leads through the inside; along the edge it may go (Cyrus and Beck 1978, from memory). */
export const crosses = ({ edges, box }: Convex, [ax, ay]: GroundPoint, [bx, by]: GroundPoint): boolean => {
  if ((ax <= box[0] && bx <= box[0]) || (ax >= box[2] && bx >= box[2])) return false;
  if ((ay <= box[1] && by <= box[1]) || (ay >= box[3] && by >= box[3])) return false;
  if (edges.length <= 6) return false;
  let enters = 0;
  let leaves = 1;
  for (let k = 0; k < edges.length; k += 3) {
    const inEast = edges[k] as number;
    const inNorth = edges[k + 1] as number;
    const edge = (edges[k + 2] as number) + slackMetres;
    const a = inEast * ax + inNorth * ay - edge;
    const b = inEast * bx + inNorth * by - edge;
    if (a <= 0 && b <= 0) return false;
    if (a <= 0) enters = Math.max(enters, a / (a - b));
    else if (b <= 0) leaves = Math.min(leaves, a / (a - b));
    if (enters >= leaves) return false;
  }
  return true;
};

/** Whether two figures share any inside (the axes of their edges part them or nothing does). */
export const overlap = (a: Convex, b: Convex): boolean => {
  if (a.box[0] >= b.box[2] || b.box[0] >= a.box[2] || a.box[1] >= b.box[3] || b.box[1] >= a.box[3]) return false;
  const isParted = ({ edges }: Convex, { corners }: Convex): boolean => {
    for (let k = 0; k < edges.length; k += 3) {
      const [inEast, inNorth, edge] = [edges[k] as number, edges[k + 1] as number, edges[k + 2] as number];
      if (corners.every(([east, north]) => inEast * east + inNorth * north - edge <= slackMetres)) return true;
    }
    return false;
  };
  return !isParted(a, b) && !isParted(b, a);
};

/** Distance from a point outside to a hull's edge, metres; of a single point or a line too. */
export const distanceToHull = (hull: readonly GroundPoint[], [east, north]: GroundPoint): number =>
  Math.min(
    ...hull.map(([fromEast, fromNorth], i) => {
      const [toEast, toNorth] = hull[(i + 1) % hull.length] as GroundPoint;
      const [alongEast, alongNorth] = [toEast - fromEast, toNorth - fromNorth];
      const square = alongEast ** 2 + alongNorth ** 2 || 1;
      const share = ((east - fromEast) * alongEast + (north - fromNorth) * alongNorth) / square;
      const t = Math.min(Math.max(share, 0), 1);
      return Math.hypot(east - fromEast - t * alongEast, north - fromNorth - t * alongNorth);
    }),
  );

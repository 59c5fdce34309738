type Point2 = readonly [u: number, v: number];

const cross = (a: Point2, b: Point2, c: Point2): number =>
  (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);

const dot = (at: Point2, b: Point2, c: Point2): number =>
  (b[0] - at[0]) * (c[0] - at[0]) + (b[1] - at[1]) * (c[1] - at[1]);

/**
 * Whether the two corners across an edge see it under more than half a turn together, so that the other diagonal makes
 * better triangles: the sine of the sum is negative.
 */
const isBadEdge = (from: Point2, to: Point2, left: Point2, right: Point2): boolean => {
  const [sinLeft, cosLeft] = [cross(left, from, to), dot(left, from, to)];
  const [sinRight, cosRight] = [cross(right, to, from), dot(right, to, from)];
  const scale = Math.hypot(sinLeft, cosLeft) * Math.hypot(sinRight, cosRight);
  return sinLeft * cosRight + cosLeft * sinRight < -1e-9 * scale;
};

/** The next edge round the same triangle; edge e runs from corner e to corner `next(e)`. */
const next = (edge: number): number => (edge % 3 === 2 ? edge - 2 : edge + 1);

/** For each edge the one that runs the other way, or -1 on the rim. */
const twinsOf = (corners: readonly number[], pointCount: number): Int32Array => {
  const twins = new Int32Array(corners.length).fill(-1);
  const open = new Map<number, number>();
  for (let edge = 0; edge < corners.length; edge++) {
    const [from, to] = [corners[edge] as number, corners[next(edge)] as number];
    const twin = open.get(to * pointCount + from);
    if (twin === undefined) open.set(from * pointCount + to, edge);
    else {
      twins[edge] = twin;
      twins[twin] = edge;
      open.delete(to * pointCount + from);
    }
  }
  return twins;
};

/** Most rounds of flips; each round looks at every edge once. */
const mostRounds = 24;

/**
 * Flips diagonals until every pair of neighbours is as well shaped as it can be (Lawson 1977), which shortens slivers:
 * rays cost more through them. Edges that only one triangle has are never flipped, so the rim stays.
 *
 * @param triangles three point numbers a triangle, counter-clockwise; each edge at most once in each direction
 */
export const improveTriangles = (points: readonly Point2[], triangles: readonly number[]): number[] => {
  const corners = [...triangles];
  const twins = twinsOf(corners, points.length);
  const corner = (edge: number) => corners[edge] as number;
  const point = (edge: number) => points[corner(edge)] as Point2;
  /** @param b -1 on the rim */
  const pair = (a: number, b: number) => {
    twins[a] = b;
    if (b >= 0) twins[b] = a;
  };
  const flip = (edge: number): boolean => {
    const twin = twins[edge] as number;
    if (twin < 0) return false;
    // the two triangles: from, to, left and to, from, right
    const [toLeft, leftFrom] = [next(edge), next(next(edge))];
    const [fromRight, rightTo] = [next(twin), next(next(twin))];
    const [from, to, left, right] = [point(edge), point(twin), point(leftFrom), point(rightTo)];
    if (!isBadEdge(from, to, left, right)) return false;
    // the four corners must make a convex figure, else the new triangles would overlap
    if (cross(left, from, right) <= 0 || cross(right, to, left) <= 0) return false;
    // they become from, right, left and to, left, right
    const [outerLeft, outerRight] = [twins[toLeft] as number, twins[fromRight] as number];
    corners[toLeft] = corner(rightTo);
    corners[fromRight] = corner(leftFrom);
    pair(edge, outerRight);
    pair(twin, outerLeft);
    pair(toLeft, fromRight);
    return true;
  };
  for (let round = 0; round < mostRounds; round++) {
    let flips = 0;
    for (let edge = 0; edge < corners.length; edge++) if (flip(edge)) flips++;
    if (flips === 0) break;
  }
  return corners;
};

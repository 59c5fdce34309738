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

/** Most rounds of flips; each round looks at every edge once. */
const mostRounds = 24;

/**
 * Flips diagonals until every pair of neighbours is as well shaped as it can be (Lawson 1977), which shortens slivers:
 * rays cost more through them. Edges that only one triangle has are never flipped, so the rim stays.
 *
 * @param triangles three point numbers a triangle, counter-clockwise; each edge at most once in each direction
 */
export const improveTriangles = (points: readonly Point2[], triangles: readonly number[]): number[] => {
  const out = [...triangles];
  const count = points.length;
  const at = (i: number) => points[i] as Point2;
  /** Directed edge -> place in `out` of its first corner. */
  const edges = new Map<number, number>();
  const cornerAt = (place: number, step: number) => out[place - (place % 3) + (((place % 3) + step) % 3)] as number;
  const note = (triangle: number) => {
    for (let k = 0; k < 3; k++)
      edges.set(cornerAt(3 * triangle + k, 0) * count + cornerAt(3 * triangle + k, 1), 3 * triangle + k);
  };
  const forget = (triangle: number) => {
    for (let k = 0; k < 3; k++) edges.delete(cornerAt(3 * triangle + k, 0) * count + cornerAt(3 * triangle + k, 1));
  };
  for (let t = 0; t < out.length / 3; t++) note(t);
  const flip = (place: number): boolean => {
    const [from, to, left] = [cornerAt(place, 0), cornerAt(place, 1), cornerAt(place, 2)];
    const twin = edges.get(to * count + from);
    if (twin === undefined) return false;
    const right = cornerAt(twin, 2);
    if (left === right || edges.has(left * count + right) || edges.has(right * count + left)) return false;
    if (!isBadEdge(at(from), at(to), at(left), at(right))) return false;
    // the four corners must make a convex figure, else the new triangles would overlap
    if (cross(at(left), at(from), at(right)) <= 0 || cross(at(right), at(to), at(left)) <= 0) return false;
    const [one, two] = [Math.floor(place / 3), Math.floor(twin / 3)];
    forget(one);
    forget(two);
    out.splice(3 * one, 3, left, from, right);
    out.splice(3 * two, 3, right, to, left);
    note(one);
    note(two);
    return true;
  };
  for (let round = 0; round < mostRounds; round++) {
    let flips = 0;
    for (let place = 0; place < out.length; place++) if (flip(place)) flips++;
    if (flips === 0) break;
  }
  return out;
};

/** How far an edge is looked for in the table; where thousands share one edge, most of them count as open. */
const mostSteps = 64;

/** For each corner, the corner that runs the edge to the next one the other way round; -1 = the edge is open. */
const oppositeCorners = (indices: Uint32Array): Int32Array => {
  const size = 2 ** Math.ceil(Math.log2(Math.max(2 * indices.length, 2)));
  const table = new Int32Array(size).fill(-1);
  const opposite = new Int32Array(indices.length).fill(-1);
  const from = (corner: number) => indices[corner] as number;
  const to = (corner: number) => from(corner % 3 === 2 ? corner - 2 : corner + 1);
  const slotOf = (a: number, b: number) => (Math.imul(a, 73856093) ^ Math.imul(b, 19349663)) & (size - 1);
  for (let corner = 0; corner < indices.length; corner++) {
    const a = from(corner);
    const b = to(corner);
    const back = slotOf(b, a);
    for (let step = 0; step < mostSteps; step++) {
      const other = table[(back + step) & (size - 1)] as number;
      if (other < 0) break;
      if (opposite[other] === -1 && from(other) === b && to(other) === a) {
        opposite[other] = corner;
        opposite[corner] = other;
        break;
      }
    }
    if (opposite[corner] !== -1) continue;
    const forth = slotOf(a, b);
    for (let step = 0; step < mostSteps; step++) {
      const slot = (forth + step) & (size - 1);
      if ((table[slot] as number) >= 0) continue;
      table[slot] = corner;
      break;
    }
  }
  return opposite;
};

/** Corners of triangles in a new order: three numbers a triangle, each the index of a corner in `indices`. */
export type CornerOrder = Uint32Array;

/**
 * Puts triangles in an order in which each shares an edge with the one before where it can, entered edge first, so that
 * their numbers repeat and pack well. Corners keep their sense of turning.
 *
 * @param indices three vertices a triangle
 */
export const walkTriangles = (indices: Uint32Array): CornerOrder => {
  const opposite = oppositeCorners(indices);
  const order = new Uint32Array(indices.length);
  const seen = new Uint8Array(indices.length / 3);
  const open: number[] = [];
  let at = 0;
  const enter = (corner: number) => {
    const next = opposite[corner] as number;
    if (next >= 0 && !seen[Math.floor(next / 3)]) open.push(next);
  };
  for (let start = 0; start < indices.length; start += 3) {
    open.push(start);
    for (let corner = open.pop(); corner !== undefined; corner = open.pop()) {
      const triangle = Math.floor(corner / 3);
      if (seen[triangle]) continue;
      seen[triangle] = 1;
      const first = triangle * 3;
      const second = corner === first + 2 ? first : corner + 1;
      const third = corner === first ? first + 2 : corner - 1;
      order[at++] = corner;
      order[at++] = second;
      order[at++] = third;
      enter(corner);
      enter(third);
      enter(second);
    }
  }
  return order;
};

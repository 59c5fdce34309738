import { improveTriangles } from './flip-edges.ts';

/** A place on a flat drawing, metres. */
export type Point2 = readonly [u: number, v: number];

/** A term this small against its parts is rounding: the three points lie on a line. */
const rounding = 1e-12;

/** Twice the area of a triangle, positive counter-clockwise; exactly 0 where only rounding is left. */
export const turnOf = (a: Point2, b: Point2, c: Point2): number => {
  const [one, two] = [(b[0] - a[0]) * (c[1] - a[1]), (b[1] - a[1]) * (c[0] - a[0])];
  const turn = one - two;
  return Math.abs(turn) <= rounding * (Math.abs(one) + Math.abs(two)) ? 0 : turn;
};

/** Signed area of a closed outline, positive counter-clockwise. */
export const areaOf = (points: readonly Point2[]): number =>
  points.reduce((sum, [u, v], i) => {
    const [nextU, nextV] = points[(i + 1) % points.length] as Point2;
    return sum + u * nextV - v * nextU;
  }, 0) / 2;

/** The outline counter-clockwise, beginning at the same point. */
export const counterClockwise = (points: readonly Point2[]): readonly Point2[] =>
  areaOf(points) >= 0 ? points : [...points.slice(0, 1), ...points.slice(1).reverse()];

/** Whether a closed stretch meets another one anywhere. */
const meets = (a: Point2, b: Point2, c: Point2, d: Point2): boolean => {
  if (
    Math.max(a[0], b[0]) < Math.min(c[0], d[0]) ||
    Math.max(c[0], d[0]) < Math.min(a[0], b[0]) ||
    Math.max(a[1], b[1]) < Math.min(c[1], d[1]) ||
    Math.max(c[1], d[1]) < Math.min(a[1], b[1])
  )
    return false;
  return turnOf(a, b, c) * turnOf(a, b, d) <= 0 && turnOf(c, d, a) * turnOf(c, d, b) <= 0;
};

/** Whether a direction from a corner leads into the region, strictly. */
const leadsInside = (before: Point2, corner: Point2, after: Point2, to: Point2): boolean =>
  turnOf(before, corner, after) > 0
    ? turnOf(before, corner, to) > 0 && turnOf(corner, after, to) > 0
    : turnOf(before, corner, to) > 0 || turnOf(corner, after, to) > 0;

/**
 * Joins holes to the outline by cuts that nothing touches, so that one ring is left. Each hole is joined at its corner
 * farthest along u, the farthest hole first; that corner always sees a corner of what is joined already (D. Eberly,
 * Triangulation by Ear Clipping).
 */
const joinHoles = (points: readonly Point2[], outer: readonly number[], holes: readonly (readonly number[])[]) => {
  let ring = [...outer];
  const at = (i: number) => points[i] as Point2;
  const farthest = (hole: readonly number[]) => hole.reduce((best, i) => (at(i)[0] > at(best)[0] ? i : best));
  const waiting = holes.map((hole) => ({ hole, from: farthest(hole) })).sort((a, b) => at(b.from)[0] - at(a.from)[0]);
  waiting.forEach(({ hole, from }, h) => {
    const m = at(from);
    const edges = [ring, ...waiting.slice(h).map((w) => w.hole)].flatMap((loop) =>
      loop.map((i, k) => [i, loop[(k + 1) % loop.length] as number] as const),
    );
    const isFree = (to: number) =>
      edges.every(([i, j]) => {
        if (i === to || j === to || i === from || j === from) {
          // an edge that begins at an end of the cut may only not run along it
          const other = i === to || i === from ? j : i;
          return other === to || other === from || turnOf(m, at(to), at(other)) !== 0 || !between(m, at(to), at(other));
        }
        return !meets(m, at(to), at(i), at(j));
      });
    const near = ring.map((i, k) => ({ k, far: Math.hypot(at(i)[0] - m[0], at(i)[1] - m[1]) }));
    near.sort((a, b) => a.far - b.far);
    const before = (k: number) => at(ring[(k + ring.length - 1) % ring.length] as number);
    const after = (k: number) => at(ring[(k + 1) % ring.length] as number);
    const found = near.find(
      ({ k }) => leadsInside(before(k), at(ring[k] as number), after(k), m) && isFree(ring[k] as number),
    );
    const { k } = (found ?? near[0]) as (typeof near)[number];
    const start = hole.indexOf(from);
    ring = [...ring.slice(0, k + 1), ...hole.slice(start), ...hole.slice(0, start + 1), ...ring.slice(k)];
  });
  return ring;
};

/** Whether a point of a line lies between two others of it, ends included. */
const between = (a: Point2, b: Point2, p: Point2): boolean =>
  (p[0] - a[0]) * (p[0] - b[0]) + (p[1] - a[1]) * (p[1] - b[1]) <= 0;

/**
 * Cuts ears off a ring until three corners are left. An ear has no other corner in it nor on its rim, so that no
 * triangle's edge passes through a corner; every ring that does not meet itself has one (Meisters 1975).
 */
const clipEars = (points: readonly Point2[], ring: readonly number[]): number[] => {
  const size = ring.length;
  const triangles: number[] = [];
  const after = Int32Array.from(ring, (_, k) => (k + 1) % size);
  const before = Int32Array.from(ring, (_, k) => (k + size - 1) % size);
  const at = (k: number) => points[ring[k] as number] as Point2;
  const turnAt = (k: number): number => turnOf(at(before[k] as number), at(k), at(after[k] as number));
  const turns = Float64Array.from(ring, (_, k) => turnAt(k));
  // only a corner that does not stand out can lie in an ear; cutting makes some stand out and none the contrary
  const inward = ring.map((_, k) => k).filter((k) => (turns[k] as number) <= 0);
  const isEar = (k: number): boolean => {
    if ((turns[k] as number) <= 0) return false;
    const [ka, kc] = [before[k] as number, after[k] as number];
    const [ia, ib, ic] = [ring[ka], ring[k], ring[kc]];
    const [a, b, c] = [at(ka), at(k), at(kc)];
    const [lowU, highU] = [Math.min(a[0], b[0], c[0]), Math.max(a[0], b[0], c[0])];
    const [lowV, highV] = [Math.min(a[1], b[1], c[1]), Math.max(a[1], b[1], c[1])];
    for (const j of inward) {
      const p = at(j);
      if (p[0] < lowU || p[0] > highU || p[1] < lowV || p[1] > highV) continue;
      const i = ring[j];
      if (i === ia || i === ib || i === ic) continue;
      if (turnOf(a, b, p) >= 0 && turnOf(b, c, p) >= 0 && turnOf(c, a, p) >= 0) return false;
    }
    return true;
  };
  const turnAgain = (k: number): void => {
    const wasInward = (turns[k] as number) <= 0;
    turns[k] = turnAt(k);
    if (wasInward && (turns[k] as number) > 0) inward.splice(inward.indexOf(k), 1);
  };
  const outermost = (from: number): number => {
    let best = from;
    for (let k = after[from] as number; k !== from; k = after[k] as number)
      if ((turns[k] as number) > (turns[best] as number)) best = k;
    return best;
  };
  // cuts go round, so that they stay short
  let k = 0;
  let [left, failed] = [size, 0];
  while (left > 3) {
    // an outline that meets itself may have no ear left: the corner that stands out most goes, and the rim stays whole
    const ear = isEar(k) ? k : failed > left ? outermost(k) : -1;
    if (ear < 0) {
      failed++;
      k = after[k] as number;
      continue;
    }
    failed = 0;
    const [west, east] = [before[ear] as number, after[ear] as number];
    triangles.push(ring[west] as number, ring[ear] as number, ring[east] as number);
    after[west] = east;
    before[east] = west;
    if ((turns[ear] as number) <= 0) inward.splice(inward.indexOf(ear), 1);
    left--;
    turnAgain(west);
    turnAgain(east);
    k = after[east] as number;
  }
  triangles.push(...[before[k] as number, k, after[k] as number].map((j) => ring[j] as number));
  return triangles;
};

/**
 * Divides the region inside an outline and outside its holes into triangles whose corners are the points given and no
 * others. No edge passes through a point, also where points lie on a line; well-shaped triangles are preferred.
 *
 * @param outline counter-clockwise, at least three points, meeting neither itself nor a hole
 * @param holes clockwise, inside the outline and apart from each other
 * @returns three point numbers a triangle, counter-clockwise; points are numbered through the outline, then hole by hole.
 * Always n - 2 + 2 h triangles for n points in all and h holes. Outlines that meet themselves give triangles that overlap
 */
export const triangulate = (outline: readonly Point2[], holes: readonly (readonly Point2[])[] = []): number[] => {
  const points = [...outline, ...holes.flat()];
  let next = 0;
  const numbered = (loop: readonly Point2[]) => loop.map(() => next++);
  const outer = numbered(outline);
  const ring = joinHoles(points, outer, holes.map(numbered));
  return improveTriangles(points, clipEars(points, ring));
};

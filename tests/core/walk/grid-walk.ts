import type { GroundPoint } from '../../../core/geometry/hull.ts';

/** Steps in all ways of up to four places either way that have no common divisor: 2 % longer than straight at worst. */
const reach = 4;
const divisor = (a: number, b: number): number => (b === 0 ? a : divisor(b, a % b));
const steps = Array.from({ length: (2 * reach + 1) ** 2 }, (_, k) => [
  (k % (2 * reach + 1)) - reach,
  Math.floor(k / (2 * reach + 1)) - reach,
]).filter(([x, y]) => divisor(Math.abs(x as number), Math.abs(y as number)) === 1) as [number, number][];

/** Whether a point lies inside a convex figure, by the turns of its corners: not the way the walk itself asks. */
const isIn = (corners: readonly GroundPoint[], [x, y]: GroundPoint): boolean =>
  corners.every(([ax, ay], i) => {
    const [bx, by] = corners[(i + 1) % corners.length] as GroundPoint;
    return (bx - ax) * (y - ay) - (by - ay) * (x - ax) > 1e-6;
  });

/**
 * Length of the shortest way over a fine square grid, by plain relaxation (Dijkstra 1959); Infinity without one. Ends must
 * lie on the grid. At most a few percent longer than the true shortest way, and never shorter than one that may cut
 * corners by a step's looks.
 */
export const gridWalk = (
  from: GroundPoint,
  to: GroundPoint,
  obstacles: readonly (readonly GroundPoint[])[],
  half: number,
  spacing: number,
): number => {
  const side = Math.round((2 * half) / spacing) + 1;
  const place = (n: number): GroundPoint => [(n % side) * spacing - half, Math.floor(n / side) * spacing - half];
  const nodeAt = ([x, y]: GroundPoint) => Math.round((y + half) / spacing) * side + Math.round((x + half) / spacing);
  const blocked = (p: GroundPoint) => obstacles.some((corners) => isIn(corners, p));
  const isOpen = Array.from({ length: side * side }, (_, n) => !blocked(place(n)));
  const best = new Float64Array(side * side).fill(Number.POSITIVE_INFINITY);
  best[nodeAt(from)] = 0;
  /** Places by length in centimetres: a bucket queue. */
  const buckets: number[][] = [[nodeAt(from)]];
  for (let b = 0; b < buckets.length; b++)
    for (const n of buckets[b] ?? []) {
      const here = best[n] as number;
      if (Math.floor(here * 100) !== b) continue;
      const [x, y] = place(n);
      for (const [dx, dy] of steps) {
        const [column, row] = [(n % side) + dx, Math.floor(n / side) + dy];
        if (column < 0 || row < 0 || column >= side || row >= side) continue;
        const m = row * side + column;
        const metres = here + spacing * Math.hypot(dx, dy);
        if (!isOpen[m] || metres >= (best[m] as number) - 1e-12) continue;
        const looks = Array.from({ length: 9 }, (_, k) => (k + 1) / 10);
        if (looks.some((t) => blocked([x + dx * spacing * t, y + dy * spacing * t]))) continue;
        best[m] = metres;
        const bucket = Math.floor(metres * 100);
        while (buckets.length <= bucket) buckets.push([]);
        (buckets[bucket] as number[]).push(m);
      }
    }
  return best[nodeAt(to)] as number;
};

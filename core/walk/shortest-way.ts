import type { GroundPoint } from '../geometry/hull.ts';
import { type Convex, crosses, holds, overlap } from './convex.ts';
import { apart, cornersOf, placeOf, touches } from './corners.ts';

/** A way on the level from place to place, straight between its points. */
export interface Way {
  readonly metres: number;
  /** The first is where it starts, the last where it ends. */
  readonly points: readonly GroundPoint[];
}

/** An obstacle among others. */
interface Placed {
  readonly convex: Convex;
  /** Those whose boxes overlap its own. */
  readonly beside: Placed[];
  /** Stands for all that overlap it, and all that overlap these. */
  group: Placed | null;
}

/** Obstacles with what lies beside them. */
const placed = (obstacles: readonly Convex[]): Placed[] => {
  const all = obstacles.map((convex): Placed => ({ convex, beside: [], group: null }));
  const byEast = [...all].sort((a, b) => a.convex.box[0] - b.convex.box[0]);
  byEast.forEach((a, i) => {
    for (let j = i + 1; j < byEast.length; j++) {
      const b = byEast[j] as Placed;
      if (b.convex.box[0] >= a.convex.box[2]) break;
      if (b.convex.box[1] >= a.convex.box[3] || a.convex.box[1] >= b.convex.box[3]) continue;
      a.beside.push(b);
      b.beside.push(a);
    }
  });
  return all;
};

/** The obstacles that overlap one, those that overlap these, and so on. */
const groupRound = (first: Placed): Placed[] => {
  const group = [first];
  first.group = first;
  for (const one of group)
    for (const other of one.beside) {
      if (other.group || !overlap(one.convex, other.convex)) continue;
      other.group = first;
      group.push(other);
    }
  return group;
};

/** Corners of an obstacle that no other covers, each with the one before and the one after. */
const openCorners = ({ convex: { corners }, beside }: Placed) =>
  corners.flatMap((at, i): [GroundPoint, GroundPoint, GroundPoint][] =>
    beside.some(({ convex }) => holds(convex, at))
      ? []
      : [[at, corners.at(i - 1) as GroundPoint, corners[(i + 1) % corners.length] as GroundPoint]],
  );

/** Whether straight ways are free of obstacles. What barred the way before is asked first: it often bars the next. */
const sightAmong = (obstacles: readonly Convex[]): ((from: GroundPoint, to: GroundPoint) => boolean) => {
  let last = obstacles[0];
  return (from, to) => {
    if (!last || crosses(last, from, to)) return !last;
    const bar = obstacles.find((obstacle) => crosses(obstacle, from, to));
    last = bar ?? last;
    return !bar;
  };
};

/** Shortest way among a few obstacles: A* (Hart, Nilsson and Raphael 1968) over the corners in sight of each other. */
const wayAmong = (from: GroundPoint, to: GroundPoint, among: readonly Placed[]): Way | null => {
  const isFree = sightAmong(among.map(({ convex }) => convex));
  const corners = cornersOf([[from, from, from], [to, to, to], ...among.flatMap(openCorners)]);
  const { count } = corners;
  const behind = new Float64Array(count).fill(Number.POSITIVE_INFINITY);
  const ahead = Float64Array.from(behind, (_, n) => apart(corners, n, 1));
  const before = new Int32Array(count).fill(-1);
  const isDone = new Uint8Array(count);
  const whole = (n: number) => (behind[n] as number) + (ahead[n] as number);
  behind[0] = 0;
  const open = [0];
  for (;;) {
    let nearest = 0;
    for (let k = 1; k < open.length; k++) if (whole(open[k] as number) < whole(open[nearest] as number)) nearest = k;
    const here = open[nearest];
    if (here === undefined) return null;
    if (here === 1) break;
    open[nearest] = open[open.length - 1] as number;
    open.pop();
    isDone[here] = 1;
    const place = placeOf(corners, here);
    for (let n = 1; n < count; n++) {
      if (isDone[n]) continue;
      const metres = (behind[here] as number) + apart(corners, here, n);
      if (metres >= (behind[n] as number) || metres + (ahead[n] as number) >= (behind[1] as number)) continue;
      if (!touches(corners, here, n) || !touches(corners, n, here) || !isFree(place, placeOf(corners, n))) continue;
      if (behind[n] === Number.POSITIVE_INFINITY) open.push(n);
      behind[n] = metres;
      before[n] = here;
    }
  }
  const points: GroundPoint[] = [];
  for (let n = 1; n >= 0; n = before[n] as number) points.unshift(placeOf(corners, n));
  return { metres: behind[1] as number, points };
};

/**
 * The shortest way between two places round convex obstacles; exact. Only groups of obstacles that a way has met so far
 * are looked at: a way that is shortest among these and free of all others is shortest among all.
 *
 * @param from [east, north] in metres
 * @param to [east, north] in metres
 * @param obstacles may overlap; their edges may be walked along
 * @returns null when there is no way, as when one of the places lies inside an obstacle
 */
export const shortestWay = (from: GroundPoint, to: GroundPoint, obstacles: readonly Convex[]): Way | null => {
  const all = placed(obstacles);
  const met: Placed[] = [];
  for (;;) {
    const way = wayAmong(from, to, met);
    if (!way) return null;
    const legs = way.points.slice(1).map((point, i) => [way.points[i] as GroundPoint, point] as const);
    const count = met.length;
    for (const one of all)
      if (!one.group && legs.some(([a, b]) => crosses(one.convex, a, b))) met.push(...groupRound(one));
    if (met.length === count) return way;
  }
};

import { between } from './between.ts';

/** A boulder before it is drawn: an upright egg turned about the vertical; metres. */
export interface Egg {
  readonly middle: readonly [east: number, north: number, up: number];
  /** Half its size across, deep and high, before it is turned. */
  readonly radii: readonly [number, number, number];
  readonly turnDegrees: number;
}

/** How high over its middle an egg reaches at a place, or null beside it. */
const reachAt = ({ middle, radii, turnDegrees }: Egg, east: number, north: number): number | null => {
  const turn = (turnDegrees * Math.PI) / 180;
  const [e, n] = [east - middle[0], north - middle[1]];
  // the egg's own axes; a turn is clockwise seen from above
  const across = (e * Math.cos(turn) - n * Math.sin(turn)) / radii[0];
  const deep = (e * Math.sin(turn) + n * Math.cos(turn)) / radii[1];
  const inside = 1 - across * across - deep * deep;
  return inside > 0 ? radii[2] * Math.sqrt(inside) : null;
};

const gridLines = 9;

/** Height at which the middle of an egg comes to rest when it is let down at its place: on others or on the ground. */
export const restingHeight = (egg: Egg, others: readonly Egg[], sinkShare: number): number => {
  const most = Math.max(egg.radii[0], egg.radii[1]);
  const give = sinkShare * egg.radii[2];
  let height = egg.radii[2] - give;
  for (let i = 0; i < gridLines; i++)
    for (let j = 0; j < gridLines; j++) {
      const east = egg.middle[0] + most * ((2 * i) / (gridLines - 1) - 1);
      const north = egg.middle[1] + most * ((2 * j) / (gridLines - 1) - 1);
      const under = reachAt(egg, east, north);
      if (under === null) continue;
      for (const other of others) {
        const over = reachAt(other, east, north);
        if (over !== null) height = Math.max(height, other.middle[2] + over + under - give);
      }
    }
  return height;
};

/** Lets an egg down where it is. */
export const letDown = (egg: Egg, others: readonly Egg[], sinkShare: number): Egg => ({
  ...egg,
  middle: [egg.middle[0], egg.middle[1], restingHeight(egg, others, sinkShare)],
});

/** Lets an egg roll a little to where it lies lower. */
export const settle = (egg: Egg, others: readonly Egg[], sinkShare: number, random: () => number): Egg => {
  const step = 0.25 * Math.min(egg.radii[0], egg.radii[1]);
  let best = egg;
  for (let k = 0; k < 12; k++) {
    const [east, north] = [between(random, -step, step), between(random, -step, step)];
    const there: Egg = { ...best, middle: [best.middle[0] + east, best.middle[1] + north, 0] };
    const next = letDown(there, others, sinkShare);
    if (next.middle[2] < best.middle[2]) best = next;
  }
  return best;
};

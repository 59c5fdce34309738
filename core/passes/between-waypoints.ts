import { mix, type Vec3 } from '../geometry/vec.ts';
import type { Position, Waypoint } from '../setup/schema/setup.ts';
import { pointsSomewhere } from './stretch-path.ts';

/** To the millimetre, and no minus nought. */
const rounded = (v: Vec3): Position => v.map((c) => Math.round(c * 1000) / 1000 + 0) as Position;

const isSame = (a: Waypoint, b: Waypoint): boolean => `${a.position} ${a.aim}` === `${b.position} ${b.aim}`;

/**
 * A waypoint on the leg between two, to the millimetre.
 *
 * @param share of the leg that lies before it, 0 to 1
 * @returns null where it would point nowhere, or part less than a millimetre from either
 */
export const betweenWaypoints = (a: Waypoint, b: Waypoint, share: number): Waypoint | null => {
  const middle: Waypoint = {
    time: a.time + (b.time - a.time) * share,
    position: rounded(mix(a.position, b.position, share)),
    aim: rounded(mix(a.aim, b.aim, share)),
  };
  return pointsSomewhere(middle) && !isSame(middle, a) && !isSame(middle, b) ? middle : null;
};

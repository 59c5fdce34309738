import type { GroundPoint } from '../geometry/hull.ts';
import { footprintsBetween } from '../readings/walk-ground.ts';
import type { Scheme, Setup } from '../setup/schema/setup.ts';
import type { Stage } from '../world/stage.ts';
import { heightOverGround } from './card-stand.ts';

/** What stands at the height of a person where the lamps of a scheme are used: hulls seen from above. */
export const cardSolids = (setup: Setup, { frames }: Scheme, stage: Stage): (readonly GroundPoint[])[] => {
  const positions = frames.flatMap(({ passes }) => passes.flatMap(({ waypoints }) => waypoints.map((w) => w.position)));
  if (positions.length === 0) return [];
  const feet = positions.map((position) => {
    const [east, north, up] = position;
    return [east, up - heightOverGround(stage, position), -north] as const;
  });
  return footprintsBetween(stage, setup, feet).map(({ hull }) => hull);
};

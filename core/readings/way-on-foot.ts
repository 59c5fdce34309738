import type { GroundPoint } from '../geometry/hull.ts';
import type { Vec3 } from '../geometry/vec.ts';
import type { Setup } from '../setup/schema/setup.ts';
import { detourRatio, shortestWalk } from '../walk/walk.ts';
import type { World } from '../world/world.ts';
import { hazardFootprints, hazardsOn } from './hazard-ground.ts';
import { footprintsBetween, onLevel, pictureWedge } from './walk-ground.ts';

/** A way that one walks. */
export interface WayOnFoot {
  /** What one walks, detours included. */
  readonly metres: number;
  readonly seconds: number;
  /** The shortest way, [east, north]. */
  readonly points: readonly GroundPoint[];
  /** Ids of the hazards that it leads through, because it begins or ends in them or no way round them was found. */
  readonly hazardIds: readonly string[];
  /** Those that it goes round, which lie on the shortest way without hazards. */
  readonly roundHazardIds: readonly string[];
}

/** The way on foot between two places where one stands, world metres; null where none leads there. */
export const wayOnFoot = (from: Vec3, to: Vec3, setup: Setup, { stage, view }: World): WayOnFoot | null => {
  const { walking } = setup;
  const ends = [onLevel(from), onLevel(to)] as const;
  const [east, north] = onLevel(view.position);
  // so far that the way round its far end is never the shorter one
  const far = 100 + 4 * ends.reduce((sum, end) => sum + Math.hypot(end[0] - east, end[1] - north), 0);
  const picture = walking.keepsOutOfPicture ? pictureWedge(view, far) : null;
  const things = footprintsBetween(stage, setup, [from, to]);
  const around = [...things, ...hazardFootprints(setup.hazards, ends)];
  // where both can't be had, one walks through the picture rather than through a bog
  const way =
    shortestWalk(...ends, around, picture) ??
    shortestWalk(...ends, around, null) ??
    shortestWalk(...ends, things, picture);
  if (!way) return null;
  const metres = way.metres * detourRatio;
  const hazardIds = hazardsOn(setup.hazards, way.points).map(({ id }) => id);
  const straight = setup.hazards.length > 0 ? shortestWalk(...ends, things, picture) : null;
  const met = straight ? hazardsOn(setup.hazards, straight.points).map(({ id }) => id) : [];
  return {
    metres,
    seconds: metres / walking.metresPerSecond,
    points: way.points,
    hazardIds,
    roundHazardIds: met.filter((id) => !hazardIds.includes(id)),
  };
};

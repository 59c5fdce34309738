import type { CameraView } from '../camera/camera-view.ts';
import type { Vec3 } from '../geometry/vec.ts';
import { directionFromBearing } from '../sky/frames-body.ts';
import type { World } from '../world/world.ts';
import { seenSkyOf } from './frame-sky.ts';
import { skyDirections } from './sky-directions.ts';

/** Where the stars of a picture stand. */
export interface StarView {
  readonly view: CameraView;
  /** Unit, to the north celestial pole, scene's axes: over true north as high as the latitude, under the horizon in the south. */
  readonly pole: Vec3;
  /** Directions of the picture in which sky is seen, its edges and corners included; at least one. */
  readonly sky: readonly Vec3[];
}

/** Where the stars of a world's picture stand; null under a plain sky and where no sky is seen. */
export const starViewOf = (world: World): StarView | null => {
  const { view, frames } = world;
  const seen = frames[0] && seenSkyOf(frames[0]);
  if (!seen) return null;
  const sky = skyDirections(world);
  const { latitudeRadians, northRadians } = seen.input;
  return sky.length > 0 ? { view, sky, pole: directionFromBearing(0, latitudeRadians, northRadians) } : null;
};

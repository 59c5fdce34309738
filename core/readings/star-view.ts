import { type CameraView, viewDirection } from '../camera/camera-view.ts';
import type { Vec3 } from '../geometry/vec.ts';
import { directionFromBearing } from '../sky/frames-body.ts';
import { surfaceAlong } from '../trace/surface-point.ts';
import type { World } from '../world/world.ts';
import { seenSkyOf } from './frame-sky.ts';

/** Where the stars of a picture stand. */
export interface StarView {
  readonly view: CameraView;
  /** Unit, to the north celestial pole, scene's axes: over true north as high as the latitude, under the horizon in the south. */
  readonly pole: Vec3;
  /** Directions of the picture in which sky is seen, its edges and corners included; at least one. */
  readonly sky: readonly Vec3[];
}

/** Looks across the picture and down it. */
const [columns, rows] = [17, 13];

const read = (world: World): StarView | null => {
  const { stage, view, frames } = world;
  const seen = frames[0] && seenSkyOf(frames[0]);
  if (!seen) return null;
  const sky = Array.from({ length: columns * rows }, (_, i) =>
    viewDirection(view, (i % columns) / (columns - 1), Math.floor(i / columns) / (rows - 1)),
  ).filter((toward) => toward[1] > 0 && !surfaceAlong(stage, view.position, toward));
  const { latitudeRadians, northRadians } = seen.input;
  return sky.length > 0 ? { view, sky, pole: directionFromBearing(0, latitudeRadians, northRadians) } : null;
};

const known = new WeakMap<World, StarView | null>();

/** Where the stars of a world's picture stand; null under a plain sky and where no sky is seen. Worked out once. */
export const starViewOf = (world: World): StarView | null => {
  const before = known.get(world);
  if (before !== undefined) return before;
  const made = read(world);
  known.set(world, made);
  return made;
};

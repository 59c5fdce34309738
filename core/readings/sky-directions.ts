import { viewDirection } from '../camera/camera-view.ts';
import type { Vec3 } from '../geometry/vec.ts';
import { surfaceAlong } from '../trace/surface-point.ts';
import type { World } from '../world/world.ts';

/** Looks across the picture and down it. */
const [columns, rows] = [17, 13];

const known = new WeakMap<World, readonly Vec3[]>();

/** Directions of the picture in which sky is seen, unit, even over it, its edges and corners included. Worked out once a world. */
export const skyDirections = (world: World): readonly Vec3[] => {
  const before = known.get(world);
  if (before) return before;
  const { stage, view } = world;
  const made = Array.from({ length: columns * rows }, (_, i) =>
    viewDirection(view, (i % columns) / (columns - 1), Math.floor(i / columns) / (rows - 1)),
  ).filter((toward) => toward[1] > 0 && !surfaceAlong(stage, view.position, toward));
  known.set(world, made);
  return made;
};

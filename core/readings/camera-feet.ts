import type { Vec3 } from '../geometry/vec.ts';
import { feetOf } from '../world/holder.ts';
import type { World } from '../world/world.ts';

/** Where whoever sets the shutter off stands, world metres: behind the camera, as behind a lamp. */
export const cameraFeet = ({ stage, view: { position, forward } }: World): Vec3 =>
  feetOf(stage, {
    position,
    aim: [position[0] + forward[0], position[1] + forward[1], position[2] + forward[2]],
  });

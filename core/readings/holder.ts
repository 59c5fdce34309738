import { closestHit } from '../geometry/cast-ray.ts';
import type { Vec3 } from '../geometry/vec.ts';
import { bodyBehind } from '../walk/body.ts';
import { stepMetres } from '../walk/walk.ts';
import type { Stage } from '../world/stage.ts';
import type { Moment } from './moments.ts';

/**
 * Where whoever holds a lamp stands, middle of the feet, world metres: behind the lamp, on what lies under it there, be it
 * ground, deck, slab or hill. What begins higher than a step over the lamp is not stood on.
 */
export const feetOf = (stage: Stage, { position, aim }: Moment): Vec3 => {
  const [x, y, z] = bodyBehind(position, aim);
  const from: Vec3 = [x, y + stepMetres, z];
  const hit = closestHit(stage.tree, from, [0, -1, 0]);
  return [x, hit ? from[1] - hit.t : 0, z];
};

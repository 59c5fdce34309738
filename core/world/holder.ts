import type { Triple } from '../colour/matrix.ts';
import { anyHit, closestHit } from '../geometry/cast-ray.ts';
import type { Vec3 } from '../geometry/vec.ts';
import { body, bodyBehind } from '../walk/body.ts';
import { stepMetres } from '../walk/walk.ts';
import type { LampPlace } from './lamp-place.ts';
import type { Stage } from './stage.ts';

/**
 * Where whoever holds a lamp stands, middle of the feet, world metres: behind the lamp, on what lies under it there, be it
 * ground, deck, slab or hill. What begins higher than a step over the lamp is not stood on.
 */
export const feetOf = (stage: Stage, { position, aim }: LampPlace): Vec3 => {
  const [x, y, z] = bodyBehind(position, aim);
  const from: Vec3 = [x, y + stepMetres, z];
  const hit = closestHit(stage.tree, from, [0, -1, 0]);
  return [x, hit ? from[1] - hit.t : 0, z];
};

/** Moonlight on a plate that faces it, and skylight on level ground: linear RGB, luminance in lux. */
export interface OpenAir {
  readonly moon: { readonly toward: Vec3; readonly lux: Triple } | null;
  readonly sky: Triple;
}

/**
 * Mean luminance of whoever holds a lamp under moon and sky, as the lens sees an upright round body in even clothes, linear
 * RGB in cd/m^2. The moon by the cosine over the half that is seen, if nothing stands before it; the sky as an even dome
 * over open ground. Other lamps are left out.
 */
export const holderInOpenAir = (
  stage: Stage,
  feet: Vec3,
  eye: Vec3,
  reflectance: number,
  { moon, sky }: OpenAir,
): Triple => {
  let moonShare = 0;
  if (moon) {
    const [x, y, z] = moon.toward;
    const chest: Vec3 = [feet[0], feet[1] + body.heightMetres * 0.7, feet[2]];
    const between = Math.abs(Math.atan2(x, z) - Math.atan2(eye[0] - feet[0], eye[2] - feet[2]));
    const apart = between > Math.PI ? 2 * Math.PI - between : between;
    // mean of the moon's cosine over the half that is seen, weighted with that of the eye
    const seen = ((Math.PI - apart) * Math.cos(apart) + Math.sin(apart)) / 4;
    moonShare = anyHit(stage.tree, chest, moon.toward, 1e5) ? 0 : Math.hypot(x, z) * seen * Math.sign(Math.max(y, 0));
  }
  const skyShare = 0.5;
  const at = (c: 0 | 1 | 2) => (((moon?.lux[c] ?? 0) * moonShare + sky[c] * skyShare) * reflectance) / Math.PI;
  return [at(0), at(1), at(2)];
};

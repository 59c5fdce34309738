import type { Ray } from '../camera/camera-view.ts';
import { anyHit } from '../geometry/cast-ray.ts';
import { add, scale } from '../geometry/vec.ts';
import { openLampSample } from '../photometry/open-light.ts';
import { type BodyHit, bodyAlong } from '../walk/body.ts';
import { throughAir } from '../world/air.ts';
import type { Stage } from '../world/stage.ts';
import type { TakenTogether } from './arrival.ts';
import { drawnByWeight, type LampSource, type MomentsTaken } from './moments-taken.ts';
import { surfaceOffset } from './surface-point.ts';

/**
 * Where the eye's ray meets whoever holds a lamp, at each moment taken.
 *
 * @param limit how far the ray goes before it meets a thing, metres
 * @returns null where nobody is drawn; null for a moment at which the ray passes by
 */
export const holderAlong = (
  { feet }: MomentsTaken,
  { origin, direction }: Ray,
  limit: number,
): readonly (BodyHit | null)[] | null =>
  feet?.map((at) => {
    const hit = bodyAlong(at, origin, direction);
    return hit && hit.t < limit ? hit : null;
  }) ?? null;

/**
 * Luminance of whoever holds a lamp by the light of that lamp, per unit strength, over the moments at which the ray meets
 * the body: clothes return light evenly. One moment is drawn for the shadow of things, as in `arrivalOf`. Haze takes of it on
 * the way from lamp to clothes and from there to the eye.
 */
export const holderLuminance = (
  stage: Stage,
  { emitter }: LampSource,
  { origin, direction }: Ray,
  hits: readonly (BodyHit | null)[],
  { u, v }: { readonly u: number; readonly v: number },
  { poses, clothes, choice }: TakenTogether,
): number => {
  const lit = hits.map((hit, m) => {
    const pose = poses[m];
    if (!hit || !pose) return null;
    const place = add(origin, scale(direction, hit.t));
    const sample = openLampSample(emitter, pose, { place, normal: hit.normal }, u, v);
    const lux = sample.lux * throughAir(stage.air, sample.distance + hit.t);
    return { ...sample, place, normal: hit.normal, lux };
  });
  const m = drawnByWeight(
    lit.map((each) => each?.lux ?? 0),
    choice,
  );
  const drawn = lit[m];
  if (!drawn) return 0;
  const from = add(drawn.place, scale(drawn.normal, surfaceOffset(drawn.place)));
  if (anyHit(stage.tree, from, drawn.toLamp, drawn.distance * (1 - 1e-5))) return 0;
  const lux = lit.reduce((sum, each) => sum + (each?.lux ?? 0), 0) / poses.length;
  return (lux * clothes) / Math.PI;
};

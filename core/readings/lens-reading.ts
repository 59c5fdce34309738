import { isInFrame } from '../camera/camera-view.ts';
import { anyHit, closestHit } from '../geometry/cast-ray.ts';
import { distance, normalize, sub, type Vec3 } from '../geometry/vec.ts';
import { emitterSpot, spotIntensityPerLumen } from '../photometry/emitter.ts';
import { isInTheWay } from '../walk/body.ts';
import { feetOf } from '../world/holder.ts';
import { placeAtShare, poseAt, type World, type WorldLight } from '../world/world.ts';
import { type Hider, hiderOf } from './hider.ts';

/** What the lens sees of a pass's bare lamp, by rays. */
export interface LensReading {
  /** Share of the looks, over emitter and on-time, that found it in the picture with nothing in front, 0 to 1. */
  readonly seenShare: number;
  /** Whether any of them looked into the shining side. */
  readonly shines: boolean;
  /** What hides it where it would be in the picture; null when it is outside or seen. */
  readonly hiddenBy: Hider | null;
}

/** Places on the emitter and moments of the pass that are looked at. */
const spots = [
  [0.5, 0.5],
  [0.05, 0.5],
  [0.95, 0.5],
  [0.5, 0.05],
  [0.5, 0.95],
] as const;
const moments = 9;

/** Rays end this share short of the emitter, so that nothing at the lamp itself blocks them. */
const reach = 1 - 1e-4;

/** Looks from the lens to the emitter. */
export const lensReading = ({ stage, view }: World, { source }: WorldLight): LensReading => {
  if (source.kind !== 'lamp') return { seenShare: 0, shines: false, hiddenBy: null };
  const isBehindHolder = (to: Vec3, time: number) =>
    source.holder !== null && isInTheWay(feetOf(stage, placeAtShare(source, time)), view.position, to);
  const isClear = (to: Vec3) =>
    !anyHit(stage.tree, view.position, normalize(sub(to, view.position)), distance(view.position, to) * reach);
  const times = source.path.length > 1 ? Array.from({ length: moments }, (_, i) => i / (moments - 1)) : [0.5];
  let [seen, shines, hiddenBy] = [0, false, null as Hider | null];
  for (const time of times)
    for (const [u, v] of spots) {
      const pose = poseAt(source, time);
      const { spot, normal } = emitterSpot(source.emitter, pose, u, v);
      if (!isInFrame(view, spot)) continue;
      if (isBehindHolder(spot, time)) {
        hiddenBy ??= { kind: 'holder' };
        continue;
      }
      if (!isClear(spot)) {
        const hit = closestHit(stage.tree, view.position, normalize(sub(spot, view.position)));
        hiddenBy ??= hiderOf(stage, hit ? (stage.subjectOfTriangle[hit.triangle] as number) : -1);
        continue;
      }
      seen++;
      shines ||= spotIntensityPerLumen(source.emitter, pose, normalize(sub(view.position, spot)), normal) > 0;
    }
  return { seenShare: seen / (times.length * spots.length), shines, hiddenBy: seen > 0 ? null : hiddenBy };
};

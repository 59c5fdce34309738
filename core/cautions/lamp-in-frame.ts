import { isInFrame } from '../camera/camera-view.ts';
import { anyHit } from '../geometry/cast-ray.ts';
import { distance, normalize, sub, type Vec3 } from '../geometry/vec.ts';
import { emitterSpot, spotIntensityPerLumen } from '../photometry/emitter.ts';
import { poseAt, type World, type WorldLight } from '../world/world.ts';
import type { PassRule } from './caution.ts';

/** Places on the emitter and moments of the pass that are looked at. */
const spots = [
  [0.5, 0.5],
  [0.05, 0.5],
  [0.95, 0.5],
  [0.5, 0.05],
  [0.5, 0.95],
] as const;
const moments = 9;

interface Sighting {
  /** Share of the looks that found the emitter in the picture with nothing in front. */
  readonly seenShare: number;
  /** Whether any of them looked into the shining side. */
  readonly shines: boolean;
}

/** Looks from the lens to the emitter by rays. */
export const sightEmitter = ({ stage, view }: World, { source }: WorldLight): Sighting => {
  if (source.kind !== 'lamp') return { seenShare: 0, shines: false };
  const times = source.path.length > 1 ? Array.from({ length: moments }, (_, i) => i / (moments - 1)) : [0.5];
  let [seen, shines] = [0, false];
  for (const time of times)
    for (const [u, v] of spots) {
      const pose = poseAt(source, time);
      const { spot, normal } = emitterSpot(source.emitter, pose, u, v);
      if (!isInFrame(view, spot) || !isClear(view.position, spot)) continue;
      seen++;
      shines ||= spotIntensityPerLumen(source.emitter, pose, normalize(sub(view.position, spot)), normal) > 0;
    }
  return { seenShare: seen / (times.length * spots.length), shines };

  function isClear(from: Vec3, to: Vec3): boolean {
    return !anyHit(stage.tree, from, normalize(sub(to, from)), distance(from, to) * (1 - 1e-4));
  }
};

/** The lens sees the emitter. */
export const lampInFrame: PassRule = ({ world, pass, light }) => {
  const { seenShare, shines } = sightEmitter(world, light);
  if (seenShare === 0) return null;
  const share = `${Math.round(100 * seenShare)} %`;
  return {
    code: 'lamp-in-frame',
    severity: shines ? 'danger' : 'warning',
    passId: pass.id,
    message: shines
      ? `${pass.name}: the lens sees ${share} of the bare lamp, and it shines this way. It will burn a spot or a streak. Hide it behind something, move it out of the frame, or turn it away.`
      : `${pass.name}: ${share} of the lamp is inside the frame, though it points away from the lens. Your hand or legs may show. Hide it or step out of the frame.`,
    value: seenShare,
    limit: 0,
  };
};

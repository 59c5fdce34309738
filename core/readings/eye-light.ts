import { luminanceOfLinearSrgb } from '../colour/srgb.ts';
import { anyHit } from '../geometry/cast-ray.ts';
import { distance, normalize, sub, type Vec3 } from '../geometry/vec.ts';
import { spotIntensityPerLumen } from '../photometry/emitter.ts';
import type { Stage } from '../world/stage.ts';
import { poseAt, type WorldLight } from '../world/world.ts';

/** Eyes lie under the top of the head by so much: common practice, no published source. */
const eyesBelowTopMetres = 0.12;
/** The look stops short of the eyes: the head that they are in hides nothing. */
const headMetres = 0.3;
const moments = 9;

/** Where the eyes of a person are, from the top of the subject that stands for it. */
export const eyesOf = (points: Float64Array): Vec3 => {
  let top = 0;
  for (let i = 3; i < points.length; i += 3) if ((points[i + 1] as number) > (points[top + 1] as number)) top = i;
  return [points[top] as number, (points[top + 1] as number) - eyesBelowTopMetres, points[top + 2] as number];
};

/** Most light of a pass at eyes that look into the lamp, lux; 0 where something stands between. */
export const eyeLux = (stage: Stage, { source, strength }: WorldLight, eyes: Vec3): number => {
  if (source.kind !== 'lamp') return 0;
  const flux = luminanceOfLinearSrgb(strength);
  const times = source.path.length > 1 ? moments : 1;
  const lux = Array.from({ length: times }, (_, n) => {
    const pose = poseAt(source, times > 1 ? n / (times - 1) : 0.5);
    const metres = Math.max(distance(pose.position, eyes), 1e-3);
    const way = normalize(sub(eyes, pose.position));
    if (metres > headMetres && anyHit(stage.tree, pose.position, way, metres - headMetres)) return 0;
    return (flux * spotIntensityPerLumen(source.emitter, pose, way, null)) / metres ** 2;
  });
  return Math.max(...lux);
};

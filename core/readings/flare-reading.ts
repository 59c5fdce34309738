import { type CameraView, isInFrame } from '../camera/camera-view.ts';
import { midGreyRatioPerLuminanceSecond } from '../camera/exposure.ts';
import { luminanceOfLinearSrgb } from '../colour/srgb.ts';
import { anyHit } from '../geometry/cast-ray.ts';
import { distance, dot, normalize, scale, sub, type Vec3 } from '../geometry/vec.ts';
import { spotIntensityPerLumen } from '../photometry/emitter.ts';
import { degreesFromRadians } from '../units/angle.ts';
import { stopsFromRatio } from '../units/stops.ts';
import { poseAt, type World, type WorldFrame, type WorldLight } from '../world/world.ts';

/** What a lamp outside the picture does to the lens. */
export interface FlareReading {
  /** Least angle past the picture's nearer edge from where it shines on the glass, degrees. */
  readonly outsideDegrees: number;
  /** Even veil that its light lays over the picture, stops from mid-grey. */
  readonly veilStops: number;
}

/**
 * Veil of a lens, cd/m^2 per lux on its front: an even field of luminance L, pi L lux, lays the veiling glare index times
 * L over a black spot in it (ISO 9358); 2 % is usual, from memory. A lamp close to the picture's edge does worse.
 */
const veilPerLux = 0.02 / Math.PI;
/** Moments of a lamp on its way. */
const moments = 17;
/** Rays end this share short of the lamp, so that nothing at the lamp itself blocks them. */
const reach = 1 - 1e-4;

/** Angle past the picture's edges of what lies in front of the lens but outside, degrees. */
const outsideOf = (view: CameraView, place: Vec3): number => {
  const offset = sub(place, view.position);
  const past = (side: Vec3, tanHalf: number) =>
    Math.atan2(Math.abs(dot(offset, side)), dot(offset, view.forward)) - Math.atan(tanHalf);
  return degreesFromRadians(Math.max(past(view.right, view.tanHalfWidth), past(view.up, view.tanHalfHeight)));
};

/**
 * Reads the light of a pass that falls on the lens from outside the picture, within an angle past its edges: by the middle
 * of the emitter, nothing in between.
 *
 * @returns null where none does
 */
export const flareReading = (
  world: World,
  { source, strength, seconds }: WorldLight,
  { exposure }: WorldFrame,
  withinDegrees: number,
): FlareReading | null => {
  if (source.kind !== 'lamp') return null;
  const { stage, view } = world;
  const times = source.path.length > 1 ? moments : 1;
  let [lux, outsideDegrees] = [0, Number.POSITIVE_INFINITY];
  for (let n = 0; n < times; n++) {
    const pose = poseAt(source, (n + 0.5) / times);
    const toLamp = normalize(sub(pose.position, view.position));
    const cos = dot(toLamp, view.forward);
    const outside = outsideOf(view, pose.position);
    if (cos <= 0 || isInFrame(view, pose.position) || outside > withinDegrees) continue;
    const metres = distance(pose.position, view.position);
    const candela = spotIntensityPerLumen(source.emitter, pose, scale(toLamp, -1), null);
    if (candela <= 0 || anyHit(stage.tree, view.position, toLamp, metres * reach)) continue;
    lux += (candela * cos) / metres ** 2 / times;
    outsideDegrees = Math.min(outsideDegrees, outside);
  }
  if (lux <= 0) return null;
  const veil = veilPerLux * lux * luminanceOfLinearSrgb(strength) * seconds;
  return { outsideDegrees, veilStops: stopsFromRatio(veil * midGreyRatioPerLuminanceSecond(exposure)) };
};

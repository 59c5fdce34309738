import type { Ray } from '../camera/camera-view.ts';
import { anyHit } from '../geometry/cast-ray.ts';
import { add, dot, normalize, scale, sub, type Vec3 } from '../geometry/vec.ts';
import { openLampSample } from '../photometry/open-light.ts';
import { type Air, throughAir } from '../world/air.ts';
import { scatterPhase } from '../world/air-light.ts';
import type { Stage } from '../world/stage.ts';
import { drawnByWeight, type LampSource, type MomentsTaken } from './moments-taken.ts';

/** Places along a look at which one sample asks for a lamp's light in haze. */
export const placesAlong = 16;
/** A look that comes nearer to a lamp than this counts as passing it so far off, metres. */
export const nearestPass = 0.01;

/** The random numbers of light in haze. */
export interface HazeNumbers {
  /** Where the places lie in their parts of the way, 0 to 1. */
  readonly along: number;
  /** Which of them the shadow is traced for, 0 to 1. */
  readonly choice: number;
  /** Which place gets which moment of a lamp on its way, 0 to 1. Apart from `choice`, or few pairs ever throw a shadow. */
  readonly turn: number;
}

/** Light of a lamp that one place of a look through haze sends on, what it counts for, and the way to the lamp. */
interface Glint {
  readonly place: Vec3;
  readonly toLamp: Vec3;
  readonly distance: number;
  readonly weight: number;
}

/**
 * Places lie evenly by the angle at which the lamp sees them, which makes them as much denser near it as its light is
 * stronger there (equiangular sampling, Kulla and Fajardo 2012). Several moments of a lamp take turns.
 */
const glintAt = (
  { emitter }: LampSource,
  air: Air,
  { origin, direction }: Ray,
  farthest: number,
  { poses }: MomentsTaken,
  limits: readonly number[] | null,
  k: number,
  { along, turn }: HazeNumbers,
): Glint => {
  const m = (k + Math.floor(turn * poses.length)) % poses.length;
  const limit = Math.min(farthest, limits?.[m] ?? farthest);
  const pose = poses[m] as (typeof poses)[number];
  const offset = sub(pose.position, origin);
  const nearest = dot(offset, direction);
  const gap = Math.max(Math.sqrt(Math.max(dot(offset, offset) - nearest * nearest, 0)), nearestPass);
  const from = Math.atan(-nearest / gap);
  const range = Math.atan((limit - nearest) / gap) - from;
  const past = gap * Math.tan(from + (range * (k + along)) / placesAlong);
  const t = Math.min(Math.max(nearest + past, 0), limit);
  const place = add(origin, scale(direction, t));
  const sample = openLampSample(emitter, pose, { place, normal: normalize(sub(pose.position, place)) }, 0.5, 0.5);
  const perMetre = (range * (gap * gap + past * past)) / gap;
  const through = throughAir(air, t + sample.distance);
  const light = sample.lux * air.scatterPerMetre * scatterPhase(dot(sample.toLamp, direction)) * through;
  return { place, toLamp: sample.toLamp, distance: sample.distance, weight: (light * perMetre) / placesAlong };
};

/**
 * Luminance toward the eye of a lamp's light that haze scatters once on the way, per lumen: its beam. All places count for
 * the light, one drawn by its light for the shadow. The lamp counts as a point; whoever holds it throws no shadow in haze,
 * but hides what lies behind them.
 *
 * @param farthest how far the look goes in haze, metres
 * @param limits how far it goes before it meets whoever holds the lamp, at each moment taken; null = nobody is drawn
 */
export const beamInHaze = (
  stage: Stage,
  air: Air,
  source: LampSource,
  ray: Ray,
  farthest: number,
  taken: MomentsTaken,
  limits: readonly number[] | null,
  numbers: HazeNumbers,
): number => {
  const glints = Array.from({ length: placesAlong }, (_, k) =>
    glintAt(source, air, ray, farthest, taken, limits, k, numbers),
  );
  const drawn =
    glints[
      drawnByWeight(
        glints.map(({ weight }) => weight),
        numbers.choice,
      )
    ];
  if (!drawn || anyHit(stage.tree, drawn.place, drawn.toLamp, drawn.distance * (1 - 1e-5))) return 0;
  return glints.reduce((sum, { weight }) => sum + weight, 0);
};

import { anyHit } from '../geometry/cast-ray.ts';
import { discFromSquare } from '../geometry/disc-from-square.ts';
import { add, basisAround, dot, normalize, scale, type Vec3 } from '../geometry/vec.ts';
import type { Pose } from '../photometry/emitter.ts';
import { openLampSample } from '../photometry/open-light.ts';
import type { Stage } from '../world/stage.ts';
import { moonRadiusRadians, poseAt, type Source } from '../world/world.ts';

/** A receiver: the place that light falls on, where shadow rays start, and the normal that the cosine is taken with. */
export interface Receiver {
  /** Distance and angles are taken from here, so that the step off the surface does not enter the inverse square. */
  readonly place: Vec3;
  readonly shadowOrigin: Vec3;
  readonly normal: Vec3;
}

/** The random numbers of one sample. */
export interface SampleNumbers {
  readonly u: number;
  readonly v: number;
  /** Share of the on-time, 0 to 1. */
  readonly time: number;
}

/** Shadow rays end this share short of the lamp, so that nothing at the lamp itself blocks them. */
const reach = 1 - 1e-5;

/** Light from one direction on its way to a receiver, whatever may stand between. */
export interface Arrival {
  /** Per unit strength of the source, with the receiver's cosine; 0 where it comes from behind. */
  readonly lux: number;
  /** Unit. */
  readonly toLight: Vec3;
  /** What stands nearer than this in that direction keeps it off. */
  readonly limit: number;
  /** Of a lamp: how it stands, and which spot of it is meant. */
  readonly lamp: { readonly pose: Pose; readonly distance: number; readonly spotNormal: Vec3 | null } | null;
  /** Whether it stands for light from all of the sky at once. */
  readonly isAllRound: boolean;
}

const farAway = 1e5;

/** What one sample of a source sends to a receiver. */
export const arrivalOf = (source: Source, receiver: Receiver, numbers: SampleNumbers): Arrival => {
  switch (source.kind) {
    case 'lamp': {
      const pose = poseAt(source, numbers.time);
      const { lux, toLamp, distance, spotNormal } = openLampSample(
        source.emitter,
        pose,
        receiver,
        numbers.u,
        numbers.v,
      );
      const lamp = { pose, distance, spotNormal };
      return { lux, toLight: toLamp, limit: distance * reach, lamp, isAllRound: false };
    }
    case 'moon': {
      const { first, second } = basisAround(source.toward);
      const [a, b] = discFromSquare(numbers.u, numbers.v).map((x) => x * moonRadiusRadians) as [number, number];
      const toLight = normalize(add(source.toward, add(scale(first, a), scale(second, b))));
      const lux = Math.max(dot(receiver.normal, toLight), 0);
      return { lux, toLight, limit: farAway, lamp: null, isAllRound: false };
    }
    case 'sky':
      return skyArrival(receiver.normal, numbers);
  }
};

/** Whether the light reaches the receiver. */
export const arrives = (stage: Stage, { shadowOrigin }: Receiver, { lux, toLight, limit }: Arrival): boolean =>
  lux > 0 && !anyHit(stage.tree, shadowOrigin, toLight, limit);

/**
 * One sample of the illuminance that a source at unit strength puts on a receiver, in lux (per lumen or per lux of
 * source). Inverse square, cosine, visibility. The mean over samples is the estimator that both renderers share.
 */
export const irradianceSample = (stage: Stage, source: Source, receiver: Receiver, numbers: SampleNumbers): number => {
  const arrival = arrivalOf(source, receiver, numbers);
  return arrives(stage, receiver, arrival) ? arrival.lux : 0;
};

/**
 * An even dome of 1 lux on level ground, sampled by the cosine round the normal. Sample 0 stands for the whole dome: it
 * looks along the normal, or straight up where that is level or below, and weighs by the dome's share above the surface.
 */
const skyArrival = (normal: Vec3, { u, v }: SampleNumbers): Arrival => {
  const common = { limit: farAway, lamp: null };
  if (u === 0.5 && v === 0.5) {
    const toLight: Vec3 = normal[1] > 0 ? normal : [0, 1, 0];
    return { ...common, lux: Math.max((1 + normal[1]) / 2, 0), toLight, isAllRound: true };
  }
  const toLight = cosineDirection(normal, u, v);
  return { ...common, lux: toLight[1] > 0 ? 1 : 0, toLight, isAllRound: false };
};

/** A direction over a surface, more often the nearer to its normal: density cos / pi. Two numbers in [0, 1). */
export const cosineDirection = (normal: Vec3, u: number, v: number): Vec3 => {
  const { first, second } = basisAround(normal);
  const r = Math.sqrt(u);
  const around = add(scale(first, r * Math.cos(2 * Math.PI * v)), scale(second, r * Math.sin(2 * Math.PI * v)));
  return normalize(add(scale(normal, Math.sqrt(Math.max(1 - u, 0))), around));
};

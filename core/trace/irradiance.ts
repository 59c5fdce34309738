import { anyHit } from '../geometry/cast-ray.ts';
import { discFromSquare } from '../geometry/disc-from-square.ts';
import { add, basisAround, dot, normalize, scale, type Vec3 } from '../geometry/vec.ts';
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

/**
 * One sample of the illuminance that a source at unit strength puts on a receiver, in lux (per lumen or per lux of
 * source). Inverse square, cosine, visibility. The mean over samples is the estimator that both renderers share.
 */
export const irradianceSample = (stage: Stage, source: Source, receiver: Receiver, numbers: SampleNumbers): number => {
  switch (source.kind) {
    case 'lamp': {
      const pose = poseAt(source, numbers.time);
      const { lux, toLamp, distance } = openLampSample(source.emitter, pose, receiver, numbers.u, numbers.v);
      return lux <= 0 || anyHit(stage.tree, receiver.shadowOrigin, toLamp, distance * reach) ? 0 : lux;
    }
    case 'moon': {
      const { first, second } = basisAround(source.toward);
      const [a, b] = discFromSquare(numbers.u, numbers.v).map((x) => x * moonRadiusRadians) as [number, number];
      const toMoon = normalize(add(source.toward, add(scale(first, a), scale(second, b))));
      const cosReceiver = dot(receiver.normal, toMoon);
      return cosReceiver <= 0 || anyHit(stage.tree, receiver.shadowOrigin, toMoon, farAway) ? 0 : cosReceiver;
    }
    case 'sky':
      return skySample(stage, receiver, numbers);
  }
};

const farAway = 1e5;

/**
 * An even dome of 1 lux on level ground, sampled by the cosine round the normal. Sample 0 stands for the whole dome: it
 * looks along the normal, or straight up where that is level or below, and weighs by the dome's share above the surface.
 */
const skySample = (stage: Stage, { shadowOrigin, normal }: Receiver, { u, v }: SampleNumbers): number => {
  const middle = u === 0.5 && v === 0.5;
  if (middle) {
    const toSky: Vec3 = normal[1] > 0 ? normal : [0, 1, 0];
    return anyHit(stage.tree, shadowOrigin, toSky, farAway) ? 0 : Math.max((1 + normal[1]) / 2, 0);
  }
  const r = Math.sqrt(u);
  const { first, second } = basisAround(normal);
  const around = add(scale(first, r * Math.cos(2 * Math.PI * v)), scale(second, r * Math.sin(2 * Math.PI * v)));
  const toSky = normalize(add(scale(normal, Math.sqrt(Math.max(1 - u, 0))), around));
  return toSky[1] <= 0 || anyHit(stage.tree, shadowOrigin, toSky, farAway) ? 0 : 1;
};

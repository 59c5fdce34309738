import { anyHit } from '../geometry/cast-ray.ts';
import { add, scale } from '../geometry/vec.ts';
import type { Pose } from '../photometry/emitter.ts';
import { openLampSample } from '../photometry/open-light.ts';
import { domeLightOf } from '../sky/dome-of.ts';
import { isInTheWay } from '../walk/body.ts';
import { type Air, throughAir } from '../world/air.ts';
import type { Stage } from '../world/stage.ts';
import { poseAt, type Source } from '../world/world.ts';
import { type Arrival, nothing, type Receiver, type SampleNumbers } from './arrival.ts';
import { drawnByWeight, type LampSource } from './moments-taken.ts';
import { domeArrival, moonArrival, skyArrival } from './sky-arrival.ts';

/** Shadow rays end this share short of the lamp, so that nothing at the lamp itself blocks them. */
const reach = 1 - 1e-5;

/**
 * Of a lamp taken at several moments all count for the light, and one drawn by its light for the shadow: as good as their
 * mean over many samples (resampled importance sampling, Talbot, Cline and Egbert 2005), with one ray for all of them.
 * Haze takes of it by the way from the moment drawn.
 */
const lampArrival = (air: Air | null, source: LampSource, receiver: Receiver, numbers: SampleNumbers): Arrival => {
  const { u, v, time, taken } = numbers;
  const poses = taken?.poses ?? [poseAt(source, time)];
  const samples = poses.map((pose) => openLampSample(source.emitter, pose, receiver, u, v));
  const weights = samples.map(({ lux }, m) => (taken?.isHidden?.[m] ? 0 : lux));
  const m = drawnByWeight(weights, taken?.choice ?? 0);
  if (m < 0) return nothing;
  const { toLamp, distance, spotNormal, crowding } = samples[m] as (typeof samples)[number];
  const lamp = { pose: poses[m] as Pose, distance, spotNormal, crowding, feet: taken?.feet?.[m] ?? null };
  const lux = weights.reduce((sum, weight) => sum + weight, 0) / poses.length;
  const through = throughAir(air, distance);
  return { lux: lux * through, toLight: toLamp, limit: distance * reach, lamp, isAllRound: false };
};

/**
 * What one sample of a source sends to a receiver. Haze is taken to send on as much of an even sky's light as it takes, so
 * that skies light the land as in clear air.
 */
export const arrivalOf = ({ air }: Stage, source: Source, receiver: Receiver, numbers: SampleNumbers): Arrival => {
  switch (source.kind) {
    case 'lamp':
      return lampArrival(air, source, receiver, numbers);
    case 'moon':
      return moonArrival(air, source, receiver, numbers);
    case 'sky':
      return skyArrival(receiver.normal, numbers);
    case 'dome':
      return domeArrival(domeLightOf(source.of), receiver.normal, numbers);
    case 'seen-sky':
      return nothing;
  }
};

/** Whether the light reaches the receiver, past things and past whoever holds the lamp. */
export const arrives = (stage: Stage, { shadowOrigin }: Receiver, { lux, toLight, limit, lamp }: Arrival): boolean => {
  if (lux <= 0) return false;
  if (lamp?.feet && isInTheWay(lamp.feet, shadowOrigin, add(shadowOrigin, scale(toLight, limit)))) return false;
  return !anyHit(stage.tree, shadowOrigin, toLight, limit);
};

/**
 * One sample of the illuminance that a source at unit strength puts on a receiver, in lux (per lumen or per lux of
 * source). Inverse square, cosine, visibility. The mean over samples is the estimator that both renderers share.
 */
export const irradianceSample = (stage: Stage, source: Source, receiver: Receiver, numbers: SampleNumbers): number => {
  const arrival = arrivalOf(stage, source, receiver, numbers);
  return arrives(stage, receiver, arrival) ? arrival.lux : 0;
};

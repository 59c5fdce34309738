import { add, scale, type Vec3 } from '../geometry/vec.ts';
import type { Stage } from '../world/stage.ts';
import type { Source } from '../world/world.ts';
import type { Receiver, SampleNumbers } from './arrival.ts';
import { irradianceSample } from './irradiance.ts';
import { dimension, sampleNumber } from './sequence.ts';
import { surfaceOffset } from './surface-point.ts';

/** Samples that a reading takes over emitter and time. */
export const meterSamples = 64;

/** Illuminance in lux per unit strength at a receiver already clear of its surface: mean over the samples given. */
export const meterWith = (
  stage: Stage,
  source: Source,
  receiver: Receiver,
  samples: readonly SampleNumbers[],
): number => {
  let sum = 0;
  for (const numbers of samples) sum += irradianceSample(stage, source, receiver, numbers);
  return sum / samples.length;
};

/** The same over the first `samples` of the sequence that pictures are traced with. */
export const meterReceiver = (stage: Stage, source: Source, receiver: Receiver, samples = meterSamples): number => {
  const numbers = Array.from({ length: samples }, (_, s): SampleNumbers => {
    const number = (dim: number) => sampleNumber(s, dim, 0, 0);
    return { u: number(dimension.emitterU), v: number(dimension.emitterV), time: number(dimension.moment) };
  });
  return meterWith(stage, source, receiver, numbers);
};

/**
 * An incident meter held anywhere in the scene.
 *
 * @param point world metres; when it lies on a surface, the normal should point away from it
 * @param normal unit, the way the meter faces
 * @returns lux per unit strength of the source, shadows included
 */
export const meter = (stage: Stage, source: Source, point: Vec3, normal: Vec3, samples = meterSamples): number =>
  meterReceiver(
    stage,
    source,
    { place: point, shadowOrigin: add(point, scale(normal, surfaceOffset(point))), normal },
    samples,
  );

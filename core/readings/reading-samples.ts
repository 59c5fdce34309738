import type { SampleNumbers } from '../trace/arrival.ts';
import { dimension, sampleNumber } from '../trace/sequence.ts';
import type { Source } from '../world/world.ts';

/** Over the emitter of a lamp that rests, and over the moon: many points share the noise. */
const restingSamples = 4;
/** Over the way of a lamp that is walked or turned: with fewer it reads as a row of lamps. */
const walkedSamples = 32;
/** Over the sky's dome. */
const skySamples = 64;
/** Over the glow of a town, which is a small part of it. */
const glowSamples = 16;

/** Golden ratio, whose multiples lie evenly round a circle however many they are. */
const golden = (Math.sqrt(5) - 1) / 2;

const emitterNumbers = (s: number, time: number): SampleNumbers => ({
  u: sampleNumber(s, dimension.emitterU, 0, 0),
  v: sampleNumber(s, dimension.emitterV, 0, 0),
  time,
});

const overDome = (count: number): SampleNumbers[] =>
  Array.from({ length: count }, (_, s) => ({ u: (s + 0.5) / count, v: (s * golden) % 1, time: 0.5 }));

/** Whether a lamp changes place or aim at all: one that is put down between waypoints at the same place does not. */
const isWalked = ({ path }: Extract<Source, { kind: 'lamp' }>): boolean =>
  path.some(({ position, aim }) =>
    [0, 1, 2].some((axis) => {
      const first = path[0] as (typeof path)[number];
      return position[axis] !== first.position[axis] || aim[axis] !== first.aim[axis];
    }),
  );

/**
 * The samples with which a source is metered at each of many points, the same at all of them, so that light which is even
 * reads as even. As many as the source needs: a lamp on its way is met in even steps of its on-time, the sky by a spiral
 * over the dome without the middle sample, which stands for all of it in a first picture only.
 */
export const readingSamples = (source: Source): SampleNumbers[] => {
  if (source.kind === 'sky') return overDome(skySamples);
  if (source.kind === 'dome') return overDome(source.of.part === 'glow' ? glowSamples : skySamples);
  if (source.kind === 'lamp' && isWalked(source))
    return Array.from({ length: walkedSamples }, (_, s) => emitterNumbers(s, (s + 0.5) / walkedSamples));
  return Array.from({ length: restingSamples }, (_, s) => emitterNumbers(s, sampleNumber(s, dimension.moment, 0, 0)));
};

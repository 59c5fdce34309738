import type { BounceNumbers, SheenNumbers } from './bounce.ts';
import type { MomentsTaken } from './moments-taken.ts';
import { chanceNumber, dimension, scatteredNumber } from './sequence.ts';

/**
 * The random numbers of a pixel's sample. Bounced light has no middle: its first sample lies anywhere.
 *
 * @param moments of the source, if it is a lamp
 */
export const bounceNumbersOf = (sample: number, x: number, y: number, moments: MomentsTaken | null): BounceNumbers => {
  const takenBy = (choice: number) => (moments ? { taken: { ...moments, choice } } : {});
  const scattered = (dim: number) => scatteredNumber(sample, dim, x, y);
  const chance = (dim: number) => chanceNumber(sample, dim, x, y);
  return [
    {
      way: [scattered(dimension.bounceU), scattered(dimension.bounceV)],
      side: chance(dimension.side),
      u: chance(dimension.bouncedEmitterU),
      v: chance(dimension.bouncedEmitterV),
      time: 0.5,
      ...takenBy(chance(dimension.bouncedMoment)),
    },
    {
      way: [chance(dimension.secondBounceU), chance(dimension.secondBounceV)],
      side: chance(dimension.secondSide),
      u: chance(dimension.secondBouncedEmitterU),
      v: chance(dimension.secondBouncedEmitterV),
      time: 0.5,
      ...takenBy(chance(dimension.secondBouncedMoment)),
    },
  ];
};

/** Where the eye's ray goes on from a sheen before light is followed: also anywhere. */
export const sheenNumbersOf = (sample: number, x: number, y: number): SheenNumbers => {
  const chance = (dim: number) => chanceNumber(sample, dim, x, y);
  return { way: [chance(dimension.sheenU), chance(dimension.sheenV)], choice: chance(dimension.sheenOrNot) };
};

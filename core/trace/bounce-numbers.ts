import type { BounceNumbers, SheenNumbers } from './bounce.ts';
import { chanceNumber, dimension, scatteredNumber } from './sequence.ts';

/** The random numbers of a pixel's sample. Bounced light has no middle: its first sample lies anywhere. */
export const bounceNumbersOf = (sample: number, x: number, y: number, time: number): BounceNumbers => {
  const scattered = (dim: number) => scatteredNumber(sample, dim, x, y);
  const chance = (dim: number) => chanceNumber(sample, dim, x, y);
  return [
    {
      way: [scattered(dimension.bounceU), scattered(dimension.bounceV)],
      side: chance(dimension.side),
      u: chance(dimension.bouncedEmitterU),
      v: chance(dimension.bouncedEmitterV),
      time,
    },
    {
      way: [chance(dimension.secondBounceU), chance(dimension.secondBounceV)],
      side: chance(dimension.secondSide),
      u: chance(dimension.secondBouncedEmitterU),
      v: chance(dimension.secondBouncedEmitterV),
      time,
    },
  ];
};

/** Where the eye's ray goes on from a sheen before light is followed: also anywhere. */
export const sheenNumbersOf = (sample: number, x: number, y: number): SheenNumbers => {
  const chance = (dim: number) => chanceNumber(sample, dim, x, y);
  return { way: [chance(dimension.sheenU), chance(dimension.sheenV)], choice: chance(dimension.sheenOrNot) };
};

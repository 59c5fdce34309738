import type { MeasuredBeam } from './beam.ts';
import { type Distribution, peakCandela } from './distribution.ts';
import { fluxExact } from './distribution-flux.ts';

let count = 0;
const keys = new WeakMap<Distribution, string>();

/** A word that stands for a distribution as long as the program runs. */
const keyOf = (distribution: Distribution): string => {
  const key = keys.get(distribution) ?? `distribution-${++count}`;
  keys.set(distribution, key);
  return key;
};

/** A distribution as a lamp's beam, scaled to one lumen. */
export const measuredBeam = (distribution: Distribution, turnRadians: number): MeasuredBeam => {
  const perLumen = 1 / fluxExact(distribution);
  return {
    distribution,
    perLumen,
    peakPerLumen: peakCandela(distribution) * perLumen,
    turnRadians,
    toJSON: () => `${keyOf(distribution)} turned ${turnRadians}`,
  };
};

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

interface Measures {
  readonly perLumen: number;
  readonly peakPerLumen: number;
}
/** Large files take milliseconds to sum up, and a lamp's beam is asked for many times. */
const known = new WeakMap<Distribution, Measures>();

const measuresOf = (distribution: Distribution): Measures => {
  const before = known.get(distribution);
  if (before) return before;
  const perLumen = 1 / fluxExact(distribution);
  const measures = { perLumen, peakPerLumen: peakCandela(distribution) * perLumen };
  known.set(distribution, measures);
  return measures;
};

/** A distribution as a lamp's beam, scaled to one lumen. */
export const measuredBeam = (distribution: Distribution, turnRadians: number): MeasuredBeam => ({
  distribution,
  ...measuresOf(distribution),
  turnRadians,
  toJSON: () => `${keyOf(distribution)} turned ${turnRadians}`,
});

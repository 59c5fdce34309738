import type { Stroke } from './stroke.ts';

/** The least share of a stroke that a leg gets, so that times rise: nobody's hand is quicker. */
const leastShare = 1e-3;

/**
 * Times of the waypoints of a stroke whose legs take turns by weight.
 *
 * @param weights one a leg, at least 0; all 0 = all alike
 * @returns one time more than there are legs, rising strictly from `on` to `off`; seconds after the shutter opens
 */
export const timesFromWeights = (weights: readonly number[], { on, off }: Pick<Stroke, 'on' | 'off'>): number[] => {
  const sum = weights.reduce((all, weight) => all + weight, 0);
  const floor = leastShare / weights.length;
  const shares = weights.map((weight) => Math.max(sum > 0 ? weight / sum : 1 / weights.length, floor));
  const all = shares.reduce((total, share) => total + share, 0);
  let gone = 0;
  const inner = shares.slice(0, -1).map((share) => {
    gone += share;
    return on + (off - on) * (gone / all);
  });
  return [on, ...inner, off];
};

import type { Stroke } from './stroke.ts';

/** What a leg gets of an even share at least, so that times rise. */
const leastShare = 1e-3;

/**
 * Times of the waypoints of a stroke whose legs take turns by weight.
 *
 * @param weights one a leg, at least 0; all 0 = all alike
 * @param least what a leg gets of an even share at least, above 0
 * @returns one time more than there are legs, rising strictly from `on` to `off`; seconds after the shutter opens
 */
export const timesFromWeights = (
  weights: readonly number[],
  { on, off }: Pick<Stroke, 'on' | 'off'>,
  least = leastShare,
): number[] => {
  const sum = weights.reduce((all, weight) => all + weight, 0);
  const floor = least / weights.length;
  const shares = weights.map((weight) => Math.max(sum > 0 ? weight / sum : 1 / weights.length, floor));
  const all = shares.reduce((total, share) => total + share, 0);
  let gone = 0;
  const inner = shares.slice(0, -1).map((share) => {
    gone += share;
    return on + (off - on) * (gone / all);
  });
  return [on, ...inner, off];
};

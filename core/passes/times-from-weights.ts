import type { Stroke } from './stroke.ts';

/** What a leg gets of an even share at least, so that times rise. */
const leastShare = 1e-3;
/** Most of a stroke that goes into the least times of its legs. */
const mostOfStroke = 0.9;

/**
 * Times of the waypoints of a stroke whose legs take turns by weight.
 *
 * @param weights one a leg, at least 0; all 0 = all alike
 * @param least seconds that each leg takes at least; what is left goes by weight. Where they would fill the stroke, legs are
 *   quicker
 * @returns one time more than there are legs, rising strictly from `on` to `off`; seconds after the shutter opens
 */
export const timesFromWeights = (
  weights: readonly number[],
  { on, off }: Pick<Stroke, 'on' | 'off'>,
  least?: readonly number[],
): number[] => {
  const sum = weights.reduce((all, weight) => all + weight, 0);
  const floor = leastShare / weights.length;
  const shares = weights.map((weight) => Math.max(sum > 0 ? weight / sum : 1 / weights.length, floor));
  const all = shares.reduce((total, share) => total + share, 0);
  const wanted = least?.reduce((total, seconds) => total + seconds, 0) ?? 0;
  const given = Math.min(wanted, mostOfStroke * (off - on));
  let gone = on;
  const inner = shares.slice(0, -1).map((share, k) => {
    const own = wanted > 0 ? (((least as readonly number[])[k] as number) / wanted) * given : 0;
    gone += own + (off - on - given) * (share / all);
    return gone;
  });
  return [on, ...inner, off];
};

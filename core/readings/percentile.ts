/**
 * The value under which a share of a list lies: between two of its values, what lies between them in proportion, so that
 * share 0 is the least and share 1 the greatest (definition 7 of Hyndman and Fan, The American Statistician 50, 1996).
 *
 * @param values at least one, in any order
 * @param share 0 to 1
 */
export const percentile = (values: readonly number[], share: number): number => {
  if (values.length === 0) throw new Error('no values, no percentile');
  const sorted = [...values].sort((a, b) => a - b);
  const place = share * (sorted.length - 1);
  const below = sorted[Math.floor(place)] as number;
  const above = sorted[Math.ceil(place)] as number;
  return below + (above - below) * (place - Math.floor(place));
};

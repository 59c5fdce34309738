/**
 * Puts neighbouring legs together until so many groups are left: each time the two that are shortest together.
 *
 * @param spans length of each leg
 * @returns waypoints at which groups begin and end, counted from 0: the first, the last, and those between groups
 */
export const legGroups = (spans: readonly number[], most: number): number[] => {
  const ends = Array.from({ length: spans.length + 1 }, (_, i) => i);
  let lengths = [...spans];
  while (lengths.length > most) {
    const pairs = lengths.slice(1).map((length, i) => length + (lengths[i] as number));
    const shortest = pairs.indexOf(Math.min(...pairs));
    lengths = lengths.toSpliced(shortest, 2, pairs[shortest] as number);
    ends.splice(shortest + 1, 1);
  }
  return ends;
};

/** Longest name of a scheme. */
export const longestName = 80;

/** Text cut to a length, whole characters only. */
export const cutTo = (text: string, most: number): string =>
  text.slice(0, Math.max(most, 0)).replace(/[\ud800-\udbff]$/, '');

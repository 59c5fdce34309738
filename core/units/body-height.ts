/** Where on the body a lamp is held; heights are common practice, no published source (trade.md, table of 0.3). */
export const bodyHeights = [
  { word: 'ground', metres: 0.05 },
  { word: 'shin', metres: 0.3 },
  { word: 'knee', metres: 0.5 },
  { word: 'hip', metres: 1.0 },
  { word: 'chest', metres: 1.4 },
  { word: 'overhead', metres: 2.1 },
] as const;

/** From here on a lamp is on a pole. Common practice, no published source. */
const leastPoleMetres = 3;
/** As high as one person holds a lamp on the longest pole, metres. Common practice, no published source. */
export const mostPoleMetres = 8;

/** The word whose height is nearest in ratio; "on a pole" over an arm’s reach, "high up" over a pole’s too; "buried" in the ground. */
export const bodyHeightWord = (heightMetres: number): string => {
  if (heightMetres < 0) return 'buried';
  if (heightMetres > mostPoleMetres) return 'high up';
  if (heightMetres > leastPoleMetres) return 'on a pole';
  const distance = (metres: number) => Math.abs(Math.log((heightMetres + 0.05) / (metres + 0.05)));
  return bodyHeights.reduce((best, next) => (distance(next.metres) < distance(best.metres) ? next : best)).word;
};

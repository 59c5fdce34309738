/** Where on the body a lamp is held; heights are common practice, no published source (trade.md, table of 0.3). */
export const bodyHeights = [
  { word: 'ground', metres: 0.05 },
  { word: 'shin', metres: 0.3 },
  { word: 'knee', metres: 0.5 },
  { word: 'hip', metres: 1.0 },
  { word: 'chest', metres: 1.4 },
  { word: 'overhead', metres: 2.1 },
] as const;

/** The word whose height is nearest in ratio; anything above 3 m is "on a pole", below the ground is "buried". */
export const bodyHeightWord = (heightMetres: number): string => {
  if (heightMetres < 0) return 'buried';
  if (heightMetres > 3) return 'on a pole';
  const distance = (metres: number) => Math.abs(Math.log((heightMetres + 0.05) / (metres + 0.05)));
  return bodyHeights.reduce((best, next) => (distance(next.metres) < distance(best.metres) ? next : best)).word;
};

/**
 * How many planes a measured beam has once round the circle, its mirror images included, for each kind of symmetry that
 * horizontal angles in degrees can say: 0 alone; 0 to 90; 0 to 180; 90 to 270; the circle, with or without 360.
 */
export const planesRound = (horizontalDegrees: readonly number[]): number => {
  const { length } = horizontalDegrees;
  const [first, last] = [horizontalDegrees[0], horizontalDegrees.at(-1)];
  if (length < 2) return length;
  if (first === 0 && last === 90) return 4 * (length - 1);
  if (first === 0 && last === 180) return 2 * (length - 1);
  // the plane 0 is put between the others where no plane 180 gives it
  if (first === 90) return 2 * (length - 1) + (horizontalDegrees.includes(180) ? 0 : 1);
  return last === 360 ? length - 1 : length;
};

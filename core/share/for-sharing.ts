import type { Setup } from '../setup/schema/setup.ts';

/**
 * A setup as it is given to others: without the log of its nights, which is its owner’s.
 *
 * @param leavesOutPlace whether latitude and longitude are rounded to whole degrees (up to 55 km each) and towns lose their
 * names; the sky then turns by as much. Names and notes stay as they are
 */
export const forSharing = (setup: Setup, leavesOutPlace: boolean): Setup => {
  const given = { ...setup, nights: [] };
  if (!leavesOutPlace) return given;
  const { latitudeDegrees, longitudeDegrees, glowDomes } = setup.place;
  return {
    ...given,
    place: {
      ...setup.place,
      // no minus nought, which JSON can't write
      latitudeDegrees: Math.round(latitudeDegrees) || 0,
      longitudeDegrees: Math.round(longitudeDegrees) || 0,
      glowDomes: glowDomes.map((dome) => ({ ...dome, name: '' })),
    },
  };
};

import type { Setup } from '../setup/schema/setup.ts';

/**
 * A setup as it is given to others: without what is its owner’s alone, which is the log of nights, who gave permission, and
 * when test shots were taken (what they told of the lamp goes along).
 *
 * @param leavesOutPlace whether latitude and longitude are rounded to whole degrees (up to 55 km each) and towns lose their
 * names; the sky then turns by as much. Names and notes stay as they are
 */
export const forSharing = (setup: Setup, leavesOutPlace: boolean): Setup => {
  const given: Setup = {
    ...setup,
    nights: [],
    card: { ...setup.card, permission: '' },
    lamps: setup.lamps.map((lamp) => ({ ...lamp, testShots: lamp.testShots.map((shot) => ({ ...shot, at: null })) })),
  };
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

import { magneticNorth } from './magnetic.ts';
import { suggestZone } from './suggest-zone.ts';

/** Has the files with zones and compass come while there is a network: they are wanted where there is none. */
export const fetchPlaceFiles = async (): Promise<void> => {
  await Promise.allSettled([suggestZone(0, 0), magneticNorth(0, 0, Date.now())]);
};

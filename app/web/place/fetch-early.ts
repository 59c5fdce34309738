import { loadHourPanel, loadSlipFields } from './late-parts.tsx';
import { magneticNorth } from './magnetic.ts';
import { suggestZone } from './suggest-zone.ts';

/** Has the room's own files, zones and compass come while there is a network: they are wanted where there is none. */
export const fetchPlaceFiles = async (): Promise<void> => {
  await Promise.allSettled([loadHourPanel(), loadSlipFields(), suggestZone(0, 0), magneticNorth(0, 0, Date.now())]);
};

import { late } from '../ui/late.tsx';
import { magneticNorth } from './magnetic.ts';
import { suggestZone } from './suggest-zone.ts';

export const HourPanel = late({ name: 'The night' }, async () => (await import('./HourPanel.tsx')).HourPanel);
export const PlaceFields = late({ name: 'The place' }, async () => (await import('./PlaceFields.tsx')).PlaceFields);

/** Has zones and compass come while there is a network: they are wanted where there is none. */
export const fetchPlaceData = async (): Promise<void> => {
  await Promise.all([suggestZone(0, 0), magneticNorth(0, 0, Date.now())]);
};

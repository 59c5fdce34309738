import starsAddress from 'virtual:stars';
import { type StarCatalogue, unpackStars } from '../../../core/sky/star-catalogue.ts';

/** How long the stars may take to come, milliseconds. */
const patienceMilliseconds = 60_000;

/** The stars of the sky; null where they can’t be had: offline before they were ever here. */
export const fetchStars = async (): Promise<StarCatalogue | null> => {
  try {
    const response = await fetch(starsAddress, { signal: AbortSignal.timeout(patienceMilliseconds) });
    return response.ok ? unpackStars(new Uint8Array(await response.arrayBuffer())) : null;
  } catch {
    return null;
  }
};

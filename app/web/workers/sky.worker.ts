import starsAddress from 'virtual:stars';
import { type StarCatalogue, unpackStars } from '../../../core/sky/star-catalogue.ts';
import { skyPicture } from '../../../core/trace/sky-picture.ts';
import { withFourth } from '../../../core/trace/with-fourth.ts';
import type { SkyAnswer, SkyRequest } from './sky-messages.ts';

let stars: StarCatalogue | null = null;

/** How long the stars may take to come, milliseconds. */
const patienceMilliseconds = 60_000;

const answer = (message: SkyAnswer, transfer: Transferable[] = []): void => self.postMessage(message, { transfer });

const fetchStars = async (): Promise<void> => {
  try {
    const response = await fetch(starsAddress, { signal: AbortSignal.timeout(patienceMilliseconds) });
    if (response.ok) stars = unpackStars(new Uint8Array(await response.arrayBuffer()));
  } catch {
    // offline before they were ever here: the sky has none
  }
  answer({ kind: 'stars', count: stars?.count ?? 0 });
};

self.onmessage = ({ data }: MessageEvent<SkyRequest>) => {
  if (data.kind === 'fetch-stars') {
    fetchStars();
    return;
  }
  try {
    const values = withFourth(skyPicture({ view: data.view, ...data.size }, data.sky, stars));
    answer({ kind: 'drawn', id: data.id, values }, [values.buffer]);
  } catch {
    answer({ kind: 'failed', id: data.id });
  }
};

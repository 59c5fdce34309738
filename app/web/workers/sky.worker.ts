import type { StarCatalogue } from '../../../core/sky/star-catalogue.ts';
import { skyPicture } from '../../../core/trace/sky-picture.ts';
import { withFourth } from '../../../core/trace/with-fourth.ts';
import type { SkyAnswer, SkyRequest } from './sky-messages.ts';
import { fetchStars } from './stars.ts';

let stars: StarCatalogue | null = null;

const answer = (message: SkyAnswer, transfer: Transferable[] = []): void => self.postMessage(message, { transfer });

const takeStars = async (): Promise<void> => {
  // without them the sky has none
  stars = (await fetchStars()) ?? stars;
  answer({ kind: 'stars', count: stars?.count ?? 0 });
};

self.onmessage = ({ data }: MessageEvent<SkyRequest>) => {
  if (data.kind === 'fetch-stars') {
    void takeStars();
    return;
  }
  try {
    const values = withFourth(skyPicture({ view: data.view, ...data.size }, data.sky, stars));
    answer({ kind: 'drawn', id: data.id, values }, [values.buffer]);
  } catch {
    answer({ kind: 'failed', id: data.id });
  }
};

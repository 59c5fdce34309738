import type { StarCatalogue } from '../../../core/sky/star-catalogue.ts';
import { OrderedPictures } from '../../../core/trace/ordered-pictures.ts';
import type { DrawnStep } from '../../../core/trace/picture-order.ts';
import type { Stage } from '../../../core/world/stage.ts';
import type { SlowPictureAnswer, SlowPictureRequest } from './slow-picture-messages.ts';
import { fetchStars } from './stars.ts';

/** How long it works before it looks whether something else is wanted, milliseconds. */
const workMilliseconds = 30;

const pictures = new OrderedPictures();
let stage: Stage | null = null;
let stars: StarCatalogue | null = null;
let [hasAskedForStars, areStarsComing] = [false, false];
let wanted: SlowPictureRequest | null = null;
/** Counts what is begun, so that what was begun before gives up. */
let begun = 0;

/** Lets messages that came meanwhile be heard. */
const pause = () => new Promise<void>((resolve) => setTimeout(resolve));

const seesSky = ({ order }: SlowPictureRequest): boolean =>
  order.pictures.some(({ shown }) =>
    shown.frames.some(({ frame }) => frame.lights.some(({ source }) => source.kind === 'seen-sky')),
  );

/** A picture without its stars is not done while they are on their way. */
const send = (id: number, { pictures: drawn, samples, progress }: DrawnStep): void => {
  const answer: SlowPictureAnswer = {
    id,
    step: { pictures: drawn, samples, progress: Math.min(progress, areStarsComing ? 0.99 : 1) },
  };
  const parts = drawn.flatMap(({ bytes, linear, against }) => [bytes, linear, against]);
  self.postMessage(answer, { transfer: parts.flatMap((part) => (part ? [part.buffer] : [])) });
};

const askForStars = async (): Promise<void> => {
  areStarsComing = true;
  stars = await fetchStars();
  areStarsComing = false;
  // their light was spread over the sky until now
  await drawWanted();
};

const drawWanted = async (): Promise<void> => {
  const request = wanted;
  if (!request || !stage) return;
  if (!hasAskedForStars && seesSky(request)) {
    hasAskedForStars = true;
    void askForStars();
  }
  const own = ++begun;
  let since = performance.now();
  for (const step of pictures.draw({ stage, ...request.order }, () => stars)) {
    if (step) send(request.id, step);
    if (!step && performance.now() - since < workMilliseconds) continue;
    await pause();
    if (own !== begun) return;
    since = performance.now();
  }
};

self.onmessage = ({ data }: MessageEvent<SlowPictureRequest>) => {
  stage = data.stage ?? stage;
  wanted = data;
  drawWanted().catch((error) => {
    // an error that nobody hears would leave the page waiting
    setTimeout(() => {
      throw error;
    });
  });
};

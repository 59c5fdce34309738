import type { StarCatalogue } from '../../../core/sky/star-catalogue.ts';
import { OrderedPictures } from '../../../core/trace/ordered-pictures.ts';
import type { DrawnStep, PictureOrder } from '../../../core/trace/picture-order.ts';
import type { Stage } from '../../../core/world/stage.ts';
import type { SlowPictureAnswer, SlowPictureRequest } from './slow-picture-messages.ts';
import { fetchStars } from './stars.ts';

/** How long it works before it looks whether something else is wanted, milliseconds. */
const workMilliseconds = 30;
/** How often it says that it is at work, milliseconds. */
const wordMilliseconds = 5000;
/** How long after a vain try stars are asked for again, milliseconds. */
const retryMilliseconds = 30_000;

const pictures = new OrderedPictures();
let stage: Stage | null = null;
let stars: StarCatalogue | null = null;
let areStarsComing = false;
let askedForStars = Number.NEGATIVE_INFINITY;
let wanted: SlowPictureRequest | null = null;
/** Counts what is begun, so that what was begun before gives up. */
let begun = 0;

/** Lets messages that came meanwhile be heard. */
const pause = () => new Promise<void>((resolve) => setTimeout(resolve));

const answer = (message: SlowPictureAnswer, transfer: Transferable[] = []): void =>
  self.postMessage(message, { transfer });

const seesSky = (order: Omit<PictureOrder, 'stage'>): boolean =>
  order.pictures.some(({ shown }) =>
    shown.frames.some(({ frame }) => frame.lights.some(({ source }) => source.kind === 'seen-sky')),
  );

/** A picture without its stars is not done while they are on their way. */
const send = (id: number, { pictures: drawn, samples, progress }: DrawnStep): void => {
  const step = { pictures: drawn, samples, progress: Math.min(progress, areStarsComing ? 0.99 : 1) };
  const parts = drawn.flatMap(({ bytes, linear, against }) => [bytes, linear, against]);
  answer(
    { kind: 'step', id, step },
    parts.flatMap((part) => (part ? [part.buffer] : [])),
  );
};

const askForStars = async (): Promise<void> => {
  areStarsComing = true;
  askedForStars = performance.now();
  stars = await fetchStars();
  areStarsComing = false;
  // their light was spread over the sky until now
  drawWanted();
};

const drawSteps = async (id: number, order: PictureOrder, isWanted: () => boolean): Promise<void> => {
  let since = performance.now();
  let lastWord = since;
  for (const step of pictures.draw(order, () => stars)) {
    const now = performance.now();
    if (step) send(id, step);
    else if (now - since < workMilliseconds) continue;
    else if (now - lastWord > wordMilliseconds) {
      answer({ kind: 'at work', id });
      lastWord = now;
    }
    await pause();
    if (!isWanted()) return;
    since = performance.now();
  }
};

/** Begins what is wanted; an error that nobody hears would leave the page waiting. */
const drawWanted = (): void => {
  const own = ++begun;
  if (!wanted?.order || !stage) return;
  const { id, order } = wanted;
  const isDue = performance.now() - askedForStars > retryMilliseconds;
  if (!stars && !areStarsComing && isDue && seesSky(order)) void askForStars();
  drawSteps(id, { stage, ...order }, () => own === begun).catch(() => answer({ kind: 'failed', id }));
};

self.onmessage = ({ data }: MessageEvent<SlowPictureRequest>) => {
  stage = data.stage ?? stage;
  wanted = data;
  drawWanted();
};

import type { SkyAnswer, SkyRequest } from '../workers/sky-messages.ts';

type Values = Float32Array<ArrayBuffer>;
type Order = Omit<Extract<SkyRequest, { kind: 'draw' }>, 'kind' | 'id'>;

interface Waiting {
  readonly resolve: (values: Values) => void;
  readonly reject: (error: Error) => void;
}

/** Workers that may be lost before skies are no longer drawn by one. */
const mostLost = 2;
/** How long after a vain try stars are asked for again, milliseconds. */
const retryMilliseconds = 30_000;

/**
 * Draws skies in a worker, which fetches the stars once a picture is on a screen. A worker that is lost is replaced, its
 * drawing fails; stars that did not come are asked for again later.
 *
 * @param firstPicture the worker is not started before that: the first picture has the machine to itself
 */
export const skyWorkerDrawer = (firstPicture?: Promise<unknown>) => {
  const waiting = new Map<number, Waiting>();
  const listeners: (() => void)[] = [];
  let worker: Worker | null = null;
  let [asked, lost, areStarsThere, isComplete] = [0, 0, false, false];
  let askedForStars = Number.NEGATIVE_INFINITY;

  const take = (id: number): Waiting | undefined => {
    const found = waiting.get(id);
    waiting.delete(id);
    return found;
  };
  const failAll = (): void => {
    for (const id of [...waiting.keys()]) take(id)?.reject(new Error('the sky could not be drawn'));
  };
  const starsSettled = (areThere: boolean): void => {
    areStarsThere = areThere;
    isComplete = true;
    for (const tell of listeners) tell();
  };
  const onMessage = ({ data }: MessageEvent<SkyAnswer>): void => {
    if (data.kind === 'drawn') take(data.id)?.resolve(data.values);
    else if (data.kind === 'failed') take(data.id)?.reject(new Error('the sky could not be drawn'));
    else starsSettled(data.count > 0);
  };
  const lose = (gone: Worker): void => {
    gone.terminate();
    if (worker !== gone) return;
    worker = null;
    lost++;
    askedForStars = Number.NEGATIVE_INFINITY;
    failAll();
    starsSettled(false);
  };
  const start = (): Worker => {
    const started = new Worker(new URL('../workers/sky.worker.ts', import.meta.url), { type: 'module' });
    started.onmessage = onMessage;
    started.onerror = () => lose(started);
    started.onmessageerror = () => lose(started);
    return started;
  };
  const ask = (request: SkyRequest): void => {
    worker ??= start();
    worker.postMessage(request);
  };
  return {
    draw: (order: Order): Promise<Values> =>
      new Promise((resolve, reject) => {
        const start = () => {
          if (lost >= mostLost) return reject(new Error('no worker draws skies'));
          const id = ++asked;
          waiting.set(id, { resolve, reject });
          ask({ kind: 'draw', id, ...order });
        };
        if (firstPicture) void firstPicture.then(start);
        else start();
      }),
    get isComplete() {
      return isComplete;
    },
    pictureShown: (): void => {
      if (areStarsThere || lost >= mostLost || performance.now() - askedForStars < retryMilliseconds) return;
      askedForStars = performance.now();
      ask({ kind: 'fetch-stars' });
    },
    onMore: (listener: () => void): void => {
      listeners.push(listener);
    },
  };
};

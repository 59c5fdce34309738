import type { SkyAnswer, SkyRequest } from '../workers/sky-messages.ts';

type Values = Float32Array<ArrayBuffer>;
type Order = Omit<Extract<SkyRequest, { kind: 'draw' }>, 'kind' | 'id'>;

interface Waiting {
  readonly resolve: (values: Values) => void;
  readonly reject: (error: Error) => void;
}

/** Draws skies in a worker, which fetches the stars once a picture is on a screen. */
export const skyWorkerDrawer = () => {
  const waiting = new Map<number, Waiting>();
  const listeners: (() => void)[] = [];
  let worker: Worker | null = null;
  let [asked, areStarsAsked, isComplete] = [0, false, false];

  const take = (id: number): Waiting | undefined => {
    const found = waiting.get(id);
    waiting.delete(id);
    return found;
  };
  const onMessage = ({ data }: MessageEvent<SkyAnswer>): void => {
    if (data.kind === 'drawn') take(data.id)?.resolve(data.values);
    else if (data.kind === 'failed') take(data.id)?.reject(new Error('the sky could not be drawn'));
    else {
      isComplete = true;
      for (const tell of listeners) tell();
    }
  };
  const start = (): Worker => {
    const started = new Worker(new URL('../workers/sky.worker.ts', import.meta.url), { type: 'module' });
    started.onmessage = onMessage;
    started.onerror = () => {
      started.terminate();
      isComplete = true;
      for (const id of [...waiting.keys()]) take(id)?.reject(new Error('the sky could not be drawn'));
    };
    return started;
  };
  const ask = (request: SkyRequest): void => {
    worker ??= start();
    worker.postMessage(request);
  };
  return {
    draw: (order: Order): Promise<Values> =>
      new Promise((resolve, reject) => {
        const id = ++asked;
        waiting.set(id, { resolve, reject });
        ask({ kind: 'draw', id, ...order });
      }),
    get isComplete() {
      return isComplete;
    },
    pictureShown: (): void => {
      if (areStarsAsked) return;
      areStarsAsked = true;
      ask({ kind: 'fetch-stars' });
    },
    onMore: (listener: () => void): void => {
      listeners.push(listener);
    },
  };
};

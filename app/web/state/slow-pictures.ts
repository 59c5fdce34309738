import type { DrawnStep, PictureOrder } from '../../../core/trace/picture-order.ts';
import type { SlowPictureAnswer, SlowPictureRequest } from '../workers/slow-picture-messages.ts';

/** Workers that may be lost over one order before it is given up. */
const mostLost = 2;
/** How long a worker may be silent before it counts as lost, milliseconds: at work, it says so every few seconds. */
const mostSilentMilliseconds = 120_000;

interface Present {
  readonly order: PictureOrder;
  readonly onStep: (step: DrawnStep) => void;
  readonly onFail: () => void;
}

/**
 * Draws pictures by the processor, in a worker. The newest order takes the place of those before. A worker that is lost, or
 * says nothing, is started anew once and asked again.
 */
export const slowPictureWorker = () => {
  let worker: Worker | null = null;
  let [asked, lost, sentStage] = [0, 0, ''];
  let present: Present | null = null;
  let silence: ReturnType<typeof setTimeout> | undefined;

  const listen = (to: Worker): void => {
    clearTimeout(silence);
    silence = setTimeout(() => lose(to), mostSilentMilliseconds);
  };
  const forget = (): void => {
    clearTimeout(silence);
    worker?.terminate();
    [worker, sentStage] = [null, ''];
  };
  const lose = (gone: Worker): void => {
    if (worker !== gone) return;
    forget();
    lost++;
    if (lost < mostLost) send();
    else present?.onFail();
  };
  const start = (): Worker => {
    const started = new Worker(new URL('../workers/slow-picture.worker.ts', import.meta.url), { type: 'module' });
    started.onmessage = ({ data }: MessageEvent<SlowPictureAnswer>) => {
      if (worker !== started || data.id !== asked || !present) return;
      if (data.kind === 'failed') lose(started);
      else listen(started);
      if (data.kind !== 'step') return;
      if (data.step.progress >= 1) clearTimeout(silence);
      present.onStep(data.step);
    };
    started.onerror = () => lose(started);
    started.onmessageerror = () => lose(started);
    return started;
  };
  const send = (): void => {
    if (!present) return;
    const { stage, ...order } = present.order;
    try {
      worker ??= start();
      listen(worker);
      worker.postMessage({
        id: ++asked,
        stage: stage.key === sentStage ? null : stage,
        order,
      } satisfies SlowPictureRequest);
      sentStage = stage.key;
    } catch {
      // the browser gives no worker, or can’t send it so much
      forget();
      present.onFail();
    }
  };
  return {
    /** Has an order drawn step by step; `onFail` when it can’t be. */
    draw: (order: PictureOrder, onStep: (step: DrawnStep) => void, onFail: () => void): void => {
      present = { order, onStep, onFail };
      lost = 0;
      send();
    },
    /** Nothing is wanted just now: the worker is idle, and keeps what it has traced. */
    stop: (): void => {
      present = null;
      clearTimeout(silence);
      worker?.postMessage({ id: ++asked, stage: null, order: null } satisfies SlowPictureRequest);
    },
    /** Nothing more is wanted: the worker ends, and with it what it keeps. */
    end: (): void => {
      present = null;
      forget();
    },
  };
};

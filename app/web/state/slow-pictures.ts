import type { DrawnStep, PictureOrder } from '../../../core/trace/picture-order.ts';
import type { SlowPictureAnswer, SlowPictureRequest } from '../workers/slow-picture-messages.ts';

/** Workers that may be lost over one order before it is given up. */
const mostLost = 2;

/**
 * Draws pictures by the processor, in a worker. The newest order takes the place of those before. A worker that is lost is
 * started anew once and asked again.
 */
export const slowPictureWorker = () => {
  let worker: Worker | null = null;
  let asked = 0;
  let lost = 0;
  let sentStage = '';
  let present: { readonly order: PictureOrder; readonly onStep: (step: DrawnStep) => void; onFail: () => void } | null =
    null;
  const onMessage = ({ data }: MessageEvent<SlowPictureAnswer>): void => {
    if (data.id === asked) present?.onStep(data.step);
  };
  const lose = (gone: Worker): void => {
    gone.terminate();
    if (worker !== gone) return;
    [worker, sentStage] = [null, ''];
    lost++;
    if (lost < mostLost) send();
    else present?.onFail();
  };
  const start = (): Worker => {
    const started = new Worker(new URL('../workers/slow-picture.worker.ts', import.meta.url), { type: 'module' });
    started.onmessage = onMessage;
    started.onerror = () => lose(started);
    return started;
  };
  const send = (): void => {
    if (!present) return;
    worker ??= start();
    const { stage, ...order } = present.order;
    const request: SlowPictureRequest = { id: ++asked, stage: stage.key === sentStage ? null : stage, order };
    sentStage = stage.key;
    worker.postMessage(request);
  };
  return {
    /** Has an order drawn step by step; `onFail` when it can’t be. */
    draw: (order: PictureOrder, onStep: (step: DrawnStep) => void, onFail: () => void): void => {
      present = { order, onStep, onFail };
      lost = 0;
      send();
    },
    /** Nothing more is wanted: the worker ends, and with it what it keeps. */
    end: (): void => {
      worker?.terminate();
      [worker, present, sentStage] = [null, null, ''];
    },
  };
};

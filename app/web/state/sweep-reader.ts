import type { Setup } from '../../../core/setup/schema/setup.ts';
import type { SweepCell } from '../../../core/sweep/cell.ts';
import type { PassPlace } from '../../../core/sweep/pass-at.ts';
import { withoutKnownFiles } from '../workers/request-parts.ts';
import type { CellAnswer, CellReading, CellRequest } from '../workers/sweep-messages.ts';
import { stageKeyOf } from './stage-key.ts';

/** Reads one cell of a sweep; fails when it can't be worked out. */
export type CellReader = (setup: Setup, place: PassPlace, cell: SweepCell) => Promise<CellReading>;

interface Waiting {
  readonly resolve: (reading: CellReading) => void;
  readonly reject: (why: Error) => void;
}

/** Reads cells in a worker of its own, which is started with the first question. */
export const readerInWorker = (): CellReader => {
  const waiting = new Map<number, Waiting>();
  let worker: Worker | null = null;
  let asked = 0;
  let sent: Setup | null = null;
  const start = (): Worker => {
    const started = new Worker(new URL('../workers/sweep.worker.ts', import.meta.url), { type: 'module' });
    started.onmessage = ({ data: { id, reading, cautions } }: MessageEvent<CellAnswer>) => {
      waiting.get(id)?.resolve({ reading, cautions });
      waiting.delete(id);
    };
    started.onerror = () => {
      for (const { reject } of waiting.values()) reject(new Error('a cell could not be read'));
      waiting.clear();
      // the next question begins afresh
      started.terminate();
      [worker, sent] = [null, null];
    };
    return started;
  };
  return (setup, place, cell) => {
    worker ??= start();
    const request: CellRequest = {
      id: ++asked,
      stageKey: stageKeyOf(setup),
      ...withoutKnownFiles(setup, sent),
      schemeIds: [place.schemeId],
      place,
      cell,
    };
    worker.postMessage(request);
    sent = setup;
    return new Promise((resolve, reject) => waiting.set(request.id, { resolve, reject }));
  };
};

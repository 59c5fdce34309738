import type { Setup } from '../../../core/setup/schema/setup.ts';
import type { SweepCell } from '../../../core/sweep/cell.ts';
import type { PassPlace } from '../../../core/sweep/pass-at.ts';
import { withoutKnownFiles } from '../workers/request-parts.ts';
import type { CellAnswer, CellReading, CellRequest } from '../workers/sweep-messages.ts';
import { askedWorker } from './asked-worker.ts';
import { stageKeyOf } from './stage-key.ts';

/** Reads one cell of a sweep; fails when it can't be worked out. */
export type CellReader = (setup: Setup, place: PassPlace, cell: SweepCell) => Promise<CellReading>;

/** Reads cells in a worker of its own, one after the other; it is started with the first question. */
export const readerInWorker = (): CellReader => {
  const worker = askedWorker<CellAnswer>(
    () => new Worker(new URL('../workers/sweep.worker.ts', import.meta.url), { type: 'module' }),
  );
  let sent: Setup | null = null;
  let before: Promise<unknown> = Promise.resolve();
  const read: CellReader = (setup, place, cell) =>
    new Promise((resolve, reject) => {
      worker.ask({
        request: (id, isNew): CellRequest => {
          const files = withoutKnownFiles(setup, isNew ? null : sent);
          sent = setup;
          return { id, stageKey: stageKeyOf(setup), ...files, schemeIds: [place.schemeId], place, cell };
        },
        onAnswer: ({ reading, cautions }) => resolve({ reading, cautions }),
        onFail: () => reject(new Error('a cell could not be read')),
      });
    });
  return (...question) => {
    // a sweep that was given up may still have its last cell read
    const reading = before.then(() => read(...question));
    before = reading.catch(() => undefined);
    return reading;
  };
};

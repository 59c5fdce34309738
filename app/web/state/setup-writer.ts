import type { Connection } from '../storage/connection.ts';
import type { PreparedWrite } from '../storage/prepare-write.ts';
import { StorageProblem } from '../storage/storage-problem.ts';
import { within } from '../storage/within.ts';
import { type WriteOutcome, writeSetup } from '../storage/write-setup.ts';
import type { KeepAnswer, KeepRequest } from '../workers/keep-messages.ts';

/** Writes a setup to the store. Fails with a StorageProblem. */
export type SetupWriter = (write: PreparedWrite) => Promise<WriteOutcome>;

/** The part of a worker that is used; tests have their own. */
export type KeepWorker = Pick<Worker, 'postMessage' | 'onmessage' | 'onerror'>;

const startWorker = (): KeepWorker =>
  new Worker(new URL('../workers/keep.worker.ts', import.meta.url), { type: 'module' });

/** How long the worker may be silent, in milliseconds: longer than it waits for the store itself. */
const mostMilliseconds = 30_000;

type Check = (write: PreparedWrite) => void;
const loadCheck = async (): Promise<Check> => (await import('../storage/refuse-unreadable.ts')).refuseUnreadable;

let hurry: (check: null) => void = () => undefined;
const isLeaving = new Promise<null>((resolve) => {
  hurry = resolve;
});

/** The page may be gone in a moment: what is kept late may be lost, so no write waits for its check any more. */
export const hurryWrites = (): void => hurry(null);

/** Writes by way of the page's own connection. */
export const directWriter = (connection: Connection, load = loadCheck): SetupWriter => {
  let check: Check | null = null;
  const checkThatComes = async (): Promise<Check | null> => {
    check = await load().catch(() => null);
    return check;
  };
  return async (write) => {
    const ready = check ?? (await Promise.race([checkThatComes(), isLeaving]));
    ready?.(write);
    return connection.use((database) => writeSetup(database, write));
  };
};

/** Writes in a worker, so that a busy page holds up nothing; where there can be no worker, in the page. */
export const workerWriter = (direct: SetupWriter, start: () => KeepWorker = startWorker): SetupWriter => {
  const waiting = new Map<number, (answer: KeepAnswer | null) => void>();
  let worker: KeepWorker | null = null;
  let asked = 0;
  try {
    worker = start();
    worker.onmessage = ({ data }: MessageEvent<KeepAnswer>) => waiting.get(data.id)?.(data);
    worker.onerror = () => {
      worker = null;
      for (const answer of waiting.values()) answer(null);
    };
  } catch {
    // refused by the browser
  }
  return async (write) => {
    if (!worker) return direct(write);
    const id = ++asked;
    const request: KeepRequest = { id, write };
    worker.postMessage(request);
    const answering = new Promise<KeepAnswer | null>((resolve) => {
      waiting.set(id, resolve);
    });
    const answer = await within(mostMilliseconds, answering)
      .catch((problem) => {
        // one that was ended says nothing either: the next write does without it
        worker = null;
        throw problem;
      })
      .finally(() => waiting.delete(id));
    if (!answer) return direct(write);
    if ('problem' in answer) throw new StorageProblem(answer.problem);
    return answer.outcome;
  };
};

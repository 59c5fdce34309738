import type { PackedScan } from '../../../core/scan/scan-code.ts';
import { maxFileBytes, maxSeconds } from '../scans/limits.ts';
import type { Placing } from '../scans/place-scan.ts';
import { ScanError } from '../scans/scan-error.ts';
import type { ScanSummary } from '../scans/summarize-scan.ts';
import type { ScanAnswer, ScanRequest } from '../workers/scan-messages.ts';

/**
 * Reads one file in a worker of its own, which holds the mesh until it is closed; one that breaks down is replaced once. All
 * that fails, fails with a ScanError.
 */
export interface ScanReader {
  /** What is in the file. */
  readonly summary: Promise<ScanSummary>;
  /** Its size when it is placed so: [east to west, north to south, height]. */
  readonly measure: (placing: Placing) => Promise<PackedScan['sizeMetres']>;
  /** The scan for the document when it is placed so. */
  readonly pack: (placing: Placing) => Promise<PackedScan>;
  /** Ends the worker at once. What is still awaited fails with `isStopped`. */
  readonly close: () => void;
}

/** The part of a worker that is used; tests have their own. */
export type ScanWorker = Pick<Worker, 'postMessage' | 'terminate' | 'onmessage' | 'onerror' | 'onmessageerror'>;

const startWorker = (): ScanWorker =>
  new Worker(new URL('../workers/scan.worker.ts', import.meta.url), { type: 'module' });

interface Waiting {
  readonly request: ScanRequest;
  readonly resolve: (value: never) => void;
  readonly reject: (why: ScanError) => void;
  readonly timer: ReturnType<typeof setTimeout>;
}

const stopped = 'Reading it was stopped';
/** Whether reading failed because it was closed. */
export const isStopped = (error: unknown): boolean => error instanceof ScanError && error.message === stopped;

/**
 * Starts to read a file.
 *
 * @param onProgress told in a few words what is being done
 * @param seconds how long each answer may take
 */
export const readScanFile = (
  file: File,
  onProgress: (words: string) => void,
  start: () => ScanWorker = startWorker,
  seconds = maxSeconds,
): ScanReader => {
  const waiting = new Map<number, Waiting>();
  let worker: ScanWorker | null = null;
  let ended: string | null = null;
  let asked = 0;
  let isSecond = false;
  /** The second worker reads the file: until it has, it can answer nothing else. */
  let isReadingAgain = false;
  const end = (why: string) => {
    ended ??= why;
    worker?.terminate();
    worker = null;
    for (const { reject, timer } of waiting.values()) {
      clearTimeout(timer);
      reject(new ScanError(why));
    }
    waiting.clear();
  };
  const take = (id: number): Waiting | undefined => {
    const entry = waiting.get(id);
    clearTimeout(entry?.timer);
    waiting.delete(id);
    return entry;
  };
  const settle = (id: number, value: unknown) => take(id)?.resolve(value as never);
  const fail = (id: number, why: string) => take(id)?.reject(new ScanError(why));
  const hear = (answer: ScanAnswer) => {
    if (answer.kind === 'progress') onProgress(answer.words);
    else if (answer.kind === 'read') {
      settle(0, answer.summary);
      if (isReadingAgain) for (const { request } of waiting.values()) worker?.postMessage(request);
      isReadingAgain = false;
    } else if (answer.kind === 'measured') settle(answer.id, answer.sizeMetres);
    else if (answer.kind === 'packed') settle(answer.id, answer.scan);
    else if (answer.id === 0) end(answer.why);
    else fail(answer.id, answer.why);
  };
  const ask = <T>(id: number, request: ScanRequest): Promise<T> => {
    if (!worker) return Promise.reject(new ScanError(ended ?? stopped));
    const late = () => end(`It took longer than ${seconds} seconds and was given up; a smaller file may do`);
    const asking = new Promise<T>((resolve, reject) => {
      waiting.set(id, { request, resolve, reject, timer: setTimeout(late, seconds * 1000) });
    });
    if (!isReadingAgain) worker.postMessage(request);
    return asking;
  };
  const begin = () => {
    const own = start();
    own.onmessage = ({ data }: MessageEvent<ScanAnswer>) => {
      if (own === worker) hear(data);
    };
    const broke = () => {
      if (own === worker) breakDown();
    };
    own.onerror = broke;
    own.onmessageerror = broke;
    worker = own;
  };
  /** Another one reads the file once more, and is then asked what is still awaited. */
  const breakDown = () => {
    if (isSecond) return end('It could not be read; there may not be enough memory');
    worker?.terminate();
    [isSecond, isReadingAgain] = [true, true];
    begin();
    worker?.postMessage({ kind: 'read', file } satisfies ScanRequest);
  };
  if (file.size > maxFileBytes)
    ended = `It has ${(file.size / 1e6).toFixed(0)} MB; at most ${maxFileBytes / 1e6} MB are read`;
  else begin();
  return {
    summary: ask(0, { kind: 'read', file }),
    measure: (placing) => {
      const id = ++asked;
      return ask(id, { kind: 'measure', id, placing });
    },
    pack: (placing) => {
      const id = ++asked;
      return ask(id, { kind: 'pack', id, placing });
    },
    close: () => end(stopped),
  };
};

import { afterEach, describe, expect, it, vi } from 'vitest';
import {
  directWriter,
  hurryWrites,
  type KeepWorker,
  type SetupWriter,
  workerWriter,
} from '../../../../app/web/state/setup-writer.ts';
import { Connection } from '../../../../app/web/storage/connection.ts';
import { prepareWrite } from '../../../../app/web/storage/prepare-write.ts';
import { ScanKeys } from '../../../../app/web/storage/scan-keys.ts';
import type { KeepAnswer, KeepRequest } from '../../../../app/web/workers/keep-messages.ts';
import { freshBrowser, stones } from './tabs.ts';

const write = prepareWrite({
  key: 'k',
  setup: stones(),
  scanKeys: new ScanKeys(),
  follows: [],
  revision: 'r',
  sampleId: null,
  changedAt: 1,
});

/** A worker that answers as it is told. */
const worker = (answer: (request: KeepRequest) => KeepAnswer | 'broken' | null): KeepWorker => {
  const made: KeepWorker = {
    onmessage: null,
    onerror: null,
    postMessage: (request: KeepRequest) => {
      // as the browser sends it
      const told = answer(structuredClone(request));
      if (told === 'broken') queueMicrotask(() => made.onerror?.call(made as never, {} as ErrorEvent));
      else if (told)
        queueMicrotask(() => made.onmessage?.call(made as never, { data: told } as MessageEvent<KeepAnswer>));
    },
  };
  return made;
};
const never: SetupWriter = () => Promise.reject(new Error('not to be used'));

describe('workerWriter', () => {
  afterEach(() => void vi.useRealTimers());

  it('hands writes to the worker and its answers back, each to its own', async () => {
    const writer = workerWriter(never, () =>
      worker(({ id, write: sent }) => ({ id, outcome: sent.key === 'k' ? 'kept' : 'overtaken' })),
    );
    expect(await Promise.all([writer(write), writer({ ...write, key: 'other' })])).toEqual(['kept', 'overtaken']);
  });

  it('fails with the worker’s problem', async () => {
    const writer = workerWriter(never, () => worker(({ id }) => ({ id, problem: 'full' })));
    await expect(writer(write)).rejects.toMatchObject({ name: 'StorageProblem', kind: 'full' });
  });

  it.each([
    ['can’t be started', true],
    ['breaks', false],
  ])('writes in the page where the worker %s', async (_, throws) => {
    const direct = vi.fn<SetupWriter>(async () => 'kept');
    const writer = workerWriter(direct, () => {
      if (throws) throw new DOMException('no', 'SecurityError');
      return worker(() => 'broken');
    });
    expect(await writer(write)).toBe('kept');
    expect(await writer(write)).toBe('kept');
    expect(direct).toHaveBeenCalledTimes(2);
  });

  it('does not wait for ever; after that it writes in the page', async () => {
    vi.useFakeTimers();
    const direct = vi.fn<SetupWriter>(async () => 'kept');
    const writer = workerWriter(direct, () => worker(() => null));
    const writing = expect(writer(write)).rejects.toMatchObject({ kind: 'hangs' });
    await vi.advanceTimersByTimeAsync(31_000);
    await writing;
    expect(direct).not.toHaveBeenCalled();
    expect(await writer(write)).toBe('kept');
  });
});

describe('directWriter', () => {
  it('waits for what checks a write, until the page is left: then the first is kept without, and later ones are checked', async () => {
    freshBrowser();
    const connection = new Connection();
    const refuse = vi.fn(() => {
      throw new Error('can’t be read back');
    });
    await expect(directWriter(connection, async () => refuse)(write)).rejects.toThrow('can’t be read back');
    let come: (check: () => void) => void = () => undefined;
    const late = directWriter(
      connection,
      () =>
        new Promise((resolve) => {
          come = resolve;
        }),
    );
    let isKept = false;
    const writing = late(write).then((outcome) => {
      isKept = true;
      return outcome;
    });
    await new Promise((resolve) => setTimeout(resolve, 20));
    expect(isKept).toBe(false);
    hurryWrites();
    expect(await writing).toBe('kept');
    come(refuse);
    await Promise.resolve();
    await Promise.resolve();
    await expect(late({ ...write, key: 'other' })).rejects.toThrow('can’t be read back');
    connection.close();
  });
});

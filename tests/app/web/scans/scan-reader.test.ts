import { describe, expect, it } from 'vitest';
import { ScanError } from '../../../../app/web/scans/scan-error.ts';
import { isStopped, readScanFile, type ScanWorker } from '../../../../app/web/state/scan-reader.ts';
import type { ScanAnswer, ScanRequest } from '../../../../app/web/workers/scan-messages.ts';

const placing = { unit: 'm', upAxis: 'y', turnDegrees: 0 } as const;
const file = new File(['v'], 'a.obj');
const failed = async (promise: Promise<unknown>): Promise<ScanError> => {
  const error = await promise.then(
    () => null,
    (thrown) => thrown,
  );
  expect(error).toBeInstanceOf(ScanError);
  return error as ScanError;
};

/** A worker that does what the test says. */
const fakeWorker = () => {
  const asked: ScanRequest[] = [];
  const state = { ended: false };
  const worker: ScanWorker = {
    onmessage: null,
    onerror: null,
    onmessageerror: null,
    postMessage: (request: ScanRequest) => asked.push(request),
    terminate: () => {
      state.ended = true;
    },
  };
  const say = (answer: ScanAnswer) => worker.onmessage?.call(worker as Worker, { data: answer } as MessageEvent);
  const breakDown = () => worker.onerror?.call(worker as Worker, {} as ErrorEvent);
  return { worker, asked, say, breakDown, state };
};

/** A reader whose first worker has read the file; another stands by. */
const readByTwo = () => {
  const [one, two] = [fakeWorker(), fakeWorker()];
  const workers = [one.worker, two.worker];
  const reader = readScanFile(
    file,
    () => {},
    () => workers.shift() as ScanWorker,
  );
  one.say({ kind: 'read', summary: { triangleCount: 1 } as never });
  return { one, two, reader };
};

describe('readScanFile', () => {
  it('asks for the file, passes progress on, and answers what is asked of it by number', async () => {
    const { worker, asked, say } = fakeWorker();
    const words: string[] = [];
    const reader = readScanFile(
      file,
      (w) => words.push(w),
      () => worker,
    );
    expect(asked).toEqual([{ kind: 'read', file }]);
    say({ kind: 'progress', words: 'Reading the file' });
    say({ kind: 'read', summary: { triangleCount: 1 } as never });
    expect(await reader.summary).toEqual({ triangleCount: 1 });
    const [first, second] = [reader.measure(placing), reader.pack(placing)];
    say({ kind: 'packed', id: 2, scan: { data: 'x' } as never });
    say({ kind: 'measured', id: 1, sizeMetres: [1, 2, 3] });
    expect([await first, await second, words]).toEqual([[1, 2, 3], { data: 'x' }, ['Reading the file']]);
  });

  it('fails with the worker’s reason and ends it; one question that fails ends nothing', async () => {
    const one = fakeWorker();
    const reader = readScanFile(
      file,
      () => {},
      () => one.worker,
    );
    one.say({ kind: 'read', summary: {} as never });
    const packing = reader.pack(placing);
    one.say({ kind: 'failed', id: 1, why: 'It would be 9000 m long' });
    expect((await failed(packing)).message).toBe('It would be 9000 m long');
    expect(one.state.ended).toBe(false);
    const other = fakeWorker();
    const broken = readScanFile(
      file,
      () => {},
      () => other.worker,
    );
    other.say({ kind: 'failed', id: 0, why: 'It holds no corners' });
    expect((await failed(broken.summary)).message).toBe('It holds no corners');
    expect(other.state.ended).toBe(true);
    expect((await failed(broken.pack(placing))).message).toBe('It holds no corners');
  });

  it('has another read the file where the worker breaks down, and asks it what is still awaited', async () => {
    const { one, two, reader } = readByTwo();
    expect(await reader.summary).toEqual({ triangleCount: 1 });
    const packing = reader.pack(placing);
    one.breakDown();
    expect(one.state.ended).toBe(true);
    expect(two.asked).toEqual([{ kind: 'read', file }]);
    // what the one before still says is not heard
    one.say({ kind: 'packed', id: 1, scan: { data: 'late' } as never });
    two.say({ kind: 'read', summary: { triangleCount: 1 } as never });
    expect(two.asked.slice(1)).toEqual([{ kind: 'pack', id: 1, placing }]);
    two.say({ kind: 'packed', id: 1, scan: { data: 'x' } as never });
    expect(await packing).toEqual({ data: 'x' });
  });

  it('keeps what is asked while another reads the file again, and asks it once when it has', async () => {
    const { one, two, reader } = readByTwo();
    one.breakDown();
    const measuring = reader.measure(placing);
    expect(two.asked).toEqual([{ kind: 'read', file }]);
    two.say({ kind: 'read', summary: { triangleCount: 1 } as never });
    const packing = reader.pack(placing);
    expect(two.asked.slice(1)).toEqual([
      { kind: 'measure', id: 1, placing },
      { kind: 'pack', id: 2, placing },
    ]);
    two.say({ kind: 'measured', id: 1, sizeMetres: [1, 2, 3] });
    two.say({ kind: 'packed', id: 2, scan: { data: 'x' } as never });
    expect([await measuring, await packing]).toEqual([[1, 2, 3], { data: 'x' }]);
  });

  it('says so when that breaks down too, and when it is closed', async () => {
    const one = fakeWorker();
    const reader = readScanFile(
      file,
      () => {},
      () => one.worker,
    );
    one.breakDown();
    one.breakDown();
    const error = await failed(reader.summary);
    expect(error.message).toContain('memory');
    expect([isStopped(error), one.state.ended]).toEqual([false, true]);
    const other = fakeWorker();
    const closed = readScanFile(
      file,
      () => {},
      () => other.worker,
    );
    closed.close();
    expect([isStopped(await failed(closed.summary)), other.state.ended]).toEqual([true, true]);
  });

  it('gives up after the time that is allowed', async () => {
    const { worker, state } = fakeWorker();
    const reader = readScanFile(
      file,
      () => {},
      () => worker,
      0.05,
    );
    expect((await failed(reader.summary)).message).toContain('took longer than 0.05 seconds');
    expect(state.ended).toBe(true);
  });

  it('refuses a file over 200 MB before it starts anything', async () => {
    const large = { name: 'a.glb', size: 200_000_001 } as File;
    const reader = readScanFile(
      large,
      () => {},
      () => {
        throw new Error('started');
      },
    );
    expect((await failed(reader.summary)).message).toBe('It has 200 MB; at most 200 MB are read');
  });
});

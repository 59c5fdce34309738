import { afterEach, describe, expect, it, vi } from 'vitest';
import { askedWorker } from '../../../app/web/state/asked-worker.ts';

type Answer = { readonly id: number; readonly text: string };

/** A worker that does what the test says. */
const fakeWorker = () => ({
  onmessage: null as ((event: { data: Answer }) => void) | null,
  onerror: null as (() => void) | null,
  onmessageerror: null as (() => void) | null,
  postMessage: vi.fn<(request: { id: number; isNew: boolean }) => void>(),
  terminate: vi.fn(),
});

/** Asks of workers that come one after the other; where there is none left, starting one throws. */
const askedOf = (...workers: ReturnType<typeof fakeWorker>[]) => {
  const left = [...workers];
  const worker = askedWorker<Answer>(() => {
    const next = left.shift();
    if (!next) throw new DOMException('no', 'SecurityError');
    return next as unknown as Worker;
  });
  const [onAnswer, onFail] = [vi.fn(), vi.fn()];
  const ask = () => worker.ask({ request: (id, isNew) => ({ id, isNew }), onAnswer, onFail });
  return { worker, ask, onAnswer, onFail };
};

describe('askedWorker', () => {
  afterEach(() => void vi.useRealTimers());

  it('asks another where one is lost, telling it that it knows nothing; then the question fails', () => {
    const [one, two, three] = [fakeWorker(), fakeWorker(), fakeWorker()];
    const { worker, ask, onAnswer, onFail } = askedOf(one, two, three);
    ask();
    one.onerror?.();
    expect(two.postMessage).toHaveBeenCalledWith({ id: 2, isNew: true });
    two.onmessageerror?.();
    expect([one.terminate.mock.calls.length, onFail.mock.calls.length, worker.isBusy]).toEqual([1, 1, false]);
    ask();
    three.onmessage?.({ data: { id: 3, text: 'x' } });
    expect(onAnswer).toHaveBeenCalledWith({ id: 3, text: 'x' });
  });

  it('fails the question where no worker can be had in place of one that is lost; the next may have one', () => {
    const one = fakeWorker();
    const { worker, ask, onFail } = askedOf(one);
    ask();
    one.onerror?.();
    expect([onFail.mock.calls.length, worker.isBusy]).toEqual([1, false]);
    ask();
    expect([onFail.mock.calls.length, worker.isBusy]).toEqual([2, false]);
  });

  it('starting it early throws nothing where the browser gives no worker; the question tells', () => {
    const { worker, ask, onFail } = askedOf();
    expect(() => worker.start()).not.toThrow();
    expect(onFail).not.toHaveBeenCalled();
    ask();
    expect(onFail).toHaveBeenCalledTimes(1);
  });

  it('fails the question that can’t be sent, and waits for no answer to it', () => {
    vi.useFakeTimers();
    const [one, two] = [fakeWorker(), fakeWorker()];
    one.postMessage.mockImplementation(() => {
      throw new DOMException('too much', 'DataCloneError');
    });
    const { ask, onFail } = askedOf(one, two);
    ask();
    vi.advanceTimersByTime(300_000);
    expect([one.terminate.mock.calls.length, onFail.mock.calls.length]).toEqual([1, 1]);
    ask();
    expect(two.postMessage).toHaveBeenCalledWith({ id: 2, isNew: true });
  });
});

import { afterEach, describe, expect, it, vi } from 'vitest';
import { slowPictureWorker } from '../../../app/web/state/slow-pictures.ts';
import type { SlowPictureAnswer, SlowPictureRequest } from '../../../app/web/workers/slow-picture-messages.ts';
import type { DrawnStep, PictureOrder } from '../../../core/trace/picture-order.ts';

class FakeWorker {
  static isRefused = false;
  static readonly started: FakeWorker[] = [];
  readonly asked: SlowPictureRequest[] = [];
  onmessage: ((event: { data: SlowPictureAnswer }) => void) | null = null;
  onerror: (() => void) | null = null;
  onmessageerror: (() => void) | null = null;
  isEnded = false;
  constructor() {
    if (FakeWorker.isRefused) throw new DOMException('no', 'SecurityError');
    FakeWorker.started.push(this);
  }
  terminate() {
    this.isEnded = true;
  }
  postMessage(request: SlowPictureRequest) {
    this.asked.push(request);
  }
}
vi.stubGlobal('Worker', FakeWorker);
const newest = () => FakeWorker.started.at(-1) as FakeWorker;
const orderOn = (key: string): PictureOrder => ({
  stage: { key } as never,
  pictures: [],
  size: { width: 9, height: 6 },
  samples: 1,
});
const step: DrawnStep = { pictures: [], samples: 1, progress: 1 };

describe('slowPictureWorker', () => {
  afterEach(() => {
    vi.useRealTimers();
    FakeWorker.isRefused = false;
  });

  it('sends a stage once, and hears only what is answered to the newest order', () => {
    const drawer = slowPictureWorker();
    const steps: string[] = [];
    drawer.draw(orderOn('a'), () => steps.push('first'), vi.fn());
    drawer.draw(orderOn('a'), () => steps.push('second'), vi.fn());
    drawer.draw(orderOn('b'), () => steps.push('third'), vi.fn());
    const worker = newest();
    expect(worker.asked.map(({ stage }) => stage?.key ?? null)).toEqual(['a', null, 'b']);
    for (const { id } of worker.asked) worker.onmessage?.({ data: { kind: 'step', id, step } });
    expect(steps).toEqual(['third']);
    drawer.end();
    expect(worker.isEnded).toBe(true);
  });

  it('starts another worker once where one is lost, sends it everything, then gives the order up', () => {
    const drawer = slowPictureWorker();
    const [onStep, onFail] = [vi.fn(), vi.fn()];
    drawer.draw(orderOn('a'), onStep, onFail);
    const first = newest();
    first.onerror?.();
    expect(newest()).not.toBe(first);
    expect(newest().asked.map(({ stage }) => stage?.key)).toEqual(['a']);
    expect(onFail).not.toHaveBeenCalled();
    newest().onerror?.();
    expect(onFail).toHaveBeenCalledTimes(1);
    // the next order begins afresh
    drawer.draw(orderOn('a'), onStep, onFail);
    const { id, stage } = newest().asked[0] as SlowPictureRequest;
    expect(stage?.key).toBe('a');
    newest().onmessage?.({ data: { kind: 'step', id, step } });
    expect(onStep).toHaveBeenCalledTimes(1);
  });

  it.each([
    ['tells that it failed', (worker: FakeWorker, id: number) => worker.onmessage?.({ data: { kind: 'failed', id } })],
    ['sends what can’t be read', (worker: FakeWorker) => worker.onmessageerror?.()],
    ['says nothing for two minutes', () => void vi.advanceTimersByTime(121_000)],
  ])('counts a worker as lost that %s', (_, fail) => {
    vi.useFakeTimers();
    const drawer = slowPictureWorker();
    const onFail = vi.fn();
    drawer.draw(orderOn('a'), vi.fn(), onFail);
    const first = newest();
    fail(first, first.asked[0]?.id as number);
    expect([first.isEnded, newest() === first, onFail.mock.calls.length]).toEqual([true, false, 0]);
    fail(newest(), newest().asked[0]?.id as number);
    expect(onFail).toHaveBeenCalledTimes(1);
    vi.advanceTimersByTime(600_000);
    expect(onFail).toHaveBeenCalledTimes(1);
  });

  it('waits for one that says now and then that it is at work, and for none that is done or has nothing to do', () => {
    vi.useFakeTimers();
    const drawer = slowPictureWorker();
    const [onStep, onFail] = [vi.fn(), vi.fn()];
    drawer.draw(orderOn('a'), onStep, onFail);
    const worker = newest();
    const [{ id }] = worker.asked as [SlowPictureRequest];
    for (let n = 0; n < 10; n++) {
      vi.advanceTimersByTime(100_000);
      worker.onmessage?.({ data: { kind: 'at work', id } });
    }
    worker.onmessage?.({ data: { kind: 'step', id, step } });
    vi.advanceTimersByTime(600_000);
    drawer.draw(orderOn('a'), onStep, onFail);
    drawer.stop();
    vi.advanceTimersByTime(600_000);
    expect([worker.isEnded, onStep.mock.calls.length, onFail.mock.calls.length]).toEqual([false, 1, 0]);
    // what it had under way is called off, and what it still says is not heard
    expect(worker.asked.at(-1)).toMatchObject({ order: null, stage: null });
    worker.onmessage?.({ data: { kind: 'step', id: worker.asked.at(-1)?.id as number, step } });
    expect(onStep).toHaveBeenCalledTimes(1);
    drawer.draw(orderOn('a'), onStep, onFail);
    expect(worker.asked.at(-1)).toMatchObject({ stage: null, order: { samples: 1 } });
  });

  it('fails at once where the browser gives no worker, also in place of one that was lost', () => {
    const drawer = slowPictureWorker();
    const onFail = vi.fn();
    FakeWorker.isRefused = true;
    drawer.draw(orderOn('a'), vi.fn(), onFail);
    expect(onFail).toHaveBeenCalledTimes(1);
    FakeWorker.isRefused = false;
    drawer.draw(orderOn('a'), vi.fn(), onFail);
    FakeWorker.isRefused = true;
    newest().onerror?.();
    expect(onFail).toHaveBeenCalledTimes(2);
  });
});

import { describe, expect, it, vi } from 'vitest';
import { slowPictureWorker } from '../../../app/web/state/slow-pictures.ts';
import type { SlowPictureRequest } from '../../../app/web/workers/slow-picture-messages.ts';
import type { DrawnStep, PictureOrder } from '../../../core/trace/picture-order.ts';

class FakeWorker {
  static readonly started: FakeWorker[] = [];
  readonly asked: SlowPictureRequest[] = [];
  onmessage: ((event: { data: unknown }) => void) | null = null;
  onerror: (() => void) | null = null;
  isEnded = false;
  constructor() {
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
  it('sends a stage once, and hears only what is answered to the newest order', () => {
    const drawer = slowPictureWorker();
    const steps: string[] = [];
    drawer.draw(orderOn('a'), () => steps.push('first'), vi.fn());
    drawer.draw(orderOn('a'), () => steps.push('second'), vi.fn());
    drawer.draw(orderOn('b'), () => steps.push('third'), vi.fn());
    const worker = newest();
    expect(worker.asked.map(({ stage }) => stage?.key ?? null)).toEqual(['a', null, 'b']);
    for (const { id } of worker.asked) worker.onmessage?.({ data: { id, step } });
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
    newest().onmessage?.({ data: { id, step } });
    expect(onStep).toHaveBeenCalledTimes(1);
  });
});

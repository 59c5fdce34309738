import { afterEach, describe, expect, it, vi } from 'vitest';
import { skyWorkerDrawer } from '../../../app/web/state/sky-drawer.ts';
import type { SkyAnswer, SkyRequest } from '../../../app/web/workers/sky-messages.ts';

/** Workers that were started, in order. */
const workers: FakeWorker[] = [];
class FakeWorker {
  onmessage: ((event: { data: SkyAnswer }) => void) | null = null;
  onerror: (() => void) | null = null;
  onmessageerror: (() => void) | null = null;
  readonly asked: SkyRequest[] = [];
  isEnded = false;
  constructor() {
    workers.push(this);
  }
  postMessage(request: SkyRequest): void {
    this.asked.push(request);
  }
  terminate(): void {
    this.isEnded = true;
  }
  answer(data: SkyAnswer): void {
    this.onmessage?.({ data });
  }
}

const order = { view: {}, sky: {}, size: { width: 1, height: 1 } } as never;
const fresh = () => {
  workers.length = 0;
  vi.stubGlobal('Worker', FakeWorker);
  return skyWorkerDrawer();
};
const idOf = (worker: FakeWorker | undefined, n: number): number => {
  const request = worker?.asked[n];
  return request?.kind === 'draw' ? request.id : -1;
};

describe('skyWorkerDrawer', () => {
  afterEach(() => vi.unstubAllGlobals());

  it('gives each drawing its own answer, and fails one that could not be drawn', async () => {
    const drawer = fresh();
    const [first, second] = [drawer.draw(order), drawer.draw(order)];
    const values = new Float32Array([1, 2, 3, 4]);
    workers[0]?.answer({ kind: 'failed', id: idOf(workers[0], 0) });
    workers[0]?.answer({ kind: 'drawn', id: idOf(workers[0], 1), values });
    await expect(first).rejects.toThrow('could not be drawn');
    expect(await second).toBe(values);
    expect(workers).toHaveLength(1);
  });

  it('starts another worker after one was lost, and none after the second: drawings fail at once and nothing waits', async () => {
    const drawer = fresh();
    const first = drawer.draw(order);
    workers[0]?.onerror?.();
    await expect(first).rejects.toThrow();
    expect(workers[0]?.isEnded).toBe(true);
    expect(drawer.isComplete).toBe(true);
    const second = drawer.draw(order);
    expect(workers).toHaveLength(2);
    workers[1]?.onmessageerror?.();
    await expect(second).rejects.toThrow();
    await expect(drawer.draw(order)).rejects.toThrow('no worker');
    expect(workers).toHaveLength(2);
  });

  it('fetches the stars when a picture is shown, once, and tells when they are there', () => {
    const drawer = fresh();
    let told = 0;
    drawer.onMore(() => told++);
    drawer.pictureShown();
    drawer.pictureShown();
    expect(workers[0]?.asked.filter(({ kind }) => kind === 'fetch-stars')).toHaveLength(1);
    expect(drawer.isComplete).toBe(false);
    workers[0]?.answer({ kind: 'stars', count: 41_411 });
    expect([told, drawer.isComplete]).toEqual([1, true]);
    drawer.pictureShown();
    expect(workers[0]?.asked).toHaveLength(1);
  });

  it('asks for stars that did not come again, half a minute later', () => {
    vi.useFakeTimers({ toFake: ['performance'] });
    const drawer = fresh();
    drawer.pictureShown();
    workers[0]?.answer({ kind: 'stars', count: 0 });
    drawer.pictureShown();
    expect(workers[0]?.asked).toHaveLength(1);
    vi.advanceTimersByTime(31_000);
    drawer.pictureShown();
    expect(workers[0]?.asked).toHaveLength(2);
    vi.useRealTimers();
  });
});

import { readFileSync } from 'node:fs';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { useApp } from '../../../app/web/state/app-store.ts';
import { setFrameNumber } from '../../../app/web/state/edits/frame-edits.ts';
import { retryPlans, wantPlans } from '../../../app/web/state/plans.ts';
import { strategies } from '../../../app/web/workers/plans-messages.ts';
import { strategyPlan } from '../../../core/readings/strategy-plan.ts';
import type { Scheme, Setup } from '../../../core/setup/schema/setup.ts';

interface Asked {
  readonly id: number;
  readonly setup: Setup;
  readonly schemeIds: readonly string[];
  readonly scans: Setup['scans'] | null;
}

/** A worker that answers when it is told to. */
class SlowWorker {
  static readonly started: SlowWorker[] = [];
  readonly asked: Asked[] = [];
  onmessage: ((event: { data: unknown }) => void) | null = null;
  onerror: (() => void) | null = null;
  isEnded = false;
  constructor() {
    SlowWorker.started.push(this);
  }
  terminate() {
    this.isEnded = true;
  }
  postMessage(request: Asked) {
    this.asked.push(request);
  }
}
vi.stubGlobal('Worker', SlowWorker);

const newest = () => SlowWorker.started.at(-1) as SlowWorker;
const last = () => newest().asked.at(-1) as Asked;
const count = () => SlowWorker.started.reduce((sum, { asked }) => sum + asked.length, 0);
const answer = () => newest().onmessage?.({ data: { id: last().id, plans: [] } });
const present = () => useApp.getState().history.present;
const want = () => wantPlans(present(), 'side');
const iso = (value: number) =>
  useApp.getState().edit((s) => setFrameNumber(s, { schemeId: 'side', frameId: 'painted' }, 'iso', value));

describe('wantPlans', () => {
  beforeEach(() => {
    useApp.getState().open({ ...present() });
    want();
    for (let n = -1; n !== count(); ) {
      n = count();
      answer();
    }
  });

  it('has one question at a time, and always the newest next', () => {
    iso(500);
    want();
    const before = count();
    for (const value of [640, 800, 1000]) {
      iso(value);
      want();
    }
    expect(count()).toBe(before);
    answer();
    expect(count()).toBe(before + 1);
    expect(last().schemeIds).toEqual(['side']);
    const [scheme] = last().setup.schemes.filter(({ id }) => id === 'side') as [Scheme];
    expect(scheme.frames.find(({ id }) => id === 'painted')?.iso).toBe(1000);
    answer();
    expect(count()).toBe(before + 1);
  });

  it('asks once for the same, however often it is wanted; again for another document of the same name', () => {
    const before = count();
    want();
    want();
    expect(count()).toBe(before);
    useApp.getState().open(present());
    want();
    expect(count()).toBe(before + 1);
  });

  it('ends a worker that fails and asks another once, who is sent everything; then not again, unless told to', () => {
    iso(500);
    want();
    const failing = newest();
    const started = SlowWorker.started.length;
    failing.onerror?.();
    want();
    expect(failing.isEnded).toBe(true);
    expect(SlowWorker.started).toHaveLength(started + 1);
    expect(last().scans).toEqual([]);
    newest().onerror?.();
    want();
    expect(SlowWorker.started).toHaveLength(started + 1);
    retryPlans();
    expect(SlowWorker.started).toHaveLength(started + 2);
    newest().onerror?.();
    newest().onerror?.();
    expect(SlowWorker.started).toHaveLength(started + 3);
    iso(640);
    want();
    expect(SlowWorker.started).toHaveLength(started + 4);
    expect(last().scans).toEqual([]);
  });
});

describe('the worker', () => {
  it('answers with what core works out, in the order of the strategies', async () => {
    const posted: { id: number; plans: unknown }[] = [];
    const self = {
      onmessage: null as ((event: { data: unknown }) => void) | null,
      postMessage: posted.push.bind(posted),
    };
    vi.stubGlobal('self', self);
    await import('../../../app/web/workers/plans.worker.ts');
    const setup = present();
    self.onmessage?.({
      data: { id: 7, stageKey: 1, setup, measuredBeams: setup.measuredBeams, scans: setup.scans, schemeIds: ['side'] },
    });
    const scheme = setup.schemes.find(({ id }) => id === 'side') as Scheme;
    expect(posted).toEqual([{ id: 7, plans: strategies.map((each) => strategyPlan(setup, scheme, each)) }]);
  });

  it('is the only one on the page that works plans out before one is taken', () => {
    const rows = readFileSync(new URL('../../../app/web/approach/Approaches.tsx', import.meta.url), 'utf8');
    expect(rows).not.toContain('strategyPlan(');
  });
});

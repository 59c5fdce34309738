import { beforeEach, describe, expect, it, vi } from 'vitest';
import { useApp } from '../../../app/web/state/app-store.ts';
import { setFrameNumber } from '../../../app/web/state/edits/frame-edits.ts';
import { startMarks, useMarksStore } from '../../../app/web/state/marks.ts';
import { useNightRun } from '../../../app/web/state/night-run.ts';
import { retryReports, startReports, useReports } from '../../../app/web/state/reports.ts';
import { useSession } from '../../../app/web/state/session.ts';
import { useSweeps } from '../../../app/web/state/sweeps.ts';

/** A worker that answers when it is told to. */
class SlowWorker {
  static readonly started: SlowWorker[] = [];
  readonly asked: { id: number; schemeIds: string[]; setup: { id: string } }[] = [];
  onmessage: ((event: { data: unknown }) => void) | null = null;
  onerror: (() => void) | null = null;
  isEnded = false;
  constructor() {
    SlowWorker.started.push(this);
  }
  terminate() {
    this.isEnded = true;
  }
  postMessage(request: SlowWorker['asked'][number]) {
    this.asked.push(request);
  }
}
vi.stubGlobal('Worker', SlowWorker);
startReports();
startMarks();
let [reports, marks] = SlowWorker.started as [SlowWorker, SlowWorker];
/** The worker that was started in the place of one that failed. */
const newest = () => SlowWorker.started.at(-1) as SlowWorker;
const last = (worker: SlowWorker) => worker.asked.at(-1) as SlowWorker['asked'][number];
const answerMarks = () => {
  const { id, schemeIds } = last(marks);
  marks.onmessage?.({ data: { id, schemeId: schemeIds[0], marks: { shadows: [], outlines: [], blurs: [] } } });
};
const answerReports = (name: string) => {
  const { id, schemeIds } = last(reports);
  reports.onmessage?.({ data: { id, reports: schemeIds.map((each) => ({ id: each, name })) } });
};

const stones = useApp.getState().history.present;
const other = { ...stones, id: 'other' };
const marked = () => Object.keys(useMarksStore.getState().byScheme);

describe('while a night is run', () => {
  it('reports are not asked for with each pass that is noted; afterwards they are, once', () => {
    answerReports('of the stones');
    useNightRun.setState({ isOpen: true });
    const before = reports.asked.length;
    for (const note of ['a', 'b']) useApp.getState().edit((setup) => ({ ...setup, note }));
    expect(reports.asked.length).toBe(before);
    useNightRun.setState({ isOpen: false });
    expect(reports.asked.length).toBe(before + 1);
    expect(last(reports).setup).toMatchObject({ note: 'b' });
    // a scheme that has no report yet has one made, so that it has a card
    answerReports('of the stones');
    useNightRun.setState({ isOpen: true });
    useReports.setState({ byScheme: {} });
    useApp.getState().edit((setup) => ({ ...setup, note: 'c' }));
    expect(reports.asked.length).toBe(before + 2);
    useNightRun.setState({ isOpen: false });
  });
});

describe('answers that come late', () => {
  beforeEach(() => {
    useSession.setState({ room: 'viewfinder' });
    useSession.getState().mark('shadows', false);
    useApp.getState().open(stones);
    // whatever the test before left under way
    for (let n = -1; n !== reports.asked.length + marks.asked.length; ) {
      n = reports.asked.length + marks.asked.length;
      answerReports('of the stones');
      if (marks.asked.length > 0) answerMarks();
    }
  });

  it('reports of another document are dropped, though its schemes are called the same, and the present one is asked for', () => {
    expect(useReports.getState().byScheme['side']?.name).toBe('of the stones');
    useApp.getState().edit((s) => setFrameNumber(s, { schemeId: 'side', frameId: 'painted' }, 'iso', 800));
    expect(last(reports).setup.id).toBe(stones.id);
    useApp.getState().open(other);
    // those of the stones are gone at once, and do not come back
    expect(useReports.getState().byScheme).toEqual({});
    answerReports('late');
    expect(useReports.getState().byScheme).toEqual({});
    expect(last(reports).setup.id).toBe('other');
    answerReports('of the other');
    expect(useReports.getState().byScheme['side']?.name).toBe('of the other');
  });

  it('two places of one’s own are called the same and are not taken for each other', () => {
    const [mine, next] = [
      { ...stones, id: 'new-setup' },
      { ...stones, id: 'new-setup', name: 'Another place' },
    ];
    useApp.getState().open(mine);
    answerReports('of mine');
    useSession.getState().mark('shadows', true);
    answerMarks();
    expect(useReports.getState().byScheme['side']?.name).toBe('of mine');
    expect(marked()).toEqual(['side']);
    // and one more question is under way
    useApp.getState().edit((s) => setFrameNumber(s, { schemeId: 'side', frameId: 'painted' }, 'iso', 800));
    useApp.getState().open(next);
    expect(useReports.getState().byScheme).toEqual({});
    expect(marked()).toEqual([]);
    answerReports('late');
    answerMarks();
    expect(useReports.getState().byScheme).toEqual({});
    expect(marked()).toEqual([]);
    answerReports('of the next');
    answerMarks();
    expect(useReports.getState().byScheme['side']?.name).toBe('of the next');
    expect(marked()).toEqual(['side']);
  });

  it('the very same document taken up again while it is being read is read again', () => {
    const once = { ...stones };
    useApp.getState().open(once);
    useApp.getState().open(once);
    answerReports('of the first time');
    expect(useReports.getState().byScheme).toEqual({});
    answerReports('of the second time');
    expect(useReports.getState().byScheme['side']?.name).toBe('of the second time');
  });

  it('a sweep of one place of one’s own does not stay for the next', () => {
    useApp.getState().open({ ...stones, id: 'new-setup' });
    useSweeps.setState({ openId: 'a-cell' });
    useApp.getState().edit((s) => ({ ...s, note: 'x' }));
    expect(useSweeps.getState().openId).toBe('a-cell');
    useApp.getState().open({ ...stones, id: 'new-setup' });
    expect(useSweeps.getState().openId).toBeNull();
  });

  it('marks of another document are dropped', () => {
    useSession.getState().mark('shadows', true);
    expect(last(marks)).toMatchObject({ schemeIds: ['side'], setup: { id: stones.id } });
    useApp.getState().open(other);
    answerMarks();
    expect(marked()).toEqual([]);
    expect(last(marks).setup.id).toBe('other');
    answerMarks();
    expect(marked()).toEqual(['side']);
  });

  it('a scheme whose marks fail loses its own alone; the others are gone on with, and it is asked again with the next change', () => {
    useSession.setState({ room: 'compare' });
    useSession.getState().mark('shadows', true);
    answerMarks();
    const before = [...marked()];
    expect(before).toEqual(['side']);
    const failing = last(marks).schemeIds[0] as string;
    expect(failing).not.toBe('side');
    marks.onerror?.();
    expect(marks.isEnded).toBe(true);
    // another is asked the same once
    marks = newest();
    expect(last(marks).schemeIds).toEqual([failing]);
    marks.onerror?.();
    expect(useMarksStore.getState().failed).toBe(true);
    marks = newest();
    expect(marked()).toEqual(['side']);
    // no endless loop: the rest is asked for once each
    const rest = new Set<string>();
    for (let n = marks.asked.length; ; n = marks.asked.length) {
      rest.add(last(marks).schemeIds[0] as string);
      answerMarks();
      if (marks.asked.length === n) break;
    }
    expect(rest.has(failing)).toBe(false);
    expect(new Set([...marked(), failing])).toEqual(new Set(stones.schemes.map(({ id }) => id)));
    useSession.setState({ showsUnlit: false });
    expect(last(marks).schemeIds).toEqual([failing]);
    answerMarks();
    expect(marked()).toContain(failing);
  });
});

describe('a worker that fails', () => {
  const iso = (value: number) =>
    useApp.getState().edit((s) => setFrameNumber(s, { schemeId: 'side', frameId: 'painted' }, 'iso', value));

  it('leaves nothing waiting: what was changed meanwhile is asked of another, which is sent everything', () => {
    useApp.getState().open({ ...stones });
    useSession.setState({ room: 'viewfinder' });
    answerReports('');
    iso(500);
    const asked = reports.asked.length;
    iso(640);
    expect(reports.asked).toHaveLength(asked);
    const question = last(reports);
    reports.onerror?.();
    expect(reports.isEnded).toBe(true);
    expect(newest()).not.toBe(reports);
    reports = newest();
    // asked the same again; one that was ended knows no beams and no scans: null would stand for those sent before
    expect(last(reports)).toMatchObject({ setup: question.setup, measuredBeams: [], scans: [] });
    expect(useReports.getState().failed).toBe(false);
    reports.onerror?.();
    expect(useReports.getState()).toMatchObject({ byScheme: {}, failed: true });
    reports = newest();
    expect(last(reports)).toMatchObject({ measuredBeams: [], scans: [] });
    expect(last(reports).setup).not.toEqual(question.setup);
    answerReports('after');
    expect(useReports.getState()).toMatchObject({ byScheme: { side: { name: 'after' } }, failed: false });
  });

  it('is not asked the same a third time, or a setup that can’t be read would start workers without end', () => {
    iso(800);
    const started = SlowWorker.started.length;
    newest().onerror?.();
    newest().onerror?.();
    expect(SlowWorker.started).toHaveLength(started + 1);
    expect(useReports.getState().failed).toBe(true);
    retryReports();
    expect(useReports.getState().failed).toBe(false);
    expect(SlowWorker.started).toHaveLength(started + 2);
    newest().onerror?.();
    newest().onerror?.();
    iso(1000);
    expect(SlowWorker.started).toHaveLength(started + 4);
    reports = newest();
    answerReports('');
  });

  it('that says nothing for two minutes counts as lost too, and a late word of it is not heard', () => {
    vi.useFakeTimers();
    iso(1250);
    const silent = reports;
    const { id, schemeIds } = last(silent);
    vi.advanceTimersByTime(119_000);
    expect(silent.isEnded).toBe(false);
    vi.advanceTimersByTime(2000);
    expect(silent.isEnded).toBe(true);
    vi.useRealTimers();
    reports = newest();
    expect(reports).not.toBe(silent);
    silent.onmessage?.({ data: { id, reports: schemeIds.map((each) => ({ id: each, name: 'late' })) } });
    expect(useReports.getState().byScheme['side']?.name).not.toBe('late');
    answerReports('in time');
    expect(useReports.getState().byScheme['side']?.name).toBe('in time');
  });
});

describe('schemes on screen', () => {
  it('one that is laid over another without being ticked is asked for too; what is no scheme is not', () => {
    useApp.getState().open({ ...stones, id: 'pairs' });
    answerReports('');
    useSession.setState({ room: 'compare', comparedIds: ['side'], pair: null });
    while (last(reports).schemeIds.join() !== 'side') answerReports('');
    answerReports('');
    useSession.setState({ pair: { kind: 'wipe', a: 'back', b: ':unlit' } });
    expect(last(reports).schemeIds).toEqual(['side', 'back']);
  });
});

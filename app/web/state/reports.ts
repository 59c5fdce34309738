import { create } from 'zustand';
import type { SchemeReport } from '../../../core/cautions/setup-report.ts';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import type { ReportAnswer, ReportRequest } from '../workers/report-messages.ts';
import { withoutKnownFiles } from '../workers/request-parts.ts';
import { useApp } from './app-store.ts';
import { documentKeyOf } from './document-key.ts';
import { useNightRun } from './night-run.ts';
import { schemesOnScreen, useSession } from './session.ts';
import { stageKeyOf } from './stage-key.ts';

/** Readings and cautions as last worked out, by scheme id. They trail the setup by a few hundredths of a second. */
export const useReports = create<{
  readonly byScheme: Readonly<Record<string, SchemeReport>>;
  readonly failed: boolean;
}>(() => ({
  byScheme: {},
  failed: false,
}));

/** The report of the scheme on screen, if there is one yet. */
export const useReport = (): SchemeReport | undefined => {
  const schemeId = useApp((state) => state.schemeId);
  return useReports((state) => state.byScheme[schemeId]);
};

/**
 * Starts the worker that reads setups; one question at a time, always the newest. One that fails is ended, whether it came
 * upon a setup that it can't read or could not be loaded at all; the next question begins afresh with another.
 */
export const startReports = (): void => {
  let worker: Worker | null = null;
  let asked = 0;
  /** What the worker is at. */
  let pending: { readonly id: number; readonly documentKey: string } | null = null;
  let sent: Setup | null = null;
  let documentKey = '';
  let last: { setup: Setup; schemeIds: readonly string[] } | null = null;
  const start = (): Worker => {
    const started = new Worker(new URL('../workers/report.worker.ts', import.meta.url), { type: 'module' });
    started.onmessage = ({ data }: MessageEvent<ReportAnswer>) => {
      const isOfPresent = pending?.id === data.id && pending.documentKey === documentKeyOf(useApp.getState());
      pending = null;
      if (isOfPresent) {
        if (asked === 1) performance.mark('first readings');
        useReports.setState(({ byScheme }) => ({
          byScheme: { ...byScheme, ...Object.fromEntries(data.reports.map((report) => [report.id, report])) },
          failed: false,
        }));
      }
      ask();
    };
    started.onerror = () => {
      started.terminate();
      [worker, pending, sent] = [null, null, null];
      useReports.setState({ byScheme: {}, failed: true });
      // what was changed meanwhile waits for no further change; what failed is not asked again
      ask();
    };
    return started;
  };
  const ask = () => {
    const state = useApp.getState();
    const setup = state.history.present;
    // another document may use the same ids for its schemes
    if (documentKeyOf(state) !== documentKey) {
      documentKey = documentKeyOf(state);
      last = null;
      useReports.setState({ byScheme: {} });
    }
    // what is noted in the field changes no reading
    if (useNightRun.getState().isOpen && useReports.getState().byScheme[state.schemeId]) return;
    const schemeIds = schemesOnScreen();
    const isSame = last?.setup === setup && last.schemeIds.join() === schemeIds.join();
    if (pending || isSame) return;
    worker ??= start();
    last = { setup, schemeIds };
    pending = { id: ++asked, documentKey };
    const request: ReportRequest = {
      id: pending.id,
      stageKey: stageKeyOf(setup),
      ...withoutKnownFiles(setup, sent),
      schemeIds,
    };
    worker.postMessage(request);
    sent = setup;
  };
  useApp.subscribe(ask);
  useSession.subscribe(ask);
  useNightRun.subscribe(ask);
  ask();
};

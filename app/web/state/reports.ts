import { create } from 'zustand';
import type { SchemeReport } from '../../../core/cautions/setup-report.ts';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import type { ReportAnswer, ReportRequest } from '../workers/report-messages.ts';
import { withoutKnownBeams } from '../workers/request-parts.ts';
import { useApp } from './app-store.ts';
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

/** Starts the worker that reads setups; one question at a time, always the newest. */
export const startReports = (): void => {
  const worker = new Worker(new URL('../workers/report.worker.ts', import.meta.url), { type: 'module' });
  let asked = 0;
  let isBusy = false;
  let sentBeams: Setup['measuredBeams'] | null = null;
  let last: { setup: Setup; schemeIds: readonly string[] } | null = null;
  const ask = () => {
    const setup = useApp.getState().history.present;
    const schemeIds = schemesOnScreen();
    const isSame = last?.setup === setup && last.schemeIds.join() === schemeIds.join();
    if (isBusy || isSame) return;
    // another document may use the same ids for its schemes
    if (last && last.setup.id !== setup.id) useReports.setState({ byScheme: {} });
    last = { setup, schemeIds };
    isBusy = true;
    const request: ReportRequest = {
      id: ++asked,
      stageKey: stageKeyOf(setup),
      ...withoutKnownBeams(setup, sentBeams),
      schemeIds,
    };
    worker.postMessage(request);
    sentBeams = setup.measuredBeams;
  };
  worker.onmessage = ({ data }: MessageEvent<ReportAnswer>) => {
    isBusy = false;
    useReports.setState(({ byScheme }) => ({
      byScheme: { ...byScheme, ...Object.fromEntries(data.reports.map((report) => [report.id, report])) },
      failed: false,
    }));
    ask();
  };
  worker.onerror = () => {
    isBusy = false;
    sentBeams = null;
    useReports.setState({ byScheme: {}, failed: true });
  };
  useApp.subscribe(ask);
  useSession.subscribe(ask);
  ask();
};

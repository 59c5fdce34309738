import { create } from 'zustand';
import type { SchemeReport } from '../../../core/cautions/setup-report.ts';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import type { ReportAnswer, ReportRequest } from '../workers/report-messages.ts';
import { withoutKnownFiles } from '../workers/request-parts.ts';
import { useApp } from './app-store.ts';
import { askedWorker } from './asked-worker.ts';
import { documentKeyOf } from './document-key.ts';
import { useNightRun } from './night-run.ts';
import { schemesOnScreen } from './schemes-on-screen.ts';
import { useSession } from './session.ts';
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

let retry = (): void => undefined;

/** Asks once more for readings that could not be worked out. */
export const retryReports = (): void => retry();

/** Starts the worker that reads setups; one question at a time, always the newest. What fails is not asked again by itself. */
export const startReports = (): void => {
  const worker = askedWorker<ReportAnswer>(
    () => new Worker(new URL('../workers/report.worker.ts', import.meta.url), { type: 'module' }),
  );
  let sent: Setup | null = null;
  let documentKey = '';
  let last: { setup: Setup; schemeIds: readonly string[] } | null = null;
  let hasMarked = false;
  const take = ({ reports }: ReportAnswer, ofDocument: string) => {
    if (!hasMarked) performance.mark('first readings');
    hasMarked = true;
    if (ofDocument === documentKeyOf(useApp.getState()))
      useReports.setState(({ byScheme }) => ({
        byScheme: { ...byScheme, ...Object.fromEntries(reports.map((report) => [report.id, report])) },
        failed: false,
      }));
    ask();
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
    if (worker.isBusy || isSame) return;
    last = { setup, schemeIds };
    const ofDocument = documentKey;
    worker.ask({
      request: (id, isNew): ReportRequest => {
        const files = withoutKnownFiles(setup, isNew ? null : sent);
        sent = setup;
        return { id, stageKey: stageKeyOf(setup), ...files, schemeIds };
      },
      onAnswer: (answer) => take(answer, ofDocument),
      onFail: () => {
        useReports.setState({ byScheme: {}, failed: true });
        // what was changed meanwhile waits for no further change
        ask();
      },
    });
  };
  retry = () => {
    last = null;
    useReports.setState({ failed: false });
    ask();
  };
  useApp.subscribe(ask);
  useSession.subscribe(ask);
  useNightRun.subscribe(ask);
  ask();
};

import { useNightRun } from './night-run.ts';

/** Pages that the run lays over the plan, each a step of the browser’s history: a phone’s Back leads from the log to the run, and from there to the plan. */
type NightPage = 'run' | 'nights';

const pageOf = (state: unknown): NightPage | null => {
  const page = (state as { nightPage?: unknown } | null)?.nightPage;
  return page === 'run' || page === 'nights' ? page : null;
};

const show = (page: NightPage | null): void =>
  useNightRun.setState({ isOpen: page !== null, showsLog: page === 'nights' });

const lay = (page: NightPage): void => {
  history.pushState({ nightPage: page }, '');
  show(page);
};

/**
 * Opens the run over the plan.
 *
 * @param opener selector of what takes the focus again when one comes back
 */
export const openNightRun = (opener: string): void => {
  useNightRun.setState({ opener });
  lay('run');
};

export const openNights = (): void => lay('nights');

/** One step back, as the phone’s button does it: a count is stopped first. */
export const stepBack = (): void => {
  const { stopCounting, showsLog } = useNightRun.getState();
  if (stopCounting) stopCounting();
  else if (pageOf(history.state)) history.back();
  else show(showsLog ? 'run' : null);
};

/** Back to the plan, from wherever one is. */
export const leaveNightRun = (): void => {
  const page = pageOf(history.state);
  show(null);
  if (page) history.go(page === 'nights' ? -2 : -1);
};

const onStep = ({ state }: Pick<PopStateEvent, 'state'>): void => {
  const { stopCounting, isOpen } = useNightRun.getState();
  const page = pageOf(state);
  if (stopCounting && isOpen && page === null) {
    stopCounting();
    history.pushState({ nightPage: 'run' }, '');
    return;
  }
  show(page);
};

/** Follows the browser’s own steps back and on. */
export const watchNightPages = (): void => window.addEventListener('popstate', onStep);

import { useApp } from './app-store.ts';
import { pageBag } from './bag.ts';
import { readHints } from './hints.ts';
import { useLampPart } from './lamp-part.ts';
import { readLengths } from './lengths.ts';
import { useNightRun } from './night-run.ts';
import { useSession } from './session.ts';
import { useSharing } from './sharing.ts';
import { useSweeps } from './sweeps.ts';

/** Puts the stores as they were when the page was opened, with the first sample. Counts as another document taken up. */
export const startStoresOver = (): void => {
  const openings = useApp.getState().openings + 1;
  useApp.setState({ ...useApp.getInitialState(), openings }, true);
  useSession.setState(useSession.getInitialState(), true);
  // what is kept may have been cleared away meanwhile
  void pageBag.refresh();
  useLampPart.setState(useLampPart.getInitialState(), true);
  readHints();
  readLengths();
  useNightRun.setState(useNightRun.getInitialState(), true);
  useSharing.setState(useSharing.getInitialState(), true);
  useSweeps.setState(useSweeps.getInitialState(), true);
};

import type { Setup } from '../../../core/setup/schema/setup.ts';
import { useApp } from './app-store.ts';
import { pageSaving } from './page-saving.ts';

/**
 * Takes up a setup that came from outside (a file, a link) as a new one of the user's own: it is kept at once, beside all
 * others, whatever its id and name are. What was open before is kept too, and a step back in the history.
 */
export const openAsOwn = (setup: Setup): void => {
  pageSaving.documents.beginOwn(setup);
  useApp.getState().open(setup);
};

import type { Setup } from '../../../core/setup/schema/setup.ts';
import { useApp } from '../state/app-store.ts';
import { pageSaving } from '../state/page-saving.ts';

let wishes = 0;

/** Says how a setup that is about to be taken up is kept; without a word it is once it is changed. */
type Begin = (setup: Setup) => void;
export const asOwn: Begin = (setup) => pageSaving.documents.beginOwn(setup);
export const asSample =
  (id: string): Begin =>
  (setup) =>
    pageSaving.documents.beginSample(setup, id);

/**
 * Opens a setup when it is there, unless another was asked for since: what comes late does not replace what is newer.
 * Fails when it can't be fetched or read; nothing is opened then.
 *
 * @returns whether it was opened
 */
export const openNewest = async (load: () => Setup | Promise<Setup>, begin?: Begin): Promise<boolean> => {
  const wish = ++wishes;
  const setup = await load();
  if (wish !== wishes) return false;
  begin?.(setup);
  useApp.getState().open(setup);
  return true;
};

import type { Setup } from '../../../core/setup/schema/setup.ts';
import { useApp } from '../state/app-store.ts';

let wishes = 0;

/**
 * Opens a setup when it is there, unless another was asked for since: what comes late does not replace what is newer.
 * Fails when it can't be fetched or read; nothing is opened then.
 *
 * @returns whether it was opened
 */
export const openNewest = async (load: () => Setup | Promise<Setup>): Promise<boolean> => {
  const wish = ++wishes;
  const setup = await load();
  if (wish !== wishes) return false;
  useApp.getState().open(setup);
  return true;
};

import type { Setup } from '../../../core/setup/schema/setup.ts';
import { useApp } from './app-store.ts';

/** Makes an edit and says whether it changed anything: one may be refused, or find nothing to do. */
export const editTook = (change: (setup: Setup) => Setup): boolean => {
  const before = useApp.getState().history.present;
  useApp.getState().edit(change);
  return useApp.getState().history.present !== before;
};

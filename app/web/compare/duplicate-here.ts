import { useApp } from '../state/app-store.ts';
import { comparedSchemes, mostCompared } from '../state/compared-schemes.ts';
import { duplicateScheme } from '../state/edits/frame-edits.ts';
import { useSession } from '../state/session.ts';

/** Copies a scheme and makes the copy the present one. Where schemes are compared it stands beside its original. */
export const duplicateHere = (schemeId: string): void => {
  const { history, edit, chooseScheme } = useApp.getState();
  const { room, comparedIds, set } = useSession.getState();
  const before = history.present;
  const copy = duplicateScheme(before, schemeId);
  if (copy.setup === before) return;
  edit(() => copy.setup);
  chooseScheme(copy.schemeId);
  if (room !== 'compare') return;
  // where there are six already, the last makes room
  const others = comparedSchemes(before, comparedIds).flatMap(({ id }) => (id === schemeId ? [] : [id]));
  set({ comparedIds: [schemeId, copy.schemeId, ...others].slice(0, mostCompared) });
};

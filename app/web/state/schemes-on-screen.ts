import type { Scheme } from '../../../core/setup/schema/setup.ts';
import { useApp, useSetup } from './app-store.ts';
import { comparedSchemes, seenSchemes } from './compared-schemes.ts';
import { useSession } from './session.ts';

/** Ids of the schemes whose numbers are on screen: the present one, and those compared with it. */
export const schemesOnScreen = (): string[] => {
  const { history, schemeId } = useApp.getState();
  const { room, comparedIds, pair } = useSession.getState();
  if (room !== 'compare') return [schemeId];
  return [...new Set([schemeId, ...seenSchemes(history.present, comparedIds, pair).map(({ id }) => id)])];
};

/** The schemes that are compared now. */
export const useComparedSchemes = (): Scheme[] => {
  const setup = useSetup();
  const ids = useSession((state) => state.comparedIds);
  return comparedSchemes(setup, ids);
};

/** All schemes that the compare room shows. */
export const useSeenSchemes = (): Scheme[] => {
  const setup = useSetup();
  const ids = useSession((state) => state.comparedIds);
  const pair = useSession((state) => state.pair);
  return seenSchemes(setup, ids, pair);
};

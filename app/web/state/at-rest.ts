import type { Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import { useApp } from './app-store.ts';

type AppState = ReturnType<typeof useApp.getState>;

/** The setup as it was when the drag under way began, or as it is: what takes long to work out holds still under a hand. */
export const setupAtRest = ({ history }: Pick<AppState, 'history'>): Setup => history.gestureStart ?? history.present;

export const useSetupAtRest = (): Setup => useApp(setupAtRest);

/** The scheme on screen, the same way. */
export const useSchemeAtRest = (): Scheme => {
  const { schemes } = useSetupAtRest();
  const schemeId = useApp((state) => state.schemeId);
  return schemes.find(({ id }) => id === schemeId) ?? (schemes[0] as Scheme);
};

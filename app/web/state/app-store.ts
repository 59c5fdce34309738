import type { Frame, Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import { firstSample } from './samples.ts';
import { createAppStore } from './store.ts';

/** The one store of the page. It opens on the first sample. */
export const useApp = createAppStore(firstSample());

/** Selectors that several rooms share. */
export const useSetup = (): Setup => useApp((state) => state.history.present);

export const useScheme = (): Scheme =>
  useApp((state) => {
    const { schemes } = state.history.present;
    return schemes.find(({ id }) => id === state.schemeId) ?? (schemes[0] as Scheme);
  });

export const useFrame = (): Frame => {
  const scheme = useScheme();
  const frameId = useApp((state) => state.frameId);
  return scheme.frames.find(({ id }) => id === frameId) ?? (scheme.frames.at(-1) as Frame);
};

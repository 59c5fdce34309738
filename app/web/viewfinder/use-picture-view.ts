import { useMemo } from 'react';
import type { Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import { useApp, useScheme, useSetup } from '../state/app-store.ts';

/** What the viewfinder shows now: the present scheme, and the one compared with it. */
export const usePictureView = (): { setup: Setup; schemes: Scheme[]; frameId: string | null } => {
  const setup = useSetup();
  const scheme = useScheme();
  const compareId = useApp((state) => state.compareId);
  const frameId = useApp((state) => (state.showsBlend ? null : state.frameId));
  const schemes = useMemo(() => {
    const other = setup.schemes.find(({ id }) => id === compareId);
    return other ? [scheme, other] : [scheme];
  }, [setup, scheme, compareId]);
  return { setup, schemes, frameId };
};

import { useMemo } from 'react';
import type { Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import { useApp, useScheme, useSetup } from '../state/app-store.ts';

interface PictureView {
  readonly setup: Setup;
  readonly schemes: Scheme[];
  /** null for the blend. */
  readonly frameId: string | null;
  readonly marksFull: boolean;
}

/** What the viewfinder shows now: the present scheme, and the one compared with it. */
export const usePictureView = (): PictureView => {
  const setup = useSetup();
  const scheme = useScheme();
  const compareId = useApp((state) => state.compareId);
  const frameId = useApp((state) => (state.showsBlend ? null : state.frameId));
  const marksFull = useApp((state) => state.marksFull);
  const schemes = useMemo(() => {
    const other = setup.schemes.find(({ id }) => id === compareId);
    return other ? [scheme, other] : [scheme];
  }, [setup, scheme, compareId]);
  return { setup, schemes, frameId, marksFull };
};

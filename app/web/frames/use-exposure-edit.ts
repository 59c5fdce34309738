import type { Setup } from '../../../core/setup/schema/setup.ts';
import { useApp, useFrame, useScheme } from '../state/app-store.ts';
import { changeLikeFrames } from '../state/edits/compare-edits.ts';
import type { FramePlace } from '../state/edits/within.ts';
import { useComparedSchemes, useSession } from '../state/session.ts';

interface ExposureEdit {
  /** Schemes that it reaches; the present one is among them. */
  readonly schemeIds: readonly string[];
  /** Changes the present frame, and its like in those schemes, in one step. */
  readonly change: (edit: (setup: Setup, place: FramePlace) => Setup) => void;
}

/** Where a change of camera settings goes: to the present scheme, or to all that are compared while exposure is locked. */
export const useExposureEdit = (): ExposureEdit => {
  const scheme = useScheme();
  const frame = useFrame();
  const compared = useComparedSchemes();
  const isShared = useSession((state) => state.room === 'compare' && state.locksExposure);
  const { edit } = useApp.getState();
  const schemeIds = isShared ? [...new Set([scheme.id, ...compared.map(({ id }) => id)])] : [scheme.id];
  const place = { schemeId: scheme.id, frameId: frame.id };
  return { schemeIds, change: (change) => edit((setup) => changeLikeFrames(setup, place, schemeIds, change)) };
};

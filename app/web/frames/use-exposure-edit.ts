import type { Setup } from '../../../core/setup/schema/setup.ts';
import { useApp, useFrame, useScheme } from '../state/app-store.ts';
import { changeLikeFrames } from '../state/edits/compare-edits.ts';
import { shareCamera } from '../state/edits/place-edits.ts';
import type { FramePlace } from '../state/edits/within.ts';
import { useSeenSchemes } from '../state/schemes-on-screen.ts';
import { useSession } from '../state/session.ts';

type Change = (edit: (setup: Setup, place: FramePlace) => Setup) => void;

interface ExposureEdit {
  /** Schemes that it reaches; the present one is among them. */
  readonly schemeIds: readonly string[];
  /** Changes the present frame, and its like in those schemes, in one step. */
  readonly change: Change;
  /** The same where the schemes share a camera: focus means another place from elsewhere. */
  readonly changeFocus: Change;
}

/** Where a change of camera settings goes: to the present scheme, or to all that are seen while exposure is locked. */
export const useExposureEdit = (): ExposureEdit => {
  const scheme = useScheme();
  const frame = useFrame();
  const seen = useSeenSchemes();
  const isShared = useSession((state) => state.room === 'compare' && state.locksExposure);
  const { edit } = useApp.getState();
  const others = isShared ? seen.filter(({ id }) => id !== scheme.id) : [];
  const place = { schemeId: scheme.id, frameId: frame.id };
  const changeIn =
    (schemes: typeof others): Change =>
    (change) =>
      edit((setup) =>
        changeLikeFrames(
          setup,
          place,
          schemes.map(({ id }) => id),
          change,
        ),
      );
  return {
    schemeIds: [scheme.id, ...others.map(({ id }) => id)],
    change: changeIn(others),
    changeFocus: changeIn(others.filter((other) => shareCamera(scheme, other))),
  };
};

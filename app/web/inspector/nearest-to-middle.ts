import { type CameraView, projectPoint } from '../../../core/camera/camera-view.ts';
import type { StageSubject } from '../../../core/world/stage.ts';
import { boxOfPoints } from './box-of-points.ts';

/** The subject whose middle is nearest to the middle of the picture; the first one where all are behind the camera. */
export const nearestToMiddle = (view: CameraView, subjects: readonly StageSubject[]): StageSubject | undefined => {
  let [nearest, least] = [subjects[0], Number.POSITIVE_INFINITY];
  for (const subject of subjects) {
    const at = projectPoint(view, boxOfPoints(subject.points).middle);
    const off = at ? Math.hypot(at[0] - 0.5, at[1] - 0.5) : Number.POSITIVE_INFINITY;
    if (off < least) [nearest, least] = [subject, off];
  }
  return nearest;
};

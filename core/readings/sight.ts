import type { CameraView } from '../camera/camera-view.ts';
import type { Vec3 } from '../geometry/vec.ts';
import type { SurfacePoint } from '../trace/surface-point.ts';
import type { Stage } from '../world/stage.ts';
import type { Source } from '../world/world.ts';
import { type FaceLight, faceLight } from './face-light.ts';
import { type PatchLight, patchLight } from './patch-reading.ts';
import { patchView } from './patch-view.ts';
import { Recent } from './recent.ts';
import { type Silhouette, silhouetteOf } from './silhouette.ts';

/** How many outlines and metered lights a view keeps; a few megabytes. */
const mostOutlines = 12;
const mostLights = 24;
/** Points of a face for a level. */
const thinPoints = 40;

/**
 * What one camera sees of a stage, and the light of sources on it. None of it hangs on levels, gels or seconds, and the
 * outlines not even on lamps: it is kept from pass to pass, from scheme to scheme and from report to report.
 */
export class Sight {
  private readonly stage: Stage;
  private readonly view: CameraView;
  private readonly outlines = new Recent<Silhouette>(mostOutlines);
  private readonly faceLights = new Recent<FaceLight>(mostLights);
  private readonly thinFaceLights = new Recent<FaceLight>(mostLights);
  private readonly patches = new Recent<SurfacePoint[]>(1);
  private readonly patchLights = new Recent<PatchLight>(mostLights);

  constructor(stage: Stage, view: CameraView) {
    this.stage = stage;
    this.view = view;
  }

  silhouette(subject: number): Silhouette {
    return this.outlines.get(String(subject), () => silhouetteOf(this.stage, this.view, subject));
  }

  faceLight(subject: number, source: Source): FaceLight {
    const key = `${subject} ${JSON.stringify(source)}`;
    return this.faceLights.get(key, () => faceLight(this.stage, this.silhouette(subject).face, source));
  }

  /** The same at a few points, spread over all of the face: for a level, not for what varies over it. */
  thinFaceLight(subject: number, source: Source): FaceLight {
    const key = `${subject} ${JSON.stringify(source)}`;
    return this.thinFaceLights.get(key, () => {
      const { face } = this.silhouette(subject);
      const step = Math.max(Math.ceil(face.length / thinPoints), 1);
      return faceLight(
        this.stage,
        face.filter((_, i) => i % step === 0),
        source,
        1,
      );
    });
  }

  /** @param corners in order round the patch, world metres */
  patch(corners: readonly Vec3[]): readonly SurfacePoint[] {
    return this.patches.get(JSON.stringify(corners), () => patchView(this.stage, this.view, corners));
  }

  patchLight(corners: readonly Vec3[], source: Source): PatchLight {
    const key = JSON.stringify([corners, source]);
    return this.patchLights.get(key, () => patchLight(this.stage, this.patch(corners), source));
  }
}

/** Cameras that a stage remembers: those of schemes that are compared. */
const mostViews = 6;
const sights = new WeakMap<Stage, Recent<Sight>>();

/** The sight of a stage through a camera; the same one as long as both stay the same. */
export const sightOf = (stage: Stage, view: CameraView): Sight => {
  const known = sights.get(stage) ?? new Recent<Sight>(mostViews);
  sights.set(stage, known);
  return known.get(JSON.stringify(view), () => new Sight(stage, view));
};

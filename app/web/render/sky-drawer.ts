import type { CameraView } from '../../../core/camera/camera-view.ts';
import type { SeenSky } from '../../../core/sky/seen-sky.ts';
import { skyPicture } from '../../../core/trace/sky-picture.ts';
import { withFourth } from '../../../core/trace/with-fourth.ts';
import type { Size } from './layer-store.ts';

/** A sky as a camera sees it. */
export interface SkyView {
  readonly view: CameraView;
  readonly sky: SeenSky;
  readonly size: Size;
}

/** Draws skies, apart from the page if it can. */
export interface SkyDrawer {
  /** Four floats a pixel, rows from the top; as `skyPicture`, the fourth number 1. */
  draw(view: SkyView): Promise<Float32Array<ArrayBuffer>>;
  /** Whether it draws all that it will ever draw: false while stars are still on their way. */
  readonly isComplete: boolean;
  /** Told when the first picture is on a screen: what is large may be fetched now. */
  pictureShown(): void;
  /** Tells when it can draw more than before. */
  onMore(listener: () => void): void;
}

/** Draws here and now, without stars. */
export const plainSkyDrawer: SkyDrawer = {
  draw: async ({ view, sky, size }) => withFourth(skyPicture({ view, ...size }, sky, null)),
  isComplete: true,
  pictureShown: () => undefined,
  onMore: () => undefined,
};

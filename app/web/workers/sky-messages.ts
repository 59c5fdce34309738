import type { CameraView } from '../../../core/camera/camera-view.ts';
import type { SeenSky } from '../../../core/sky/seen-sky.ts';

export type SkyRequest =
  /** A sky as a camera sees it. */
  | {
      readonly kind: 'draw';
      readonly id: number;
      readonly view: CameraView;
      readonly sky: SeenSky;
      readonly size: { readonly width: number; readonly height: number };
    }
  /** Fetch the stars; until they are there, skies are drawn without. */
  | { readonly kind: 'fetch-stars' };

export type SkyAnswer =
  /** Four floats a pixel. */
  | { readonly kind: 'drawn'; readonly id: number; readonly values: Float32Array<ArrayBuffer> }
  | { readonly kind: 'failed'; readonly id: number }
  /** All stars are there, or none will come. */
  | { readonly kind: 'stars'; readonly count: number };

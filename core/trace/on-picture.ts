import type { CameraView } from '../camera/camera-view.ts';
import { dot, type Vec3 } from '../geometry/vec.ts';

/** A picture of a view, in pixels. */
export interface PictureFrame {
  readonly view: CameraView;
  readonly width: number;
  readonly height: number;
}

/** Where something far away falls: pixels from the left and top edge, and how much smaller a pixel there looks than in the middle. */
export interface PicturePlace {
  readonly x: number;
  readonly y: number;
  /** Cosine of the angle off the axis. */
  readonly cosine: number;
}

/** Place in the picture of something infinitely far away in a unit direction; null behind the lens and far out of the picture. */
export const placeOnPicture = ({ view, width, height }: PictureFrame, toward: Vec3): PicturePlace | null => {
  const cosine = dot(toward, view.forward);
  if (cosine < 0.01) return null;
  const x = ((dot(toward, view.right) / cosine / view.tanHalfWidth + 1) / 2) * width;
  const y = ((1 - dot(toward, view.up) / cosine / view.tanHalfHeight) / 2) * height;
  return { x, y, cosine };
};

/** Solid angle of a pixel of the picture, by the cosine of the angle off the axis. */
export const pixelSteradians = ({ view, width, height }: PictureFrame, cosine: number): number =>
  ((2 * view.tanHalfWidth) / width) * ((2 * view.tanHalfHeight) / height) * cosine ** 3;

import { type CameraView, cameraView } from '../../../core/camera/camera-view.ts';
import { luminanceOfLinearSrgb } from '../../../core/colour/srgb.ts';
import { dot, scale, type Vec3 } from '../../../core/geometry/vec.ts';
import { inputAfter } from '../../../core/sky/mid-exposure.ts';
import { moonLight } from '../../../core/sky/moon-light.ts';
import { skyAt } from '../../../core/sky/sky-at.ts';
import type { SkyInput } from '../../../core/sky/sky-input.ts';
import { addMoon } from '../../../core/trace/moon-points.ts';
import { pixelSteradians } from '../../../core/trace/on-picture.ts';
import { skiesFor } from '../../../core/trace/sky-points.ts';
import type { Canvas } from '../../../core/trace/splat.ts';

/** A picture of the moon alone, 3 by 2. */
export interface MoonPicture {
  readonly input: SkyInput;
  readonly seconds: number;
  readonly focalLengthMm: number;
  readonly width: number;
  /** Where the camera looks. */
  readonly toward: Vec3;
}

export const viewOf = ({ focalLengthMm, toward }: MoonPicture): CameraView =>
  cameraView({
    position: [0, 0, 0],
    aim: scale(toward, 100),
    rollRadians: 0,
    sensorWidthMm: 36,
    sensorHeightMm: 24,
    focalLengthMm,
  });

/** The moon's way as `addMoon` draws it, without lens blur. */
export const moonCanvas = (picture: MoonPicture, sigma = 0.7): Canvas => {
  const { input, seconds, width } = picture;
  const height = Math.round((width * 2) / 3);
  const canvas: Canvas = { width, height, values: new Float32Array(3 * width * height) };
  const count = skiesFor(seconds);
  const states = Array.from({ length: count }, (_, i) =>
    skyAt(inputAfter(input, count > 1 ? (seconds * i) / (count - 1) : 0)),
  );
  addMoon(canvas, { frame: { view: viewOf(picture), width, height }, states, sigma });
  return canvas;
};

export const luminanceAt = ({ width, values }: Canvas, x: number, y: number): number => {
  const at = 3 * (y * width + x);
  return luminanceOfLinearSrgb([values[at] as number, values[at + 1] as number, values[at + 2] as number]);
};

/** Light of all of a picture, lux on what faces it: luminance times solid angle. */
export const luxOf = (canvas: Canvas, view: CameraView): number => {
  const { width, height } = canvas;
  let sum = 0;
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const [h, v] = [(2 * (x + 0.5)) / width - 1, (2 * (y + 0.5)) / height - 1];
      const cosine = 1 / Math.hypot(1, h * view.tanHalfWidth, v * view.tanHalfHeight);
      sum += luminanceAt(canvas, x, y) * pixelSteradians({ view, width, height }, cosine);
    }
  return sum;
};

/** Mean of the moon's light on what faces it while the shutter is open: a fine sum over time. */
export const meanMoonLux = (input: SkyInput, seconds: number, instants = 200): number => {
  let sum = 0;
  for (let i = 0; i < instants; i++)
    sum += moonLight(skyAt(inputAfter(input, (seconds * (i + 0.5)) / instants)))?.lux ?? 0;
  return sum / instants;
};

/** Place of the moon's middle in a picture, pixels. */
export const placeOfMoon = (picture: MoonPicture, input: SkyInput): readonly [x: number, y: number] => {
  const { width } = picture;
  const view = viewOf(picture);
  const toward = skyAt(input).moon.towardSeen;
  const depth = dot(toward, view.forward);
  const perTangent = width / (2 * view.tanHalfWidth);
  return [
    width / 2 + (dot(toward, view.right) / depth) * perTangent,
    Math.round((width * 2) / 3) / 2 - (dot(toward, view.up) / depth) * perTangent,
  ];
};

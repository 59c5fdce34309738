import type { CameraView } from '../camera/camera-view.ts';
import { saturationRatio } from '../camera/exposure.ts';
import { gaussian, noiseSdMidGreyRatio } from '../camera/sensor-noise.ts';
import { cosFourth } from '../camera/vignetting.ts';
import { apply, type Triple } from '../colour/matrix.ts';
import type { Development, PixelNoise } from '../world/development.ts';

/** Two numbers in [0, 1) for each channel of a pixel, the same in every picture of that size. */
export type NoiseNumbers = (channel: number) => readonly [number, number];

/** Sensor pixels that a picture pixel stands for. */
export const pixelsBinned = (noise: PixelNoise, pictureWidth: number): number =>
  Math.max((noise.pixelsWide / pictureWidth) ** 2, 1);

/**
 * One channel with the noise of its electrons. The sensor's channels are taken as linear sRGB balanced for daylight:
 * the picture's white balance then amplifies the noise of the weaker channels, as it does in a camera.
 */
const withNoise = (
  ratio: number,
  noise: PixelNoise,
  pictureWidth: number,
  [u1, u2]: readonly [number, number],
): number => {
  // a full well is no noisier than full; the light itself is cut off only after the white balance, with all channels alike
  const held = Math.min(Math.max(ratio, 0), saturationRatio);
  return ratio + gaussian(u1, u2) * noiseSdMidGreyRatio(held, noise, noise.iso, pixelsBinned(noise, pictureWidth));
};

/**
 * What a frame's file holds for one pixel, linear RGB in mid-grey ratios: fall-off to the corners, noise, white balance,
 * and each channel cut off where it is full. Counting saturation after the white balance is what a camera's histogram
 * does; under a warm lamp red is the first to go.
 *
 * @param light linear RGB in mid-grey ratios, as it fell on the sensor without fall-off
 * @param x place in the picture, 0 to 1 each way
 */
export const recordPixel = (
  light: Triple,
  { vignetting, noise, whiteBalance }: Development,
  view: CameraView,
  [x, y]: readonly [number, number],
  pictureWidth: number,
  numbers: NoiseNumbers,
): Triple => {
  const shade = vignetting ? cosFourth(view, x, y) : 1;
  const sensed = light.map((v, c) => (noise ? withNoise(v * shade, noise, pictureWidth, numbers(c)) : v * shade));
  const balanced = apply(whiteBalance, sensed as unknown as Triple);
  return balanced.map((v) => Math.min(v, saturationRatio)) as unknown as Triple;
};

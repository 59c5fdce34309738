import { saturationRatio } from './exposure.ts';
import type { SensorElectronics } from './sensors.ts';

/**
 * Electrons that a pixel holds at mid-grey: the full well is saturation (7.8 x mid-grey, ISO 12232) at base ISO, and a
 * higher ISO fills a smaller part of it. Below base ISO the well does not grow.
 */
export const electronsAtMidGrey = ({ fullWellElectrons, baseIso }: SensorElectronics, iso: number): number =>
  ((fullWellElectrons / saturationRatio) * baseIso) / Math.max(iso, baseIso);

/**
 * Standard deviation of the exposure, in mid-grey ratios, from the shot noise of the light and the noise of reading out:
 * sqrt(e + r^2) electrons a pixel, over the square root of the pixels averaged. Dark current, uneven pixels and the
 * colour mosaic's interpolation are not in it.
 *
 * Source: photon counts follow Poisson's law, whose variance is its mean; independent noises add in squares.
 *
 * @param ratio exposure over mid-grey, 0 or more, at most saturation
 * @param iso ISO speed; under the base it counts as the base
 * @param pixelsBinned sensor pixels that one picture pixel averages, above 0
 */
export const noiseSdMidGreyRatio = (
  ratio: number,
  electronics: SensorElectronics,
  iso: number,
  pixelsBinned: number,
): number => {
  const scale = electronsAtMidGrey(electronics, iso);
  const variance = ratio * scale + electronics.readNoiseElectrons ** 2;
  return Math.sqrt(variance / pixelsBinned) / scale;
};

/** Least `u1` that counts: half a step of a 24-bit number, so that the logarithm stays finite in 32-bit floats too. */
const leastUniform = 2 ** -25;

/**
 * A number of the standard normal distribution from two independent uniform ones in [0, 1) (Box and Muller, Annals of
 * Mathematical Statistics 29, 610, 1958). Never beyond 5.89 either way, as `u1` below 2^-25 counts as 2^-25.
 */
export const gaussian = (u1: number, u2: number): number =>
  Math.sqrt(-2 * Math.log(Math.max(u1, leastUniform))) * Math.cos(2 * Math.PI * u2);

import type { Triple } from '../colour/matrix.ts';
import { luminanceOfLinearSrgb } from '../colour/srgb.ts';
import { whiteLinearSrgb } from '../colour/white-locus.ts';
import type { Vec3 } from '../geometry/vec.ts';
import { degreesFromRadians } from '../units/angle.ts';
import { altitudeTable, type Sum } from './altitude-table.ts';
import { type GlowDome, glowAtHeight } from './glow-dome.ts';

/** What the long way to a town leaves of its lamps' red, green and blue five degrees up, 60 km off (sky.md 4.7). */
const lowColour: Triple = [1.21, 1, 0.52];
const lowDegrees = 5;
/** Height over which that reddening goes, degrees: our choice. */
const fadeDegrees = 15;

/** Colour of the glow at a height: that of the lamps, redder toward the horizon; luminance 1. */
const glowColour = (temperatureKelvin: number, altitudeDegrees: number): Triple => {
  const lamp = whiteLinearSrgb(temperatureKelvin);
  const share = Math.exp(-Math.max(altitudeDegrees - lowDegrees, 0) / fadeDegrees);
  const raw: Triple = [
    lamp[0] * (1 + share * (lowColour[0] - 1)),
    lamp[1],
    Math.max(lamp[2], 0) * (1 + share * (lowColour[2] - 1)),
  ];
  const y = luminanceOfLinearSrgb(raw);
  return [raw[0] / y, raw[1] / y, raw[2] / y];
};

/**
 * Luminance of a town's glow in linear sRGB, for each cd/m2 that it has at 10 degrees at its bearing. So it does not
 * depend on how bright the town is, only on where, how wide and of what lamps.
 *
 * @param northRadians true bearing of the scene's north axis
 * @returns value in a unit direction of the scene's axes; below the horizon that at the horizon
 */
export const glowLuminance = (
  { bearingRadians, halfWidthRadians, temperatureKelvin }: GlowDome,
  northRadians: number,
): ((toward: Vec3) => Triple) => {
  const halfWidthDegrees = degreesFromRadians(halfWidthRadians);
  const levels = altitudeTable((sine) => {
    const altitude = degreesFromRadians(Math.asin(sine));
    const [r, g, b] = glowColour(temperatureKelvin, altitude);
    const { level } = glowAtHeight(altitude);
    return [r * level, g * level, b * level];
  });
  const widths = altitudeTable((sine) => {
    const { squareWidth, turnShare } = glowAtHeight(degreesFromRadians(Math.asin(sine)));
    return [turnShare ** 2 / (squareWidth + halfWidthDegrees * halfWidthDegrees), 0, 0];
  });
  const width: Sum = [0, 0, 0];
  return ([x, y, z]) => {
    const out: Sum = [0, 0, 0];
    levels(y, out);
    widths(y, width);
    const turn = degreesFromRadians(Math.abs(halfTurn(Math.atan2(x, -z) + northRadians - bearingRadians)));
    const share = 1 / (1 + turn * turn * width[0]);
    out[0] *= share;
    out[1] *= share;
    out[2] *= share;
    return out;
  };
};

/** The same turn from -pi to pi, quicker than by sine and cosine. */
const halfTurn = (radians: number): number => radians - 2 * Math.PI * Math.round(radians / (2 * Math.PI));

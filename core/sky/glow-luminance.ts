import type { Triple } from '../colour/matrix.ts';
import { luminanceOfLinearSrgb } from '../colour/srgb.ts';
import { whiteLinearSrgb } from '../colour/white-locus.ts';
import type { Vec3 } from '../geometry/vec.ts';
import { degreesFromRadians, halfTurnRadians } from '../units/angle.ts';
import { altitudeTable, type Sum } from './altitude-table.ts';
import { type GlowDome, glowShape } from './glow-dome.ts';

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
  const colour = altitudeTable((sine) => glowColour(temperatureKelvin, degreesFromRadians(Math.asin(sine))));
  return ([x, y, z]) => {
    const out: Sum = [0, 0, 0];
    colour(y, out);
    const turn = halfTurnRadians(Math.atan2(x, -z) + northRadians - bearingRadians);
    const sine = Math.min(Math.max(y, 0), 1);
    const shape = glowShape(degreesFromRadians(Math.asin(sine)), degreesFromRadians(turn), halfWidthDegrees);
    return [out[0] * shape, out[1] * shape, out[2] * shape];
  };
};

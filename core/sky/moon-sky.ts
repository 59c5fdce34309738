import type { Vec3 } from '../geometry/vec.ts';
import { degreesFromRadians } from '../units/angle.ts';
import { skyAirMass } from './air-mass.ts';
import { altitudeTable, type Sum } from './altitude-table.ts';
import { cloudTransmittance } from './extinction.ts';
import { luminanceOfNanolambert } from './magnitudes.ts';
import { moonHalo, moonLuxForCloud } from './moon-halo.ts';
import { meanMoonDistanceKm, moonThroughAir } from './moon-light.ts';
import { moonlitColours, moonScatter, moonStrength } from './moonlit-sky.ts';
import type { SkyState } from './sky-state.ts';

/** The formula knows no moonset: moonlit air fades between these heights of the moon. Our choice (see the tests). */
const fade = { fromDegrees: -2, toDegrees: 12 } as const;
/** Of what thin cloud takes out of moonlight, what goes wide, and the angle over which that falls to 1/e: our choice. */
const wideShare = 0.4;
const wideRadians = (10 * Math.PI) / 180;
/** Light of that pattern for each unit at its middle: 2 pi times the integral of sin r exp(-r / w). */
const widePattern = (2 * Math.PI * wideRadians ** 2) / (1 + wideRadians ** 2);

/**
 * Luminance that moonlight gives the sky, cd/m2 in linear sRGB: moonlit air and haze, and the glow round the moon that thin
 * cloud makes: a narrow one as round stars and a wide one. Null when the moon is too low to give any.
 *
 * Air and haze: Krisciunas and Schaefer 1991, PASP 103, 1033, eq. 15, of authors' accuracy 8 to 23 %, for a moon over 12
 * degrees without cloud. The rest is our choice.
 *
 * @param withoutHalo leaves out the narrow glow
 * @returns adds the value in a unit direction of the scene's axes to `sum`
 */
export const moonSky = (state: SkyState, withoutHalo: boolean): ((toward: Vec3, sum: Sum) => void) | null => {
  const { input, moon } = state;
  const [mx, my, mz] = moon.towardSeen;
  const degrees = degreesFromRadians(Math.asin(Math.min(Math.max(my, -1), 1)));
  const t = Math.min(Math.max((degrees - fade.fromDegrees) / (fade.toDegrees - fade.fromDegrees), 0), 1);
  if (t <= 0) return null;
  const faded = t * t * (3 - 2 * t);
  const k = input.extinctionMagnitudes;
  const cloud = cloudTransmittance(input, my);
  const strength =
    faded *
    moonStrength(moon.phaseRadians) *
    (meanMoonDistanceKm / moon.distanceKm) ** 2 *
    10 ** (-0.4 * k * skyAirMass(my)) *
    (cloud + (1 - cloud) * (1 - wideShare)) *
    luminanceOfNanolambert;
  const table = (part: 'air' | 'haze') =>
    altitudeTable((sine) => {
      const colour = moonlitColours(my, k, sine)[part];
      const lit = strength * (1 - 10 ** (-0.4 * k * skyAirMass(sine)));
      return [colour[0] * lit, colour[1] * lit, colour[2] * lit];
    });
  const airTable = table('air');
  const hazeTable = table('haze');

  const clear = moonThroughAir({ ...input, thinCloudDepth: 0 }, my);
  const arriving = moonLuxForCloud(state);
  const { luxAboveAir, squareRadians } = moonHalo(state);
  const narrow = withoutHalo ? 0 : luxAboveAir / (2 * Math.PI * squareRadians);
  const wide = (wideShare * (1 - cloud) * arriving) / widePattern;

  const air: Sum = [0, 0, 0];
  const haze: Sum = [0, 0, 0];
  return ([x, y, z], sum) => {
    const turn = Math.acos(Math.min(Math.max(x * mx + y * my + z * mz, -1), 1));
    const scatter = moonScatter(turn);
    airTable(y, air);
    hazeTable(y, haze);
    const glow =
      wide > 0 ? wide * Math.exp(-turn / wideRadians) + narrow * Math.exp((-turn * turn) / (2 * squareRadians)) : 0;
    for (let c = 0; c < 3; c++)
      sum[c as 0 | 1 | 2] +=
        scatter.air * (air[c] as number) + scatter.haze * (haze[c] as number) + glow * (clear[c] as number);
  };
};

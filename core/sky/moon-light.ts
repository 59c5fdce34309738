import type { Triple } from '../colour/matrix.ts';
import { luminanceOfLinearSrgb } from '../colour/srgb.ts';
import type { Vec3 } from '../geometry/vec.ts';
import { degreesFromRadians } from '../units/angle.ts';
import { type Air, pointTransmittance } from './extinction.ts';
import { luxFromMagnitude } from './magnitudes.ts';
import type { MoonBody, SkyState } from './sky-state.ts';
import { starColour } from './star-colour.ts';

/** Moonlight as a light on the land. */
export interface MoonLight {
  /** Unit direction in which the moon is seen, scene's axes. */
  readonly toward: Vec3;
  /** On a surface square to it, at the ground, lux. */
  readonly lux: number;
  /** Linear sRGB of luminance 1. */
  readonly colour: Triple;
  readonly radiusRadians: number;
}

/** Mean distance of the moon, at which its magnitudes are told. */
export const meanMoonDistanceKm = 384_400;

/** V of the moon at its mean distance. Phase angle 0 = full. Source: Allen; Krisciunas and Schaefer 1991, eq. 9. */
export const moonMagnitude = (phaseRadians: number): number => {
  const degrees = Math.abs(degreesFromRadians(phaseRadians));
  return -12.73 + 0.026 * degrees + 4e-9 * degrees ** 4;
};

/** Illuminance square to the moon outside the air, lux: 0.313 full at its mean distance. Without the surge near full. */
export const moonLuxAboveAir = ({ phaseRadians, distanceKm }: Pick<MoonBody, 'phaseRadians' | 'distanceKm'>): number =>
  luxFromMagnitude(moonMagnitude(phaseRadians)) * (meanMoonDistanceKm / distanceKm) ** 2;

/** Moonlight outside the air: B - V = 0.92 (from memory), sunlight from a reddish ground. */
export const moonColourAboveAir: Triple = starColour(0.92);

/**
 * Moonlight after air and thin cloud, linear sRGB for each unit of luminance above the air. V is lost by the law of V, so
 * that numbers agree with published ones; the channels give the colour only.
 */
export const moonThroughAir = (air: Air, sinAltitude: number): Triple => {
  const through = pointTransmittance(air, sinAltitude);
  const [r, g, b] = moonColourAboveAir;
  const raw: Triple = [r * through[0], g * through[1], b * through[2]];
  const scale = luminanceOfLinearSrgb(through) / luminanceOfLinearSrgb(raw);
  return [raw[0] * scale, raw[1] * scale, raw[2] * scale];
};

/** Share of a disc above a level line, from the height of its middle in radii. */
export const shareOfDiscAbove = (heightInRadii: number): number => {
  const t = Math.min(Math.max(heightInRadii, -1), 1);
  return 0.5 + (t * Math.sqrt(1 - t * t) + Math.asin(t)) / Math.PI;
};

/** Rows of the disc at which the air before it is looked at: near the horizon it changes over the disc. */
const rows = 8;

/** Mean share of moonlight that gets through to the ground over an even disc, of which no more counts than is up. */
const throughToDisc = (air: Air, altitudeRadians: number, radiusRadians: number): Triple => {
  // rows by their turn from the top of the disc, to the horizon or to its foot
  const last = Math.acos(Math.min(Math.max(-altitudeRadians / radiusRadians, -1), 1));
  const sum: [number, number, number] = [0, 0, 0];
  for (let i = 0; i < rows; i++) {
    const turn = (last * (i + 0.5)) / rows;
    const weight = (2 * Math.sin(turn) ** 2 * last) / rows / Math.PI;
    const through = moonThroughAir(air, Math.sin(altitudeRadians + radiusRadians * Math.cos(turn)));
    for (const c of [0, 1, 2] as const) sum[c] += weight * through[c];
  }
  return sum;
};

/**
 * Moonlight at the ground after air and thin cloud; of what cloud scatters, see `moonHalo` and `moonSky`. Fades as the disc
 * sets; null when all of it is under the level horizon. Phase law and distance as in `moonLuxAboveAir`, air mass by Kasten
 * and Young, over the disc as if it were lit evenly.
 */
export const moonLight = ({ moon, input }: SkyState): MoonLight | null => {
  const altitude = Math.asin(Math.min(Math.max(moon.towardSeen[1], -1), 1));
  if (altitude <= -moon.radiusRadians) return null;
  const arrives = throughToDisc(input, altitude, moon.radiusRadians);
  const left = luminanceOfLinearSrgb(arrives);
  return {
    toward: moon.towardSeen,
    lux: moonLuxAboveAir(moon) * left,
    colour: [arrives[0] / left, arrives[1] / left, arrives[2] / left],
    radiusRadians: moon.radiusRadians,
  };
};

import type { Triple } from '../colour/matrix.ts';
import { luminanceOfLinearSrgb } from '../colour/srgb.ts';
import { degreesFromRadians } from '../units/angle.ts';
import { skyAirMass } from './air-mass.ts';
import { channelExtinction } from './extinction.ts';
import { moonColourAboveAir } from './moon-light.ts';

/** The two halves of scattering: by air, and by haze, which sends most of it forward. */
export interface MoonScatter {
  readonly air: number;
  readonly haze: number;
}

/** Where the law of haze for small angles meets that for wide ones, degrees; and the least angle that it is used at. */
const meetsDegrees = 8.45;
const leastDegrees = 0.4;

/**
 * How much moonlight air and haze send the eye's way, in the units of Krisciunas and Schaefer 1991, eqs. 17 to 19.
 *
 * @param turnRadians angle between the moon and where one looks. Under 10 degrees the paper's law of the aureole is used,
 *   from where it meets the wide law (8.45 degrees); held under 0.4 degrees, just beside the disc.
 */
export const moonScatter = (turnRadians: number): MoonScatter => {
  const degrees = degreesFromRadians(turnRadians);
  const cos = Math.cos(turnRadians);
  const haze = degrees < meetsDegrees ? 6.2e7 / Math.max(degrees, leastDegrees) ** 2 : 10 ** (6.15 - degrees / 40);
  return { air: 10 ** 5.36 * (1.06 + cos * cos), haze };
};

/** The moon's strength in that paper's units (eq. 20), at its mean distance. Phase angle 0 = full. */
export const moonStrength = (phaseRadians: number): number => {
  const degrees = Math.abs(degreesFromRadians(phaseRadians));
  return 10 ** (-0.4 * (3.84 + 0.026 * degrees + 4e-9 * degrees ** 4));
};

/** Air scatters red, green and blue (610, 550, 465 nm) as the inverse fourth power of wavelength; haze scatters all alike. */
const airTint: Triple = [(550 / 610) ** 4, 1, (550 / 465) ** 4];

/**
 * Colours of moonlight scattered by air and by haze at a height, linear sRGB, each of luminance 1: air's is blue, and
 * both whiten toward the horizon, where all channels have been scattered more than once. Our own, in the manner of the
 * day sky; not in the paper.
 */
export const moonlitColours = (
  sinMoonAltitude: number,
  extinctionMagnitudes: number,
  sinAltitude: number,
): { readonly air: Triple; readonly haze: Triple } => {
  const k = channelExtinction(extinctionMagnitudes);
  const base = [0, 1, 2].map((c) => {
    const own = k[c] as number;
    const arrives = 10 ** (-0.4 * own * skyAirMass(sinMoonAltitude));
    return ((moonColourAboveAir[c] as number) * arrives * (1 - 10 ** (-0.4 * own * skyAirMass(sinAltitude)))) / own;
  });
  const toOne = (raw: Triple): Triple => {
    const y = luminanceOfLinearSrgb(raw);
    return [raw[0] / y, raw[1] / y, raw[2] / y];
  };
  const [r, g, b] = base as unknown as Triple;
  return { air: toOne([r * airTint[0], g, b * airTint[2]]), haze: toOne([r, g, b]) };
};

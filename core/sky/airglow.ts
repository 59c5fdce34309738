import type { Triple } from '../colour/matrix.ts';
import { luminanceOfLinearSrgb } from '../colour/srgb.ts';
import { skyAirMass } from './air-mass.ts';

/** Airglow straight up when the sun is quiet, S10 (Benn and Ellison 1998). */
export const quietAirglowS10 = 145;

/** Below this height the formula is not valid (sky.md 4.2): the value at 5 degrees is used. */
const lowestSine = Math.sin((5 * Math.PI) / 180);

/**
 * Airglow at a height over airglow straight up: rises toward the horizon, since one looks through more of the layer.
 * Held at its value at 5 degrees below that. Source: Krisciunas and Schaefer 1991, eq. 2 (van Rhijn's layer, dimmed).
 */
export const airglowRise = (extinctionMagnitudes: number, sinAltitude: number): number => {
  const layers = skyAirMass(Math.max(sinAltitude, lowestSine));
  return layers * 10 ** (-0.4 * extinctionMagnitudes * (layers - 1));
};

/** Slightly green: the line at 557.7 nm over a reddish continuum and 630 nm. Our choice, B - V near 0.9 for the whole. */
const raw: Triple = [1.17, 0.99, 0.64];
/** Colour of airglow, linear sRGB of luminance 1. */
export const airglowColour: Triple = (() => {
  const y = luminanceOfLinearSrgb(raw);
  return [raw[0] / y, raw[1] / y, raw[2] / y];
})();

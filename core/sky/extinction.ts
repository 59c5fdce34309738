import type { Triple } from '../colour/matrix.ts';
import { luminanceOfLinearSrgb } from '../colour/srgb.ts';
import { airMass, cloudAirMass } from './air-mass.ts';
import type { SkyInput } from './sky-input.ts';

/** Air as far as light's way through it goes. */
export type Air = Pick<SkyInput, 'extinctionMagnitudes' | 'thinCloudDepth'>;

/** Magnitudes an air mass in red, green and blue over those in V: 0.10, 0.17 and 0.27 over 0.172 (sky.md 4.1, from memory). */
const channelsOverV: Triple = [0.1 / 0.172, 0.17 / 0.172, 0.27 / 0.172];

/** Magnitudes lost in each channel to one air mass; red least, blue most. */
export const channelExtinction = (extinctionMagnitudes: number): Triple => [
  channelsOverV[0] * extinctionMagnitudes,
  channelsOverV[1] * extinctionMagnitudes,
  channelsOverV[2] * extinctionMagnitudes,
];

/**
 * Share of light that comes through a number of magnitudes lost in V, in linear sRGB. White light comes out with exactly
 * the luminance that V says, and redder the more is lost.
 */
export const transmittanceOfMagnitudes = (magnitudes: number): Triple => {
  const [r, g, b] = channelsOverV;
  const through: Triple = [10 ** (-0.4 * r * magnitudes), 10 ** (-0.4 * g * magnitudes), 10 ** (-0.4 * b * magnitudes)];
  const scale = 10 ** (-0.4 * magnitudes) / luminanceOfLinearSrgb(through);
  return [through[0] * scale, through[1] * scale, through[2] * scale];
};

/** Share of a point's light that thin cloud lets straight through, grey. 1 without cloud. */
export const cloudTransmittance = ({ thinCloudDepth }: Air, sinAltitude: number): number =>
  thinCloudDepth > 0 ? Math.exp(-thinCloudDepth * cloudAirMass(sinAltitude)) : 1;

/**
 * Share of a point's light (star, planet, moon) that reaches the ground straight, in linear sRGB, thin cloud included.
 *
 * @param sinAltitude sine of the height at which it is seen; below the horizon the value at the horizon
 */
export const pointTransmittance = (air: Air, sinAltitude: number): Triple => {
  const [r, g, b] = transmittanceOfMagnitudes(air.extinctionMagnitudes * airMass(sinAltitude));
  const cloud = cloudTransmittance(air, sinAltitude);
  return [r * cloud, g * cloud, b * cloud];
};

/** What scattering gives back to something wide: of the magnitudes lost, this share stays lost. After Noll et al. 2012. */
const shareLostByWideSources = 0.6;

/**
 * Share of the light of something wide (Milky Way, zodiacal light) that reaches the ground, in linear sRGB. It fades more
 * slowly than a star, since what one part loses goes to another. Without cloud, which is in `naturalSky`. An approximation.
 */
export const extendedTransmittance = (air: Air, sinAltitude: number): Triple =>
  transmittanceOfMagnitudes(shareLostByWideSources * air.extinctionMagnitudes * airMass(sinAltitude));

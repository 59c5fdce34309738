import type { Triple } from '../colour/matrix.ts';
import type { Vec3 } from '../geometry/vec.ts';
import { airglowColour, airglowRise, quietAirglowS10 } from './airglow.ts';
import { altitudeTable, type Sum } from './altitude-table.ts';
import type { GlowDome } from './glow-dome.ts';
import { luminanceOfS10 } from './magnitudes.ts';
import type { SkyState } from './sky-state.ts';

export interface SkyOptions {
  /** Leaves out the mean light of catalogue stars to V = 8, for pictures that draw these as points. */
  readonly withoutStarsToV8: boolean;
}

/**
 * Luminance of everything diffuse in the sky, cd/m2 in linear sRGB (luminance = Y): airglow, zodiacal light, Milky Way,
 * artificial light of no named town, twilight and moonlit air. The named towns' own glow, stars and the moon's disc are
 * apart: their domes are given so that the darkness of the site is not counted twice.
 *
 * @returns luminance in a seen direction, unit, scene's axes; below the horizon that at the horizon
 */
export const skyLuminance = (
  state: SkyState,
  _domes: readonly GlowDome[],
  _options: SkyOptions,
): ((toward: Vec3) => Triple) => {
  const k = state.input.extinctionMagnitudes;
  const airglow = altitudeTable((sine) => {
    const l = (quietAirglowS10 + 121) * luminanceOfS10 * airglowRise(k, sine);
    return [l * airglowColour[0], l * airglowColour[1], l * airglowColour[2]];
  });
  return (toward) => {
    const out: Sum = [0, 0, 0];
    airglow(toward[1], out);
    return out;
  };
};

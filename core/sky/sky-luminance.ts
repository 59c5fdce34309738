import type { Triple } from '../colour/matrix.ts';
import type { Vec3 } from '../geometry/vec.ts';
import type { Sum } from './altitude-table.ts';
import type { GlowDome } from './glow-dome.ts';
import { moonSky } from './moon-sky.ts';
import { naturalSky } from './natural-sky.ts';
import type { SkyState } from './sky-state.ts';
import { twilight } from './twilight.ts';

export interface SkyOptions {
  /** Leaves out the mean light of catalogue stars to V = 8, for pictures that draw these as points. */
  readonly withoutStarsToV8: boolean;
  /** Leaves out the narrow glow that thin cloud puts round the moon, for a sky as a light: it goes with the moon's own. */
  readonly withoutMoonHalo?: boolean;
}

/**
 * Luminance of everything diffuse in the sky, cd/m2 in linear sRGB (luminance = Y): airglow, zodiacal light, Milky Way,
 * light of unnamed towns, twilight and moonlit air and thin cloud, all added. The named towns' own glow (`glowLuminance`),
 * stars and the moon's disc are apart; domes are given so that the darkness of the site is not counted twice.
 *
 * Preparing takes about a millisecond, the first time some 0.1 s for the Milky Way; a call about 1 us.
 *
 * @returns luminance in a seen direction, unit, scene's axes; below the horizon that at the horizon
 */
export const skyLuminance = (
  state: SkyState,
  domes: readonly GlowDome[],
  { withoutStarsToV8, withoutMoonHalo = false }: SkyOptions,
): ((toward: Vec3) => Triple) => {
  const natural = naturalSky(state, domes, withoutStarsToV8);
  const moonlit = moonSky(state, withoutMoonHalo);
  const dusk = twilight(state.sun);
  return (toward) => {
    const sum: Sum = [0, 0, 0];
    const seen = toward[1] < 0 ? ontoHorizon(toward) : toward;
    natural(seen, sum);
    moonlit?.(seen, sum);
    dusk?.(seen, sum);
    return sum;
  };
};

/** The direction on the horizon over one below it; straight down has none and takes north's. */
const ontoHorizon = ([x, , z]: Vec3): Vec3 => {
  const flat = Math.hypot(x, z);
  return flat > 1e-9 ? [x / flat, 0, z / flat] : [0, 0, -1];
};

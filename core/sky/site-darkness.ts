import { luminanceOfLinearSrgb } from '../colour/srgb.ts';
import { quietAirglowS10 } from './airglow.ts';
import { extendedTransmittance } from './extinction.ts';
import { type GlowDome, glowShape } from './glow-dome.ts';
import { luminanceFromSurfaceMagnitude, luminanceOfS10 } from './magnitudes.ts';
import type { SkyInput } from './sky-input.ts';

/** What a meter finds straight up at a dark site besides airglow, S10: stars and zodiacal light far from both bands, and scattered starlight. */
const farFromBands = { stars: 46, zodiacal: 60 } as const;
/** Scattered starlight (Benn and Ellison 1998), S10. */
export const scatteredS10 = 15;
/** Airglow is never less than this, S10: our choice, for sites that are said to be darker than any. */
const leastAirglowS10 = 40;

export interface SiteDarkness {
  /** Airglow straight up, S10. */
  readonly airglowS10: number;
  /** What unnamed towns add straight up, cd/m2. */
  readonly artificialCdM2: number;
}

/**
 * Splits the stated brightness of the zenith into nature's and man's: what is more than a natural sky, and than the named
 * towns add there, is light of unnamed towns. At a site darker than that, airglow is weaker. So the zenith comes out as
 * stated when it is moonless and far from the Milky Way and the ecliptic, as it must be read (natural: 21.76 mag/arcsec2 at
 * an extinction of 0.17).
 */
export const siteDarkness = (input: SkyInput, domes: readonly GlowDome[]): SiteDarkness => {
  const ofTowns = domes.reduce(
    (sum, { luminanceAt10DegreesCdM2 }) => sum + luminanceAt10DegreesCdM2 * glowShape(90, 0, 0),
    0,
  );
  const through = luminanceOfLinearSrgb(extendedTransmittance(input, 1));
  const beyond = (farFromBands.stars + farFromBands.zodiacal) * through + scatteredS10;
  const left = luminanceFromSurfaceMagnitude(input.zenithMagnitude) - ofTowns;
  const airglowS10 = Math.min(Math.max(left / luminanceOfS10 - beyond, leastAirglowS10), quietAirglowS10);
  return { airglowS10, artificialCdM2: Math.max(left - (beyond + airglowS10) * luminanceOfS10, 0) };
};

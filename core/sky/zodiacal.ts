import type { Triple } from '../colour/matrix.ts';
import { whiteLinearSrgb } from '../colour/white-locus.ts';

/** Far from the ecliptic, S10. */
const poleS10 = 60;
/** On the ecliptic, S10: everywhere, toward the sun, and opposite to it (gegenschein). */
const eclipticS10 = { even: 140, sunward: 900, gegenschein: 40 } as const;
/** Spread of the gegenschein: our choice, about what eyes see. */
const gegenscheinRadians = (9 * Math.PI) / 180;

/** Rounds the crest along the ecliptic, which the fit has as an edge: our choice. */
const crest = 0.03;

/**
 * Zodiacal light outside the air, S10: 829 on the ecliptic 30 degrees from the sun, 140 across it, 180 opposite the sun,
 * 60 at the ecliptic's poles. Between ecliptic and pole the logarithm goes evenly with the sine of latitude.
 *
 * @param sinLatitude sine of the ecliptic latitude
 * @param cosTurn cosine of the ecliptic longitude from the sun's. Within about 20 degrees of the sun it means little:
 *   twilight hides that. Source: values after Leinert et al. 1998, A&AS 127, 1, in a fit of our own form (sky.md 4.2).
 */
export const zodiacalS10 = (sinLatitude: number, cosTurn: number): number => {
  const share = (Math.sqrt(sinLatitude * sinLatitude + crest * crest) - crest) / (Math.sqrt(1 + crest * crest) - crest);
  const cos = Math.min(Math.max(cosTurn, -1), 1);
  // cos^7.7 of half the turn
  const sunward = eclipticS10.sunward * ((1 + cos) / 2) ** 3.85;
  const fromOpposite = Math.acos(-cos) / gegenscheinRadians;
  const opposite = eclipticS10.gegenschein * Math.exp(-0.5 * fromOpposite * fromOpposite);
  return (eclipticS10.even + sunward + opposite) ** (1 - share) * poleS10 ** share;
};

/** Sunlight from dust, a little warmer than the sun (from memory). Linear sRGB of luminance 1. */
export const zodiacalColour: Triple = whiteLinearSrgb(5500);

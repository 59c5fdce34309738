import { cloudAirMass } from './air-mass.ts';

/** Light that thin cloud spreads round a star or the moon. */
export interface StarHalo {
  /** Share of its light (after the air) that comes from close by instead of from itself. */
  readonly share: number;
  /** Spread of a round normal distribution, radians: the share within it is 39 %. */
  readonly spreadRadians: number;
}

/** Of the light that crystals or drops take out, about half is bent by their edges and stays within a degree or so. */
const bentShare = 0.5;
const spreadRadians = (0.35 * Math.PI) / 180;

/**
 * The glow that thin cloud puts round a star, which makes bright stars look larger: half of what cloud takes out of its
 * light, spread over about a third of a degree. The other half goes wide, and is in `naturalSky` and `moonSky`.
 *
 * Our choice, simple on purpose: large particles send half of what they scatter into the narrow beam of their own
 * outline (van de Hulst, from memory); its width is that of particles of some 50 um.
 *
 * @param thinCloudDepth optical depth straight up, 0 or more
 */
export const starHalo = (thinCloudDepth: number, sinAltitude: number): StarHalo => {
  const through = Math.exp(-Math.max(thinCloudDepth, 0) * cloudAirMass(sinAltitude));
  return { share: bentShare * (1 - through), spreadRadians };
};

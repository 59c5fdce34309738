import type { Setup } from '../setup/schema/setup.ts';
import type { GlowDome } from '../sky/glow-dome.ts';
import type { SkyInput } from '../sky/sky-input.ts';
import { radiansFromDegrees } from '../units/angle.ts';
import { skyInputOf } from './sky-of-place.ts';

/** All that the sky of an hour needs: where, when and in what air, and the glow of towns. */
export interface HourSky {
  readonly input: SkyInput;
  readonly domes: readonly GlowDome[];
}

/** The glow of a place's towns, from the document. */
export const glowDomesOf = ({ glowDomes }: Pick<Setup['place'], 'glowDomes'>): GlowDome[] =>
  glowDomes.map(({ bearingDegrees, widthDegrees, luminanceAt10DegreesCdM2, temperatureKelvin }) => ({
    bearingRadians: radiansFromDegrees(bearingDegrees),
    halfWidthRadians: radiansFromDegrees(widthDegrees / 2),
    luminanceAt10DegreesCdM2,
    temperatureKelvin,
  }));

/** The sky of a place's hour, from the document; null where its light is the plain one that it states. */
export const hourSkyOf = (place: Setup['place']): HourSky | null => {
  const input = skyInputOf(place);
  return input && { input, domes: glowDomesOf(place) };
};

import type { Setup } from '../setup/schema/setup.ts';
import type { GlowDome } from '../sky/glow-dome.ts';
import type { SkyInput } from '../sky/sky-input.ts';
import { glowDomesOf, skyInputOf } from './sky-of-place.ts';

/** All that the sky of an hour needs: where, when and in what air, and the glow of towns. */
export interface HourSky {
  readonly input: SkyInput;
  readonly domes: readonly GlowDome[];
}

/** The sky of a place's hour, from the document; null where its light is the plain one that it states. */
export const hourSkyOf = (place: Setup['place']): HourSky | null => {
  const input = skyInputOf(place);
  return input && { input, domes: glowDomesOf(place) };
};

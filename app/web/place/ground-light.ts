import { luminanceOfLinearSrgb } from '../../../core/colour/srgb.ts';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import { surfaceMagnitudeFromLuminance } from '../../../core/sky/magnitudes.ts';
import { seenAlong } from '../../../core/trace/sky-picture.ts';
import { hourSkyOf } from '../../../core/world/hour-sky.ts';
import { skyLights } from '../../../core/world/sky-lights.ts';

/** What the sky of the hour gives without moon disc and lamps. */
export interface GroundLight {
  /** On level ground, lux. */
  readonly lux: number;
  /** Of the sky straight up, mag/arcsec2. */
  readonly zenithMagnitude: number;
}

/** How bright the sky of the hour is, by the very lights of the picture. Null where they are plain. */
export const groundLightOf = (place: Setup['place']): GroundLight | null => {
  const hour = hourSkyOf(place);
  if (!hour) return null;
  const domes = skyLights(hour, null, 0).filter(({ source }) => source.kind === 'dome');
  const zenith = seenAlong({ ...hour, seconds: 0, haze: null }, [0, 1, 0]);
  return {
    lux: domes.reduce((sum, { strength }) => sum + luminanceOfLinearSrgb(strength), 0),
    zenithMagnitude: surfaceMagnitudeFromLuminance(luminanceOfLinearSrgb(zenith)),
  };
};

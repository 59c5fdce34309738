import { luminanceOfLinearSrgb } from '../../../core/colour/srgb.ts';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import { type DomeLight, domeLuminance } from '../../../core/sky/dome-light.ts';
import { domeLightOf } from '../../../core/sky/dome-of.ts';
import { surfaceMagnitudeFromLuminance } from '../../../core/sky/magnitudes.ts';
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
  let [lux, zenith] = [0, 0];
  for (const { source, strength } of skyLights(hour, null, 1)) {
    if (source.kind !== 'dome') continue;
    const each = luminanceOfLinearSrgb(strength);
    lux += each;
    zenith += each * domeLuminance(domeLightOf(source.of) as DomeLight, [0, 1, 0]);
  }
  return { lux, zenithMagnitude: surfaceMagnitudeFromLuminance(zenith) };
};

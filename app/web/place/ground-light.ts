import { luminanceOfLinearSrgb } from '../../../core/colour/srgb.ts';
import type { Vec3 } from '../../../core/geometry/vec.ts';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import { glowLuminance } from '../../../core/sky/glow-luminance.ts';
import { levelIlluminance } from '../../../core/sky/level-illuminance.ts';
import { surfaceMagnitudeFromLuminance } from '../../../core/sky/magnitudes.ts';
import { skyLuminance } from '../../../core/sky/sky-luminance.ts';
import { glowDomesOf } from '../../../core/world/sky-of-place.ts';
import { hourOf } from '../state/hour-of-place.ts';

/** What the sky of the hour gives without moon disc and lamps. */
export interface GroundLight {
  /** On level ground, lux. */
  readonly lux: number;
  /** Of the sky straight up, mag/arcsec2. */
  readonly zenithMagnitude: number;
}

type Place = Setup['place'];
const kept = new WeakMap<Place, GroundLight>();

const read = (place: Place): GroundLight | null => {
  const hour = hourOf(place);
  if (!hour) return null;
  const domes = glowDomesOf(place);
  const sky = skyLuminance(hour.sky, domes, { withoutStarsToV8: false });
  const glows = domes.map((dome) => ({
    times: dome.luminanceAt10DegreesCdM2,
    shape: glowLuminance(dome, hour.sky.input.northRadians),
  }));
  const luminance = (toward: Vec3) =>
    glows.reduce(
      (sum, { times, shape }) => sum + times * luminanceOfLinearSrgb(shape(toward)),
      luminanceOfLinearSrgb(sky(toward)),
    );
  return {
    lux: levelIlluminance(luminance),
    zenithMagnitude: surfaceMagnitudeFromLuminance(luminance([0, 1, 0])),
  };
};

/** How bright the sky of the hour is, worked out once for each place object. Null where this machine does not know the zone. */
export const groundLightOf = (place: Place): GroundLight | null => {
  const light = kept.get(place) ?? read(place);
  if (light) kept.set(place, light);
  return light;
};

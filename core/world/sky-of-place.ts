import type { Setup } from '../setup/schema/setup.ts';
import type { GlowDome } from '../sky/glow-dome.ts';
import type { SkyInput } from '../sky/sky-input.ts';
import { instantOf } from '../sky/zoned-time.ts';
import { radiansFromDegrees } from '../units/angle.ts';

type Place = Setup['place'];

/** Air of a clear dark site: what the schema gives a sky whose numbers are left out. */
export const plainAir: NonNullable<Place['sky']> = {
  zenithMagnitude: 21.7,
  extinctionMagnitudes: 0.2,
  thinCloudDepth: 0,
};

/**
 * What the bodies of the sky are worked out from, for the hour of a place and any air: also where the light is plain, to
 * say where the moon really stands. Degrees of the document become radians, its local time an instant.
 *
 * @returns null where this machine does not know the zone
 */
export const hourInputOf = (place: Place, air: NonNullable<Place['sky']> = place.sky ?? plainAir): SkyInput | null => {
  const instant = instantOf(place.localTime, place.timeZone);
  if (instant.kind !== 'instant') return null;
  return {
    latitudeRadians: radiansFromDegrees(place.latitudeDegrees),
    longitudeRadians: radiansFromDegrees(place.longitudeDegrees),
    utcMilliseconds: instant.utcMilliseconds,
    northRadians: radiansFromDegrees(place.northDegrees),
    zenithMagnitude: air.zenithMagnitude,
    extinctionMagnitudes: air.extinctionMagnitudes,
    thinCloudDepth: air.thinCloudDepth,
  };
};

/** The sky that a place is lit by. Null where its light is plain, and where this machine does not know the zone. */
export const skyInputOf = (place: Place): SkyInput | null => (place.sky ? hourInputOf(place, place.sky) : null);

/** The glow of the towns round a place. */
export const glowDomesOf = ({ glowDomes }: Pick<Place, 'glowDomes'>): GlowDome[] =>
  glowDomes.map(({ bearingDegrees, widthDegrees, luminanceAt10DegreesCdM2, temperatureKelvin }) => ({
    bearingRadians: radiansFromDegrees(bearingDegrees),
    halfWidthRadians: radiansFromDegrees(widthDegrees / 2),
    luminanceAt10DegreesCdM2,
    temperatureKelvin,
  }));

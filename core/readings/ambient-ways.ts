import { luminanceOfLinearSrgb } from '../colour/srgb.ts';
import { scale } from '../geometry/vec.ts';
import type { Setup } from '../setup/schema/setup.ts';
import { altitudeOf, directionFromBearing } from '../sky/frames-body.ts';
import { glowLuminance } from '../sky/glow-luminance.ts';
import { degreesFromRadians, radiansFromDegrees, wrapDegrees } from '../units/angle.ts';
import { glowDomesOf } from '../world/sky-of-place.ts';
import type { WorldLight } from '../world/world.ts';
import { clearSkyOf, moonOf, skyLuxOf } from './frame-sky.ts';

/** Where the lights stand that a place has without lamps, as far as their shadows show: bearings from the scene's north. */
export interface AmbientWays {
  readonly moonBearingDegrees: number | null;
  readonly glowBearingDegrees: number | null;
}

/** From here up a light stands so high that its shadow has no way to point; our choice. */
export const steepDegrees = 85;
/** A moon that gives less than this share of the sky's light draws no shadow that shows, 0.14 stop; our choice. */
const shownShare = 0.1;
/** Height at which a glow is held against the sky around it: where the document tells how bright it is. */
const glowAltitudeRadians = radiansFromDegrees(10);

/**
 * The ways that a frame's moon and the glow of towns stand. A moon steeply overhead, and one that is lost in the light of
 * the sky, count as none. Of towns the one counts that stands out most, if its glow is brighter ten degrees up than all the
 * sky around it, both over any haze; the document's bearings of towns are true ones.
 */
export const ambientWays = (
  place: Pick<Setup['place'], 'glowDomes' | 'northDegrees'>,
  frame: { readonly lights: readonly WorldLight[] },
): AmbientWays => {
  const moon = moonOf(frame);
  const moonShows =
    moon !== null &&
    moon.lux >= shownShare * skyLuxOf(frame) &&
    degreesFromRadians(altitudeOf(moon.toward)) <= steepDegrees;
  const north = radiansFromDegrees(place.northDegrees);
  const sky = clearSkyOf(frame);
  const isPlain = frame.lights.some(({ source }) => source.kind === 'sky');
  let [best, most]: [number | null, number] = [null, 1];
  for (const dome of glowDomesOf(place)) {
    const toward = directionFromBearing(dome.bearingRadians, glowAltitudeRadians, north);
    const own = luminanceOfLinearSrgb(scale(glowLuminance(dome, north)(toward), dome.luminanceAt10DegreesCdM2));
    // the sky of an hour is seen with the glow in it
    const around = luminanceOfLinearSrgb(sky(toward)) - (isPlain ? 0 : own);
    const over = own > 0 ? own / Math.max(around, 1e-12) : 0;
    if (over > most) [best, most] = [dome.bearingRadians, over];
  }
  return {
    moonBearingDegrees:
      moon && moonShows ? wrapDegrees(degreesFromRadians(Math.atan2(moon.toward[0], -moon.toward[2]))) : null,
    glowBearingDegrees: best === null ? null : wrapDegrees(degreesFromRadians(best) - place.northDegrees),
  };
};

import { pixelPitchMicrometres } from '../camera/sensors.ts';
import { seenSkyOf } from '../readings/frame-sky.ts';
import { moonGlare } from '../readings/moon-glare.ts';
import { isSkySeen } from '../readings/moon-reading.ts';
import { skyAt } from '../sky/sky-at.ts';
import { blendParts } from './blend-parts.ts';
import type { SchemeRule } from './caution.ts';
import { percentText } from './caution-texts.ts';
import { limits } from './limits.ts';
import { moonsetAfter } from './night-times.ts';

/** The camera sees the moon. Of several frames that show the sky the one that it spoils most is told. */
export const moonInFrame: SchemeRule = (schemeCase) => {
  const { setup, scheme, world, sky } = schemeCase;
  const seen = world.frames[0] && seenSkyOf(world.frames[0]);
  // by day it spoils nothing, and the sun is told of
  if (!sky?.reading.moon.isUp || !seen || sky.reading.sun.altitudeDegrees > limits.sunDegrees.up) return [];
  const { moon } = skyAt(seen.input);
  if (!isSkySeen(world, moon.towardSeen)) return [];
  const [worst] = blendParts(schemeCase)
    .filter(({ hasSky }) => hasSky)
    .map(({ frame, worldFrame }) => ({ frame, glare: moonGlare(world, worldFrame, moon.towardSeen) }))
    .sort((a, b) => b.glare.fullShare - a.glare.fullShare);
  if (!worst) return [];
  const { focalLengthMm, sensor } = scheme.camera ?? setup.camera;
  const pixels = (2 * Math.tan(moon.radiusRadians) * focalLengthMm * 1000) / pixelPitchMicrometres(sensor);
  const { fullShare, radiusDegrees } = worst.glare;
  const white =
    radiusDegrees > 0
      ? `the sky round it is white up to ${radiusDegrees.toFixed(radiusDegrees < 2 ? 1 : 0)}° from it, ${percentText(fullShare)} of the picture`
      : 'its disc is white';
  const sets = moonsetAfter(seen.input, setup.place.timeZone);
  const wait = sets ? `wait until it sets at ${sets}` : 'take another night: it stays up through this one';
  const { id, name } = worst.frame;
  return [
    {
      code: 'moon-in-frame',
      severity: fullShare > limits.moonGlareShare ? 'warning' : 'note',
      frameId: id,
      message: `${name}: the moon is in the picture, ${pixels.toFixed(0)} pixels wide, and ${white}; lenses add flare. Turn the camera, hide it behind the land, or ${wait}.`,
      value: fullShare,
      limit: limits.moonGlareShare,
    },
  ];
};

import { seenSkyOf } from '../readings/frame-sky.ts';
import type { SchemeRule } from './caution.ts';
import { limits } from './limits.ts';
import { moonsetAfter } from './night-times.ts';
import { isStarFrame } from './star-frame.ts';

/** The core of the Milky Way is in the picture, and the moon makes the sky so bright that little of it is left. */
export const moonWashesCore: SchemeRule = ({ setup, scheme, world, sky }) => {
  const star = scheme.frames.find((frame) => isStarFrame(scheme, frame));
  const input = world.frames[0] && seenSkyOf(world.frames[0])?.input;
  if (!sky || !star || !input) return [];
  const { moon, core, sun, zenithMagnitude: value } = sky.reading;
  const limit = limits.washedZenithMagnitude;
  const isMoons = moon.isUp && sun.altitudeDegrees <= limits.sunDegrees.dark && input.zenithMagnitude > limit;
  if (!isMoons || !core.isInFrame || value >= limit) return [];
  const sets = moonsetAfter(input, setup.place.timeZone);
  return [
    {
      code: 'moon-washes-core',
      severity: 'note',
      frameId: star.id,
      message: `${star.name}: the moon, ${Math.round(100 * moon.litShare)} % lit, washes the Milky Way out: ${value.toFixed(1)} mag/arcsec² straight up instead of ${input.zenithMagnitude.toFixed(1)}. ${sets ? `It sets at ${sets}: take the sky after that,` : 'It stays up through this night: take another,'} or go without the Milky Way.`,
      value,
      limit,
    },
  ];
};

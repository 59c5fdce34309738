import { seenSkyOf } from '../readings/frame-sky.ts';
import { clockAt } from '../sky/clock-at.ts';
import { nightOf } from '../sky/night-of.ts';
import type { SkyInput } from '../sky/sky-input.ts';
import { degreesFromRadians } from '../units/angle.ts';
import type { SchemeRule } from './caution.ts';
import { limits } from './limits.ts';
import { isStarFrame } from './star-frame.ts';

const degrees = (value: number): string => `${Math.abs(value).toFixed(Math.abs(value) < 10 ? 1 : 0)}°`;

/** When this night is dark; or that it is not. */
const darkWords = (input: SkyInput, timeZone: string): string => {
  const { dark, darkest } = nightOf(input);
  const now = input.utcMilliseconds;
  const next = dark.find(({ endMilliseconds }) => endMilliseconds > now);
  const clock = (milliseconds: number) => clockAt(milliseconds, timeZone);
  if (next)
    return `It is dark from ${clock(next.startMilliseconds)} to ${clock(next.endMilliseconds)}: shoot the stars then.`;
  const last = dark.at(-1);
  if (last) return `It was dark until ${clock(last.endMilliseconds)}: shoot the stars before that.`;
  const lowest = degreesFromRadians(darkest.altitudeRadians);
  return lowest > 0
    ? 'The sun does not set in this night: take another date.'
    : `This night does not get quite dark; it is darkest at ${clock(darkest.utcMilliseconds)}, the sun ${degrees(lowest)} down.`;
};

/** The sun is up, or it is still twilight, or again, when a frame is to give the picture its stars. */
export const twilight: SchemeRule = ({ setup, scheme, world, sky }) => {
  const [first] = scheme.frames;
  const input = world.frames[0] && seenSkyOf(world.frames[0])?.input;
  if (!sky || !first || !input) return [];
  const value = sky.reading.sun.altitudeDegrees;
  const { up, nautical, dark } = limits.sunDegrees;
  const { timeZone } = setup.place;
  if (value > up)
    return [
      {
        code: 'sun-up',
        severity: 'warning',
        frameId: first.id,
        message: `The sun is up (its middle at ${value.toFixed(1)}°): day. The picture leaves out its light on the land. ${darkWords(input, timeZone)}`,
        value,
        limit: up,
      },
    ];
  const star = scheme.frames.find((frame) => isStarFrame(scheme, frame));
  if (!star || value <= dark) return [];
  return [
    {
      code: 'twilight',
      severity: value > nautical ? 'warning' : 'note',
      frameId: star.id,
      message: `${star.name}: twilight, the sun is ${degrees(value)} under the horizon. ${value > nautical ? 'Few stars show, and no Milky Way.' : 'The sky is still lighter than by night.'} ${darkWords(input, timeZone)}`,
      value,
      limit: dark,
    },
  ];
};

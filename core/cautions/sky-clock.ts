import { type ClockNote, instantOf } from '../sky/zoned-time.ts';
import type { SchemeRule } from './caution.ts';

const noteWords: Readonly<Record<Exclude<ClockNote, 'once'>, string>> = {
  skipped: 'the clocks are put forward and skip it; the sky is that of as long after the jump. Set a time that comes.',
  twice: 'the clocks are put back and show it twice; the sky is that of the first time. Make sure which one you mean.',
};

/** The sky can't be drawn, since this machine does not know the zone; or the time of the clock is not plain. */
export const skyClock: SchemeRule = ({ setup: { place }, scheme }) => {
  const [first] = scheme.frames;
  if (!first || place.sky === null) return [];
  const instant = instantOf(place.localTime, place.timeZone);
  if (instant.kind !== 'instant')
    return [
      {
        code: 'zone-unknown',
        severity: 'warning',
        frameId: first.id,
        message: `The sky of the hour is not drawn: the time zone “${place.timeZone}” is unknown to this machine. The plain light of the setup stands in for it. Set another zone under Place.`,
      },
    ];
  if (instant.note === 'once') return [];
  return [
    {
      code: 'clock-change',
      severity: 'note',
      frameId: first.id,
      message: `The time ${place.localTime.slice(11, 16)} is not plain: ${noteWords[instant.note]}`,
    },
  ];
};

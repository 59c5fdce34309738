import { clockAt } from '../../../core/sky/clock-at.ts';
import { moonHaloLux } from '../../../core/sky/moon-halo.ts';
import { moonLight } from '../../../core/sky/moon-light.ts';
import type { Night } from '../../../core/sky/night.ts';
import type { SkyEvent } from '../../../core/sky/night-event.ts';
import type { Span } from '../../../core/sky/night-spans.ts';
import { degreesFromRadians } from '../../../core/units/angle.ts';
import type { Hour } from '../state/hour-of-place.ts';
import { bearingOfRadians, bearingText, heightText, lightWord, litText } from '../ui/sky-words.ts';
import { threeFigures } from '../ui/words.ts';
import type { GroundLight } from './ground-light.ts';

/** What is told of a night, and of an hour. */
type NightName = 'Sun' | 'Dusk' | 'Dark' | 'Dawn' | 'Moon' | 'Its phase' | 'Dark, no moon' | 'Core in the dark';
type HourName = 'Now' | 'Moonlight' | 'Its shadows' | 'Core' | 'Sky straight up' | 'Sky on the ground';

/** A number of the hour or the night, with its name. */
export type HourRow = readonly [name: NightName | HourName, text: string];

type Clock = (milliseconds: number) => string;

/** A span that is longer than this is all there is between two noons. */
const allMilliseconds = 23.8 * 3_600_000;

const spansText = (spans: readonly Span[], clock: Clock): string =>
  spans
    .map(({ startMilliseconds, endMilliseconds }) =>
      endMilliseconds - startMilliseconds > allMilliseconds
        ? 'from noon to noon'
        : `${clock(startMilliseconds)} to ${clock(endMilliseconds)}`,
    )
    .join(', ');

const sunText = ({ sunset, sunrise, noonAltitudeRadians }: Night, clock: Clock): string => {
  if (!sunset && !sunrise) return noonAltitudeRadians > 0 ? 'does not set' : 'does not rise';
  return [
    sunset ? `sets ${clock(sunset.utcMilliseconds)}` : 'does not set',
    sunrise ? `rises ${clock(sunrise.utcMilliseconds)}` : 'does not rise',
  ].join(' · ');
};

/** Twilights that end or begin; the last of them is the dark, which has a row of its own. */
const twilightText = (
  events: readonly (readonly [name: string, event: SkyEvent | null])[],
  word: string,
  clock: Clock,
): string =>
  events.flatMap(([name, event]) => (event ? [`${name} ${word} ${clock(event.utcMilliseconds)}`] : [])).join(', ');

const darkText = ({ dark, darkest }: Night, clock: Clock): string => {
  if (dark.length > 0) return spansText(dark, clock);
  const degrees = Math.round(Math.abs(degreesFromRadians(darkest.altitudeRadians)));
  return darkest.altitudeRadians > 0
    ? `not at all: the sun stays ${degrees}° up or higher`
    : `never quite: the sun is ${degrees}° down at most`;
};

const riseText = (rise: SkyEvent | null, set: SkyEvent | null, isUp: boolean, clock: Clock): string => {
  const parts = [
    ...(rise ? [{ at: rise.utcMilliseconds, text: `rises ${clock(rise.utcMilliseconds)}` }] : []),
    ...(set ? [{ at: set.utcMilliseconds, text: `sets ${clock(set.utcMilliseconds)}` }] : []),
  ].sort((a, b) => a.at - b.at);
  if (parts.length === 0) return isUp ? 'up all night' : 'down all night';
  return parts.map(({ text }) => text).join(' · ');
};

/** "24° up, 134° SE". */
const standsAt = (altitudeRadians: number, bearingRadians: number): string =>
  `${heightText(altitudeRadians)}, ${bearingOfRadians(bearingRadians)}`;

/** The night's own numbers: what does not change while the hour is dragged through it. */
export const nightRows = (night: Night, timeZone: string): HourRow[] => {
  const clock: Clock = (milliseconds) => clockAt(milliseconds, timeZone);
  const { core } = night;
  const dusk = [
    ['civil', night.civilDusk],
    ['nautical', night.nauticalDusk],
  ] as const;
  const dawn = [
    ['nautical', night.nauticalDawn],
    ['civil', night.civilDawn],
  ] as const;
  return [
    ['Sun', sunText(night, clock)],
    ['Dusk', twilightText(dusk, 'to', clock) || 'none'],
    ['Dark', darkText(night, clock)],
    ['Dawn', twilightText(dawn, 'from', clock) || 'none'],
    ['Moon', riseText(night.moonrise, night.moonset, night.moonUp.length > 0, clock)],
    ['Its phase', `${night.moonPhase}, ${litText(night.moonLitShare)}`],
    ['Dark, no moon', spansText(night.darkMoonless, clock) || 'not this night'],
    ['Core in the dark', spansText(core.upInDark, clock) || 'not this night'],
  ];
};

/** Light in lux, as lamps are told. */
const luxText = (lux: number): string => `${threeFigures(lux)} lx`;

/** Shadows lie away from the moon, the longer the lower it stands. */
const shadowText = ({ sky: { moon } }: Hour): string => {
  const degrees = degreesFromRadians(moon.bearingRadians) + 180;
  const times = 1 / Math.tan(Math.max(Math.asin(moon.towardSeen[1]), 1e-3));
  const length = times > 20 ? 'very long' : `${times.toFixed(1)} × the height`;
  return `fall to ${bearingText(degrees)}, ${length}`;
};

/** Moonlight under this share of the sky's light throws no shadow that is seen; our choice. */
const leastOfSky = 0.1;

/** What stands where at the hour. */
export const hourRows = (hour: Hour, ground: GroundLight | null): HourRow[] => {
  const { sky, core } = hour;
  const light = moonLight(sky);
  // with what thin cloud spreads close round it, which comes from nearly the same way
  const moonLux = (light?.lux ?? 0) + moonHaloLux(sky);
  return [
    ['Now', lightWord(sky.sun.altitudeRadians)],
    ['Sun', standsAt(sky.sun.altitudeRadians, sky.sun.bearingRadians)],
    ['Moon', standsAt(sky.moon.altitudeRadians, sky.moon.bearingRadians)],
    ...(light
      ? ([
          ['Moonlight', `${luxText(moonLux)} facing it`],
          ['Its shadows', ground && moonLux < ground.lux * leastOfSky ? 'too weak beside the sky' : shadowText(hour)],
        ] as const)
      : []),
    ['Core', standsAt(core.altitudeRadians, core.bearingRadians)],
    ...(ground
      ? ([
          ['Sky straight up', `${ground.zenithMagnitude.toFixed(1)} mag/arcsec²`],
          ['Sky on the ground', luxText(ground.lux)],
        ] as const)
      : []),
  ];
};

/** The hour in very few words: "dark · moon 24° up · core down". */
export const shortHourWords = ({ sky, core }: Hour): string => {
  const where = (name: string, { altitudeRadians }: { altitudeRadians: number }) =>
    `${name} ${altitudeRadians > 0 ? heightText(altitudeRadians) : 'down'}`;
  return [lightWord(sky.sun.altitudeRadians), where('moon', sky.moon), where('core', core)].join(' · ');
};

/** The same with bearings: "dark · moon 24° up, 134° SE · core down". */
export const hourWords = ({ sky, core }: Hour): string => {
  const where = (
    name: string,
    { altitudeRadians, bearingRadians }: { altitudeRadians: number; bearingRadians: number },
  ) => (altitudeRadians > 0 ? `${name} ${standsAt(altitudeRadians, bearingRadians)}` : `${name} down`);
  return [lightWord(sky.sun.altitudeRadians), where('moon', sky.moon), where('core', core)].join(' · ');
};

import type { Setup } from '../setup/schema/setup.ts';
import { clockAt } from '../sky/clock-at.ts';
import type { SkyEvent } from '../sky/night-event.ts';
import { nightOf } from '../sky/night-of.ts';
import type { Span } from '../sky/night-spans.ts';
import { skyAt } from '../sky/sky-at.ts';
import { degreesFromRadians } from '../units/angle.ts';
import { hourInputOf } from '../world/sky-of-place.ts';
import type { CardNight, CardSky } from './field-card.ts';

const nightAt = (place: Setup['place']): CardNight | null => {
  const input = hourInputOf(place);
  if (!input) return null;
  const clock = (milliseconds: number) => clockAt(milliseconds, place.timeZone);
  const event = (each: SkyEvent | null) => each && clock(each.utcMilliseconds);
  const spans = (each: readonly Span[]) =>
    each.map(({ startMilliseconds, endMilliseconds }) => ({
      from: clock(startMilliseconds),
      to: clock(endMilliseconds),
    }));
  const night = nightOf(input);
  const { moon } = skyAt(input);
  return {
    phase: night.moonPhase,
    litShare: night.moonLitShare,
    moonAltitudeDegrees: degreesFromRadians(moon.altitudeRadians),
    moonBearingDegrees: degreesFromRadians(moon.bearingRadians),
    moonrise: event(night.moonrise),
    moonset: event(night.moonset),
    dark: spans(night.dark),
    darkMoonless: spans(night.darkMoonless),
  };
};

/** Date, moon and dark hours of a place, whatever light its picture is made with. */
export const cardSky = (place: Setup['place']): CardSky => ({
  localTime: place.localTime,
  timeZone: place.timeZone,
  latitudeDegrees: place.latitudeDegrees,
  longitudeDegrees: place.longitudeDegrees,
  isPictured: place.sky !== null,
  night: nightAt(place),
});

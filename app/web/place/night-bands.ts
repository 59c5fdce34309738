import { clockAt } from '../../../core/sky/clock-at.ts';
import type { Night } from '../../../core/sky/night.ts';
import type { Span } from '../../../core/sky/night-spans.ts';

export type LightKind = 'day' | 'civil' | 'nautical' | 'astronomical' | 'dark';

export interface LightBand extends Span {
  readonly kind: LightKind;
}

const kinds = ['day', 'civil', 'nautical', 'astronomical', 'dark'] as const;

/** Sun's height over which each begins, degrees: the usual definitions. */
const limitDegrees = [-50 / 60, -6, -12, -18] as const;

const kindAt = (altitudeRadians: number): number => {
  const degrees = (altitudeRadians * 180) / Math.PI;
  const place = limitDegrees.findIndex((limit) => degrees > limit);
  return place < 0 ? kinds.length - 1 : place;
};

/**
 * How light it is from noon to noon, without gaps. Where the sun does not go through a limit, it is one step lighter, or
 * darker, throughout.
 */
export const lightBands = (night: Night): LightBand[] => {
  const { startMilliseconds: start, endMilliseconds: end } = night;
  const falling = [night.sunset, night.civilDusk, night.nauticalDusk, night.astronomicalDusk];
  const rising = [night.astronomicalDawn, night.nauticalDawn, night.civilDawn, night.sunrise];
  let now = kindAt(night.noonAltitudeRadians);
  const bands: LightBand[] = [];
  let from = start;
  const turnTo = (place: number, at: number) => {
    if (place === now) return;
    if (at > from) bands.push({ kind: kinds[now] as LightKind, startMilliseconds: from, endMilliseconds: at });
    [now, from] = [place, at];
  };
  falling.forEach((event, i) => {
    if (event && event.utcMilliseconds >= from) turnTo(i + 1, event.utcMilliseconds);
  });
  rising.forEach((event, i) => {
    if (event && event.utcMilliseconds >= from) turnTo(3 - i, event.utcMilliseconds);
  });
  bands.push({ kind: kinds[now] as LightKind, startMilliseconds: from, endMilliseconds: end });
  return bands;
};

/** When the core of the Milky Way is over the horizon, by day or by night. */
export const coreUp = ({ core, startMilliseconds, endMilliseconds }: Night): Span[] => {
  const { rise, set, highest } = core;
  if (!highest) return [];
  const [up, down] = [rise?.utcMilliseconds, set?.utcMilliseconds];
  if (up === undefined && down === undefined) return [{ startMilliseconds, endMilliseconds }];
  if (up !== undefined && down !== undefined && down < up)
    return [
      { startMilliseconds, endMilliseconds: down },
      { startMilliseconds: up, endMilliseconds },
    ];
  return [{ startMilliseconds: up ?? startMilliseconds, endMilliseconds: down ?? endMilliseconds }];
};

/** Room that a word, and a word with two times, need, pixels. */
const [wordPixels, timesPixels] = [40, 132];

/** What stands in a band as wide as that: "day", "dark 19:03 to 05:11"; nothing where it is narrow. */
export const bandWord = (band: LightBand, timeZone: string, pixels: number): string => {
  const { kind, startMilliseconds, endMilliseconds } = band;
  if (kind === 'dark' && pixels > timesPixels)
    return `dark ${clockAt(startMilliseconds, timeZone)} to ${clockAt(endMilliseconds, timeZone)}`;
  return pixels > (kind === 'day' || kind === 'dark' ? wordPixels : 2 * wordPixels) ? kind : '';
};

/** When something is up, in a bar as wide as that: "up 19:12 to 01:23", "up to 01:23"; nothing where it is narrow. */
export const upWords = (span: Span, night: Night, timeZone: string, pixels: number): string => {
  const begins = span.startMilliseconds > night.startMilliseconds;
  const ends = span.endMilliseconds < night.endMilliseconds;
  const [from, to] = [clockAt(span.startMilliseconds, timeZone), clockAt(span.endMilliseconds, timeZone)];
  if (pixels < 2 * wordPixels) return pixels > wordPixels / 2 ? 'up' : '';
  if (begins && ends) return pixels > timesPixels ? `up ${from} to ${to}` : 'up';
  return begins ? `up from ${from}` : ends ? `up to ${to}` : 'up all night';
};

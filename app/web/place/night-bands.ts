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

import { type Night, nightRound } from './night.ts';
import type { SkyInput } from './sky-input.ts';

interface KeptNight {
  readonly latitudeRadians: number;
  readonly longitudeRadians: number;
  readonly night: Night;
}

/** The last few: as many as a person steps through to and fro. */
const most = 12;
const kept: KeptNight[] = [];

/** The night round an instant at a place, worked out once for all of its hours. */
export const nightOf = (input: SkyInput): Night => {
  const { latitudeRadians, longitudeRadians, utcMilliseconds } = input;
  const known = kept.find(
    (each) =>
      each.latitudeRadians === latitudeRadians &&
      each.longitudeRadians === longitudeRadians &&
      each.night.startMilliseconds <= utcMilliseconds &&
      utcMilliseconds < each.night.endMilliseconds,
  );
  if (known) return known.night;
  const night = nightRound(input);
  kept.unshift({ latitudeRadians, longitudeRadians, night });
  kept.length = Math.min(kept.length, most);
  return night;
};

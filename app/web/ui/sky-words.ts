import { twilightName } from '../../../core/sky/twilight-name.ts';
import { degreesFromRadians, wrapDegrees } from '../../../core/units/angle.ts';

const winds = ['N', 'NE', 'E', 'SE', 'S', 'SW', 'W', 'NW'] as const;

/** "134° SE": a bearing in whole degrees with the nearest of eight winds. */
export const bearingText = (degrees: number): string => {
  const whole = Math.round(wrapDegrees(degrees)) % 360;
  return `${whole}° ${winds[Math.round(whole / 45) % 8]}`;
};

/** The same from radians. */
export const bearingOfRadians = (radians: number): string => bearingText(degreesFromRadians(radians));

/** "24° up", "on the horizon", "8° below the horizon". */
export const heightText = (altitudeRadians: number): string => {
  const degrees = Math.round(degreesFromRadians(altitudeRadians));
  if (degrees === 0) return 'on the horizon';
  return degrees > 0 ? `${degrees}° up` : `${-degrees}° below the horizon`;
};

/** "53 %", and a hair of moon is not none. */
export const litText = (share: number): string =>
  share > 0 && share < 0.005 ? 'under 1 % lit' : `${Math.round(100 * share)} % lit`;

/** Plain sense of a zenith's darkness in mag/arcsec2 (common practice, no published source). */
export const darknessWord = (magnitude: number): string => {
  if (magnitude >= 21.8) return 'no lamps for far around';
  if (magnitude >= 21.3) return 'dark country';
  if (magnitude >= 20.5) return 'country, some glow';
  if (magnitude >= 19.5) return 'near a small town';
  return magnitude >= 18 ? 'suburb' : 'town';
};

/** Plain sense of the light lost straight up, magnitudes (common practice, no published source). */
export const clearnessWord = (magnitudes: number): string => {
  if (magnitudes < 0.15) return 'high and dry';
  if (magnitudes < 0.24) return 'clear';
  return magnitudes < 0.35 ? 'a little hazy' : 'hazy';
};

/** Plain sense of an optical depth of thin high cloud (common practice, no published source). */
export const cloudWord = (depth: number): string => {
  if (depth === 0) return 'none';
  if (depth < 0.3) return 'a veil';
  return depth < 1 ? 'stars dimmed' : 'few stars left';
};

/** Plain sense of how far one sees (common practice, no published source). */
export const visibilityWord = (km: number | null): string => {
  if (km === null) return 'clear';
  if (km < 1) return 'fog';
  if (km < 5) return 'mist';
  return km < 20 ? 'hazy' : 'clear air';
};

/** What the sun's height makes of the hour. */
export const lightWord = twilightName;

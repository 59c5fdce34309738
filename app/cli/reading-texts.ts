import type { PassReading } from '../../core/readings/pass-reading.ts';
import type { StarReading } from '../../core/readings/star-reading.ts';

/** How readings are said in the tables of all commands. */

/** "+1.3", "-0.4". */
export const withSign = (value: number): string => `${value < 0 ? '-' : '+'}${Math.abs(value).toFixed(1)}`;

const percent = (share: number): string => `${(share * 100).toFixed(0)} %`;

/** "59 % lit, +1.3 stops". */
export const rimText = ({ litShare, rimToFaceStops }: PassReading['rim']): string => {
  if (litShare === null) return 'not seen';
  const share = `${percent(litShare)} lit`;
  return rimToFaceStops === null ? share : `${share}, ${withSign(rimToFaceStops)} stops`;
};

/** To level ground and to the surface at the aim: "12° / 47°". */
export const grazingText = ({ grazingDegrees, target }: PassReading['relief']): string =>
  `${grazingDegrees.toFixed(0)}° / ${target ? `${target.grazingDegrees.toFixed(0)}°` : '-'}`;

/** "0.42, 17 % in shadow". */
export const patchText = ({ rmsContrast, shadowedShare }: NonNullable<PassReading['relief']['patch']>): string =>
  `${rmsContrast.toFixed(2)}, ${percent(shadowedShare)} in shadow`;

/** "stars draw 4.1 px", or in the middle and at most where it is known what the picture shows. */
export const starsText = ({ trailPixels, seen }: StarReading): string =>
  seen
    ? `stars draw ${seen.middle.trailPixels.toFixed(1)} px in the middle, ${seen.longest.trailPixels.toFixed(1)} at most`
    : `stars draw ${trailPixels.toFixed(1)} px`;

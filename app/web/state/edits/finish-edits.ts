import { luminanceWeights, rgbOf } from '../../../../core/setup/finish-presets.ts';
import type { Finish } from '../../../../core/setup/schema/setup.ts';

/** Changes of a finish: pure, each (finish, argument) -> finish. No more light comes back and goes through than falls in. */

type Rgb = [number, number, number];

const largestOf = (finish: Finish): number => Math.max(...rgbOf(finish));

/** To four figures after the point, for more read badly, and never over the most. */
const tidy = (share: number, most: number): number => Math.min(Math.round(share * 1e4) / 1e4, most);

/** Share returned evenly as the eye weighs it, without the sheen. */
export const evenShare = (finish: Finish): number =>
  rgbOf(finish).reduce((sum, v, c) => sum + v * (luminanceWeights[c] as number), 0);

/** Returns that share of light; a colour keeps its hue, as far as no part of it would come to more than all. */
export const withEvenShare = (finish: Finish, share: number): Finish => {
  const most = 1 - finish.transmittance;
  if (typeof finish.reflectance === 'number') return { ...finish, reflectance: tidy(share, most) };
  const now = evenShare(finish);
  if (now === 0) return { ...finish, reflectance: [share, share, share].map((v) => tidy(v, most)) as Rgb };
  const factor = Math.min(share / now, most / largestOf(finish));
  return { ...finish, reflectance: finish.reflectance.map((v) => tidy(v * factor, most)) as Rgb };
};

/** Most that `withEvenShare` can reach: the strongest part of the colour all returned. */
export const mostEvenShare = (finish: Finish): number => {
  const largest = largestOf(finish);
  const share = typeof finish.reflectance === 'number' || largest === 0 ? 1 : evenShare(finish) / largest;
  return (1 - finish.transmittance) * share;
};

export const withColour = (finish: Finish, rgb: readonly [number, number, number]): Finish => {
  const most = 1 - finish.transmittance;
  return { ...finish, reflectance: rgb.map((v) => tidy(v, most)) as Rgb };
};

/** Grey of the same share, or the colour of it that can be changed. */
export const asGrey = (finish: Finish, isGrey: boolean): Finish => ({
  ...finish,
  reflectance: isGrey ? tidy(evenShare(finish), largestOf(finish)) : ([...rgbOf(finish)] as Rgb),
});

/** Lets that share through, as far as what is returned leaves it. */
export const withTransmittance = (finish: Finish, share: number): Finish => ({
  ...finish,
  transmittance: Math.max(Math.min(share, 1 - largestOf(finish)), 0),
});

/** A plain word for a gloss; the steps are our own, no published source. */
export const glossWord = (gloss: number): string => {
  if (gloss >= 1) return 'mirror';
  if (gloss >= 0.55) return 'glossy';
  return gloss > 0 ? 'satin' : 'matt';
};

import { luminanceOfLinearSrgb } from '../colour/srgb.ts';
import { degreesFromRadians } from '../units/angle.ts';
import { moonLuxAboveAir, moonThroughAir, shareOfDiscAbove } from './moon-light.ts';
import type { SkyState } from './sky-state.ts';
import { starHalo } from './star-halo.ts';

/** The narrow glow that thin cloud puts round the moon. */
export interface MoonHalo {
  /** Light of all of it outside the air, lux on what faces it; the air takes its part yet, but no cloud does. */
  readonly luxAboveAir: number;
  /** Square of its spread and of the disc's own, radians: a round normal distribution. */
  readonly squareRadians: number;
}

/** Moonlight outside the air that cloud may glow with: none from a moon that has set, all from a degree up. */
export const moonLuxForCloud = ({ moon }: Pick<SkyState, 'moon'>): number => {
  const degrees = degreesFromRadians(Math.asin(Math.min(Math.max(moon.towardSeen[1], -1), 1)));
  return moonLuxAboveAir(moon) * Math.min(Math.max(degrees, 0), 1);
};

/** The glow round the moon as round a star, spread by the disc as well; see `starHalo`. */
export const moonHalo = (state: Pick<SkyState, 'input' | 'moon'>): MoonHalo => {
  const { input, moon } = state;
  const { share, spreadRadians } = starHalo(input.thinCloudDepth, moon.towardSeen[1]);
  return {
    luxAboveAir: share * moonLuxForCloud(state),
    squareRadians: spreadRadians ** 2 + moon.radiusRadians ** 2 / 4,
  };
};

/**
 * Light of that glow at the ground, lux on what faces the moon. It comes from so near the moon that it lights and casts
 * shadows with it, and is of its colour. Of a glow on the horizon the part over it: as of a disc of the same spread.
 */
export const moonHaloLux = (state: Pick<SkyState, 'input' | 'moon'>): number => {
  const { luxAboveAir, squareRadians } = moonHalo(state);
  if (luxAboveAir <= 0) return 0;
  const sine = state.moon.towardSeen[1];
  const above = shareOfDiscAbove(Math.asin(Math.min(sine, 1)) / (2 * Math.sqrt(squareRadians)));
  return luxAboveAir * above * luminanceOfLinearSrgb(moonThroughAir({ ...state.input, thinCloudDepth: 0 }, sine));
};

import { midGreyLinear } from '../camera/response.ts';
import { curveDoubtStops } from './photo-look.ts';
import type { SpotLevel } from './spot-level.ts';

/** One spot of a photo over another. */
export interface SpotsRatio {
  readonly ratio: number;
  /** Either way: the camera's curve at both, and how far each is known, stops. */
  readonly uncertaintyStops: number;
  /** Whether the brighter is full, so that it may be brighter still. */
  readonly isBurnt: boolean;
}

/** Share of a spot's pixels that may be full, and the darkest that is told, of display white: our choice. */
const [mostFull, leastLinear] = [0.02, 1e-4];

/** What one curve may have moved a spot by, away from mid-grey: it moves spots on both sides of it apart. */
const movedStops = (linear: number): number => {
  const stops = Math.log2(Math.max(linear, leastLinear) / midGreyLinear);
  return Math.sign(stops) * curveDoubtStops(stops, 'unknown');
};

/**
 * How bright a spot of a photo of unknown look is over another, in green, sRGB undone. Its camera's curve is not undone but
 * counts as doubt: as much as it may have moved the two apart or together (`photo-look.ts`), and how far each is known.
 */
export const spotsRatio = (spot: SpotLevel, over: SpotLevel): SpotsRatio => ({
  ratio: spot.green.linear / Math.max(over.green.linear, leastLinear),
  uncertaintyStops: Math.hypot(
    movedStops(spot.green.linear) - movedStops(over.green.linear),
    spot.green.doubtStops,
    over.green.doubtStops,
  ),
  isBurnt: Math.max(spot.full.green, over.full.green) > mostFull,
});

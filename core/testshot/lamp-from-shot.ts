import type { ShotComparison, SpotRefused } from './measured-against-predicted.ts';

/** What one shot says of a lamp. */
export interface LampFromShot {
  /** Real output over what the prediction took it for, stops. */
  readonly stops: number;
  readonly uncertaintyStops: number;
  /** Share of the predicted light at the spot that is the lamp's, 0 to 1. */
  readonly share: number;
}

/** A lamp that gives less than this of a spot is not judged by it; and what is less certain than this is not kept. Our choice. */
const [leastShare, mostUncertainStops] = [0.25, 1.5];
/** What a lamp may be off by: see the schema's `correctionStops`. */
const mostStops = 6;

/**
 * How far moon, sky and other lamps may be from what was predicted, stops either way: 0.3, some 23 %. Our moonlight is within
 * 0.29 stop of the published table from 45° up, 0.43 lower down (tests/reference/ACCURACY.md, row 5.2g); that airglow, thin
 * cloud and other lamps are no surer is common practice, no published source.
 */
export const restDoubtStops = 0.3;

/**
 * Puts a difference down to one lamp, all other light at the spot being as predicted: with m = photo over prediction and r =
 * the rest's share of the prediction, the lamp gives (m - r) / (1 - r) of what it was taken for. Its uncertainty is that of
 * the photo magnified by m / (m - r), and that of the rest (`restDoubtStops`) by r / (m - r), added as squares: the more moon
 * and sky there is, the less a spot says.
 *
 * @returns the lamp's stops, or why the spot does not tell
 */
export const lampFromShot = ({
  differenceStops,
  uncertaintyStops,
  restShare,
}: Pick<ShotComparison, 'differenceStops' | 'uncertaintyStops' | 'restShare'>): LampFromShot | SpotRefused => {
  const share = 1 - restShare;
  if (share < leastShare)
    return {
      refused: `Only ${Math.round(100 * share)} % of the light there is the lamp’s. Choose a spot that it lights more than all else.`,
    };
  const ratio = 2 ** differenceStops;
  const own = ratio - restShare;
  if (own <= 0)
    return {
      refused:
        'The photo is darker there than moon and sky alone should make it: the spots do not fit, or the night was darker.',
    };
  const uncertain = Math.hypot(uncertaintyStops * ratio, restDoubtStops * restShare) / own;
  if (uncertain > mostUncertainStops)
    return {
      refused: `The lamp’s part could only be told to ±${uncertain.toFixed(1)} stops there. Choose a spot that it lights more evenly, nearer mid-grey.`,
    };
  const stops = Math.log2(own / share);
  if (Math.abs(stops) > mostStops)
    return {
      refused: `The lamp would be off by ${Math.abs(stops).toFixed(1)} stops. That is no lamp’s fault: look at the settings, the level and the spots.`,
    };
  return { stops, uncertaintyStops: uncertain, share };
};

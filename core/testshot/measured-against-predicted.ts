import { midGreyLinear } from '../camera/response.ts';
import type { Triple } from '../colour/matrix.ts';
import { luminanceOfLinearSrgb } from '../colour/srgb.ts';
import { curveDoubtStops, type PhotoLook, undoneStops } from './photo-look.ts';
import type { PredictedSpot } from './predicted-spot.ts';
import type { SpotLevel } from './spot-level.ts';

/** A spot of a photo beside what was predicted for it. */
export interface ShotComparison {
  /** In which the two are compared. */
  readonly channel: 'green' | 'luminance';
  /** From mid-grey, in the photo, its look undone. */
  readonly measuredStops: number;
  /** From mid-grey. */
  readonly predictedStops: number;
  /** Photo over prediction: negative = the photo is darker. */
  readonly differenceStops: number;
  /** Either way: curve, noise, place of the click, colour and fall-off together. */
  readonly uncertaintyStops: number;
  /** What of it is the camera's own tone curve. */
  readonly curveStops: number;
  /** Share of the predicted light that is not the lamp's, 0 to 1, in that channel. */
  readonly restShare: number;
}

/** Why a spot can't be compared: a sentence for the screen, which says what to do. */
export interface SpotRefused {
  readonly refused: string;
}

/** Share of a spot's pixels that may be full, and lowest linear value, 6.5 stops under mid-grey: our choice. */
const [mostFull, leastLinear] = [0.02, 0.002];
/** Below this share of the brightest channel green tells little (a red or blue gel). */
const leastGreenShare = 0.15;
/** Share of a shift between red, green and blue that may have got into the channel compared; our choice. */
const colourLeak = 0.1;

const greenShare = ([r, g, b]: Triple): number => g / Math.max(r, g, b, 1e-12);

/** How far photo and prediction differ in colour: spread of the three channels' differences, stops. */
const colourShiftStops = (photo: Triple, predicted: Triple): number => {
  const shifts = photo.flatMap((v, c) => {
    const other = predicted[c] as number;
    return v > 0.001 && other > 0.001 ? [Math.log2(v / midGreyLinear / other)] : [];
  });
  return shifts.length > 1 ? Math.max(...shifts) - Math.min(...shifts) : 0;
};

/**
 * Compares a spot of a photo with its prediction. In green where there is enough of it: a camera’s white balance scales red
 * and blue to green, so that green keeps its place whatever the balance was (common practice, no published source); else in
 * luminance. What the two differ by in colour goes into the uncertainty with a tenth.
 *
 * @returns the comparison, or why there is none: the spot is full or black, or nothing was predicted there
 */
export const measuredAgainstPredicted = (
  spot: SpotLevel,
  { all, rest, spreadStops, falloffLeftOutStops }: PredictedSpot,
  look: PhotoLook,
): ShotComparison | SpotRefused => {
  const photo: Triple = [spot.red.linear, spot.green.linear, spot.blue.linear];
  const channel = Math.min(greenShare(photo), greenShare(all)) >= leastGreenShare ? 'green' : 'luminance';
  const full = channel === 'green' ? spot.full.green : Math.max(spot.full.red, spot.full.green, spot.full.blue);
  if (full > mostFull)
    return {
      refused: 'The spot is burnt out in the photo: how bright it was can’t be told. Choose a darker part of it.',
    };
  const { linear, doubtStops } = spot[channel];
  if (linear < leastLinear)
    return { refused: 'The spot is all but black in the photo. Choose a brighter one, or light it longer.' };
  const of = (colour: Triple) => (channel === 'green' ? colour[1] : luminanceOfLinearSrgb(colour));
  const predicted = of(all);
  if (!(predicted > 1e-4))
    return { refused: 'No light is predicted there. Choose a place in the picture that the lamp lights.' };
  const photoStops = Math.log2(linear / midGreyLinear);
  const measuredStops = undoneStops(photoStops, look);
  const predictedStops = Math.log2(predicted);
  const curveStops = curveDoubtStops(photoStops, look);
  const colour = colourLeak * colourShiftStops(photo, all);
  return {
    channel,
    measuredStops,
    predictedStops,
    differenceStops: measuredStops - predictedStops,
    uncertaintyStops: Math.hypot(curveStops, doubtStops, spreadStops / 2, colour, falloffLeftOutStops / 2),
    curveStops,
    restShare: Math.min(Math.max(of(rest) / predicted, 0), 1),
  };
};

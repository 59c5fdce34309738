/** One shot's verdict on a lamp: its real output against the box's, stops, and how far that is known. */
export interface ShotVerdict {
  readonly stops: number;
  readonly uncertaintyStops: number;
}

/** Several shots together. */
export interface CombinedShots {
  /** Median; 0 without a shot. */
  readonly correctionStops: number;
  /** From the lowest to the highest of them, stops. */
  readonly spreadStops: number;
  /** Either way, of the median. */
  readonly uncertaintyStops: number;
}

const median = (values: readonly number[]): number => {
  const sorted = [...values].sort((a, b) => a - b);
  const half = Math.floor(sorted.length / 2);
  const upper = sorted[half] as number;
  return sorted.length % 2 === 1 ? upper : ((sorted[half - 1] as number) + upper) / 2;
};

/** Limits of a lamp's `correctionStops` in the document. */
export const [leastCorrectionStops, mostCorrectionStops] = [-6, 4];

/**
 * The median of a lamp's shots, which one shot gone wrong does not move, kept to a hundredth of a stop. What is common to all
 * shots of a camera, its curve and its ISO, does not average out: the uncertainty is the median one of the shots, and no less
 * than half of their spread over the root of their number.
 */
export const combinedShots = (shots: readonly ShotVerdict[]): CombinedShots => {
  if (shots.length === 0) return { correctionStops: 0, spreadStops: 0, uncertaintyStops: 0 };
  const stops = shots.map((shot) => shot.stops);
  const spreadStops = Math.max(...stops) - Math.min(...stops);
  const middle = Math.min(Math.max(median(stops), leastCorrectionStops), mostCorrectionStops);
  return {
    correctionStops: Number(middle.toFixed(2)),
    spreadStops,
    uncertaintyStops: Math.max(
      median(shots.map(({ uncertaintyStops }) => uncertaintyStops)),
      spreadStops / 2 / Math.sqrt(shots.length),
    ),
  };
};

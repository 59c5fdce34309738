import { type DepthLimits, depthLimits } from './depth-of-field.ts';

/** What must be sharp, and with which lens. */
export interface FocusTask {
  readonly focalLengthMm: number;
  /** Exact f-number. */
  readonly fNumber: number;
  /** Largest blur that counts as sharp. */
  readonly cocMm: number;
  /** Nearest thing that must be sharp, from the lens; beyond the focal length. */
  readonly nearestMm: number;
  /** Farthest; Infinity for the stars. Not nearer than `nearestMm`. */
  readonly farthestMm: number;
  /** Share of its depth, in 1/distance, that a step has in common with the next, 0 to below 1. */
  readonly overlapShare?: number;
  /** Most frames that one is ready to make, 1 or more. */
  readonly maxSteps: number;
}

/** One frame of a focus stack: where to focus, and what is sharp then. */
export interface FocusStep extends DepthLimits {
  readonly focusMm: number;
}

/** Frames from near to far. */
export interface FocusPlan {
  readonly steps: readonly FocusStep[];
  /** False when `maxSteps` frames do not reach `farthestMm`. */
  readonly complete: boolean;
  /** Far limit of the last frame. */
  readonly coveredToMm: number;
}

/** Share of overlap that forgives a focus ring turned by hand; common practice, no published source. */
const usualOverlap = 0.1;

/** Halvings of the sharpness search: the circle is then known to 1 part in 10^9. */
const halvings = 30;

/**
 * Inverse focus distances from near to far at one circle of confusion, each as far out as the overlap lets it.
 * With u = 1/s and K = f^2/(N c), the thin-lens limits are straight lines in u:
 * 1/near = u (1 - f/K) + 1/K, 1/far = u (1 + f/K) - 1/K, and the depth between them is (2/K)(1 - f u).
 */
const stride = (task: FocusTask, cocMm: number): { inverses: number[]; reaches: boolean } => {
  const f = task.focalLengthMm;
  const inverseK = (task.fNumber * cocMm) / f ** 2;
  // the overlap is a share of the farther step's depth, the larger of the two
  const overlap = 2 * (task.overlapShare ?? usualOverlap) * inverseK;
  const inverses: number[] = [];
  let u = (1 / task.nearestMm - inverseK) / (1 - f * inverseK);
  while (inverses.length < task.maxSteps) {
    inverses.push(u);
    const inverseFar = u * (1 + f * inverseK) - inverseK;
    if (inverseFar <= 1 / task.farthestMm) return { inverses, reaches: true };
    u = (inverseFar - inverseK + overlap) / (1 - f * inverseK + overlap * f);
  }
  return { inverses, reaches: false };
};

/**
 * Focus distances, from near to far, whose depths of field join without gaps over a range, with as few frames as that
 * overlap allows. A few frames rarely come out even; the slack is then used for sharpness: the same number of frames is
 * spread as if for the smallest circle of confusion that still covers the range. The limits told are those of `cocMm`.
 * Exact thin-lens limits; the breathing of the lens and diffraction are not in it.
 *
 * When `maxSteps` frames are not enough, they start at the nearest thing and go as far as they do: `complete` is false.
 *
 * @throws RangeError when the range does not lie beyond the focal length or is turned round, when the overlap is not in
 * [0, 1), when `maxSteps` is below 1, or when the circle of confusion is not smaller than the lens opening f/N
 */
export const focusSteps = (task: FocusTask): FocusPlan => {
  const { focalLengthMm, fNumber, cocMm, nearestMm, farthestMm, overlapShare = usualOverlap, maxSteps } = task;
  if (!(nearestMm > focalLengthMm && farthestMm >= nearestMm))
    throw new RangeError(`range must lie beyond ${focalLengthMm} mm, near to far: ${nearestMm} to ${farthestMm} mm`);
  if (!(overlapShare >= 0 && overlapShare < 1)) throw new RangeError(`overlap must be in [0, 1): ${overlapShare}`);
  if (!(maxSteps >= 1)) throw new RangeError(`at least one frame: ${maxSteps}`);
  if (!(cocMm > 0 && fNumber * cocMm < focalLengthMm))
    throw new RangeError(`circle of confusion must be above 0 and below the lens opening: ${cocMm} mm`);
  let { inverses, reaches } = stride(task, cocMm);
  if (reaches) {
    const sameCount = { ...task, maxSteps: inverses.length };
    let [tooSmall, enough] = [0, cocMm];
    for (let n = 0; n < halvings; n++) {
      const middle = (tooSmall + enough) / 2;
      const finer = stride(sameCount, middle);
      if (finer.reaches) [inverses, enough] = [finer.inverses, middle];
      else tooSmall = middle;
    }
  }
  const steps = inverses.map((inverse) => {
    // a nearest thing beyond the hyperfocal distance asks for no more than infinity
    const focusMm = inverse > 0 ? 1 / inverse : Number.POSITIVE_INFINITY;
    return { focusMm, ...depthLimits(focalLengthMm, fNumber, cocMm, focusMm) };
  });
  return { steps, complete: reaches, coveredToMm: (steps.at(-1) as FocusStep).farMm };
};

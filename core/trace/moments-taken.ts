import type { Vec3 } from '../geometry/vec.ts';
import type { Pose } from '../photometry/emitter.ts';
import { feetOf } from '../world/holder.ts';
import type { Stage } from '../world/stage.ts';
import { placeAtShare, poseAt, type Source } from '../world/world.ts';
import { momentShift } from './sequence.ts';

export type LampSource = Extract<Source, { kind: 'lamp' }>;

/**
 * Moments of a moving lamp's on-time that one sample takes together; odd, so that the middle of the pass is one of those
 * of the first sample.
 */
export const momentsPerSample = 15;

/** A lamp at the moments of one sample. */
export interface MomentsTaken {
  readonly poses: readonly Pose[];
  /** Whoever holds the lamp: the middle of the feet at each moment; null where nobody is drawn. */
  readonly feet: readonly Vec3[] | null;
  /** Reflectance of the clothes. */
  readonly clothes: number;
}

/** How many moments a sample takes of a lamp: one where it stands. */
export const momentCountOf = ({ path }: LampSource): number => (path.length > 1 ? momentsPerSample : 1);

/**
 * The moments of a sample: one of each of fifteen equal parts of the on-time, all at the same place in their parts, which
 * moves on from sample to sample. A lamp that stands has one.
 */
export const momentsTaken = (stage: Stage, source: LampSource, sample: number): MomentsTaken => {
  const count = momentCountOf(source);
  const shift = momentShift(sample);
  const shares = Array.from({ length: count }, (_, m) => (m + (count > 1 ? shift : 0.5)) / count);
  const { holder } = source;
  return {
    poses: shares.map((share) => poseAt(source, share)),
    feet: holder?.isDrawn ? shares.map((share) => feetOf(stage, placeAtShare(source, share))) : null,
    clothes: holder?.reflectance ?? 0,
  };
};

/**
 * Draws one of several by weight.
 *
 * @param choice number in [0, 1)
 * @returns index, -1 when no weight is over 0
 */
export const drawnByWeight = (weights: readonly number[], choice: number): number => {
  const goal = choice * weights.reduce((sum, weight) => sum + weight, 0);
  let below = 0;
  let last = -1;
  for (const [i, weight] of weights.entries()) {
    if (weight <= 0) continue;
    below += weight;
    last = i;
    if (below > goal) return i;
  }
  return last;
};

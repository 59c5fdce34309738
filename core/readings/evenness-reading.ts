import { distance } from '../geometry/vec.ts';
import { stopsFromRatio } from '../units/stops.ts';
import { poseAt, type Source } from '../world/world.ts';
import { type FaceLight, litBy } from './face-light.ts';
import { percentile } from './percentile.ts';
import type { Silhouette } from './silhouette.ts';

/** How evenly a pass lights what the camera sees of its subject. */
export interface EvennessReading {
  /** From the 5th to the 95th percentile of the light on the lit part of the face; null when none of it is lit. */
  readonly evennessStops: number | null;
  /** What the inverse square alone makes from the nearest to the farthest point seen; null when the subject is not seen. */
  readonly fallOffStops: number | null;
  /** Share of the face that is lit at all, 0 to 1; null when the subject is not seen. */
  readonly faceLitShare: number | null;
}

/** Shares between which evenness is taken: the least and the greatest of all would hang on single rays. */
const [low, high] = [0.05, 0.95];

/** Nearer than this to the lamp distances are not told apart, as where light is sampled. */
const leastMetres = 1e-4;

const fallOff = ({ edge, face }: Silhouette, source: Source): number => {
  if (source.kind !== 'lamp') return 0;
  const { position } = poseAt(source, 0.5);
  let [nearest, farthest] = [Number.POSITIVE_INFINITY, leastMetres];
  // the outline holds the far ends, which a grid of rays just misses
  for (const { place } of [...edge, ...face.map(({ point }) => point)]) {
    const metres = Math.max(distance(position, place), leastMetres);
    [nearest, farthest] = [Math.min(nearest, metres), Math.max(farthest, metres)];
  }
  return 2 * stopsFromRatio(farthest / nearest);
};

/**
 * Reads how evenly a source lights a face. Every ray counts alike, whatever area it stands for: the picture shows it so,
 * and areas near the outline hang on a cosine that is hardly known. Light on the surface, not luminance: paint does not
 * make a lamp uneven. A moving lamp is metered over its way; its fall-off is that of the place half-way through.
 * Fall-off by inverse square; a source at infinity has none.
 *
 * @param light the source's light on the face
 */
export const evennessReading = (silhouette: Silhouette, light: FaceLight, source: Source): EvennessReading => {
  if (light.length === 0) return { evennessStops: null, fallOffStops: null, faceLitShare: null };
  const isLit = litBy(source);
  const lit = light.flatMap(({ point, lux }) => (isLit(point, lux) ? [lux] : []));
  return {
    evennessStops: lit.length > 0 ? stopsFromRatio(percentile(lit, high) / percentile(lit, low)) : null,
    fallOffStops: fallOff(silhouette, source),
    faceLitShare: lit.length / light.length,
  };
};

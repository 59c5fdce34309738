import { luminanceOfLinearSrgb } from '../colour/srgb.ts';
import { meterWith } from '../trace/meter.ts';
import { stopsFromRatio } from '../units/stops.ts';
import type { Stage } from '../world/stage.ts';
import type { Source } from '../world/world.ts';
import { type FaceLight, faceLight, litBy } from './face-light.ts';
import { readingSamples } from './reading-samples.ts';
import type { Silhouette } from './silhouette.ts';

/** How a pass lights a subject's outline as the camera sees it. */
export interface RimReading {
  /** Whose outline: the subject seen at the aim, else the one nearest to it; null where there is none. */
  readonly subjectId: string | null;
  /** Share of the outline that this pass lights, 0 to 1; null when the camera does not see the subject. */
  readonly litShare: number | null;
  /** How much brighter the lit outline is than the face as a whole, in stops; null when either is dark. */
  readonly rimToFaceStops: number | null;
}

const mean = (values: readonly number[]): number => values.reduce((sum, v) => sum + v, 0) / values.length;

/**
 * Reads the rim of one subject under one source: the lit part of its outline against its whole face.
 *
 * @param light the source's light on the face, where the caller has metered it already
 */
export const rimReading = (
  stage: Stage,
  { edge, face }: Silhouette,
  source: Source,
  light: FaceLight = faceLight(stage, face, source),
): Omit<RimReading, 'subjectId'> => {
  if (edge.length === 0) return { litShare: null, rimToFaceStops: null };
  const [isLit, samples] = [litBy(source), readingSamples(source)];
  const lit = edge.flatMap((point) => {
    const lux = meterWith(stage, source, point, samples);
    return isLit(point, lux) ? [lux * luminanceOfLinearSrgb(point.reflectance)] : [];
  });
  const faceMean = light.length > 0 ? mean(light.map(({ lux, reflectance }) => lux * reflectance)) : 0;
  return {
    litShare: lit.length / edge.length,
    rimToFaceStops: lit.length > 0 && faceMean > 0 ? stopsFromRatio(mean(lit) / faceMean) : null,
  };
};

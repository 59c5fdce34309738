import { luminanceOfLinearSrgb } from '../colour/srgb.ts';
import { distance } from '../geometry/vec.ts';
import { emitterPeakPerLumen } from '../photometry/emitter.ts';
import { meterWith } from '../trace/meter.ts';
import type { SurfacePoint } from '../trace/surface-point.ts';
import type { Stage } from '../world/stage.ts';
import { poseAt, type Source } from '../world/world.ts';
import { readingSamples } from './reading-samples.ts';
import type { FacePoint } from './silhouette.ts';

/** Light of one source on what the camera sees of a subject, at points spread evenly over its place in the picture. */
export type FaceLight = readonly {
  readonly point: SurfacePoint;
  /** Illuminance per unit strength of the source. */
  readonly lux: number;
  /** Luminous reflectance there, 0 to 1. */
  readonly reflectance: number;
  /** Part of the face that the point stands for; together they are the whole face. */
  readonly areaSquareMetres: number;
}[];

/** One of so many points of the face is metered. */
const stride = 3;

const areaOf = (points: readonly FacePoint[]): number => points.reduce((sum, each) => sum + each.areaSquareMetres, 0);

/**
 * Meters a source over a face, once for all readings of a pass; empty for a face that is not seen.
 *
 * @param every one of so many points is metered
 */
export const faceLight = (
  stage: Stage,
  face: readonly FacePoint[],
  source: Source,
  every: number = stride,
): FaceLight => {
  const metered = face.filter((_, i) => i % every === 0);
  const stretch = areaOf(face) / areaOf(metered);
  const samples = readingSamples(source);
  return metered.map(({ point, areaSquareMetres }) => ({
    point,
    lux: meterWith(stage, source, point, samples),
    reflectance: luminanceOfLinearSrgb(point.reflectance),
    areaSquareMetres: areaSquareMetres * stretch,
  }));
};

const leastShare = 0.01;

/**
 * Tells whether light of a source counts as light. Under a hundredth of what the source gives at a point at its best,
 * square on and in the middle of its beam all its way, it does not, or the far tail of a beam that misses would light
 * everything.
 *
 * @returns a test of a point and its light, lux per unit strength
 */
export const litBy = (source: Source): ((point: SurfacePoint, lux: number) => boolean) => {
  if (source.kind !== 'lamp') return (_, lux) => lux > leastShare;
  const stops = readingSamples(source).map(({ time }) => poseAt(source, time).position);
  const least = (leastShare * emitterPeakPerLumen(source.emitter)) / stops.length;
  return ({ place }, lux) => lux > least * stops.reduce((sum, stop) => sum + distance(stop, place) ** -2, 0);
};

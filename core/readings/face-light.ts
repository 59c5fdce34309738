import { luminanceOfLinearSrgb } from '../colour/srgb.ts';
import { distance } from '../geometry/vec.ts';
import { emitterPeakPerLumen } from '../photometry/emitter.ts';
import { meterReceiver } from '../trace/meter.ts';
import type { SurfacePoint } from '../trace/surface-point.ts';
import type { Stage } from '../world/stage.ts';
import { poseAt, type Source } from '../world/world.ts';
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

/** Samples over emitter and time that each point is metered with: many points share the noise. */
export const faceSamples = 4;
/** One of so many points of the face is metered. */
const stride = 3;

const areaOf = (points: readonly FacePoint[]): number => points.reduce((sum, each) => sum + each.areaSquareMetres, 0);

/** Meters a source over a face, once for all readings of a pass; empty for a face that is not seen. */
export const faceLight = (stage: Stage, face: readonly FacePoint[], source: Source): FaceLight => {
  const metered = face.filter((_, i) => i % stride === 0);
  const stretch = areaOf(face) / areaOf(metered);
  return metered.map(({ point, areaSquareMetres }) => ({
    point,
    lux: meterReceiver(stage, source, point, faceSamples),
    reflectance: luminanceOfLinearSrgb(point.reflectance),
    areaSquareMetres: areaSquareMetres * stretch,
  }));
};

/** Light that a source gives at its best at a point: square on, in the middle of its beam; lux per unit strength. */
const bestLight = (source: Source, { place }: SurfacePoint): number => {
  if (source.kind !== 'lamp') return 1;
  return emitterPeakPerLumen(source.emitter) / distance(poseAt(source, 0.5).position, place) ** 2;
};
const leastShare = 0.01;

/**
 * Whether light counts as light. Under a hundredth of what the source gives there at its best it does not, or the far tail
 * of a beam that misses would light everything.
 *
 * @param lux per unit strength
 */
export const countsAsLit = (source: Source, point: SurfacePoint, lux: number): boolean =>
  lux > leastShare * bestLight(source, point);

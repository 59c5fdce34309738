import { luminanceOfLinearSrgb } from '../colour/srgb.ts';
import { length, scale, sub, type Vec3 } from '../geometry/vec.ts';
import { openLampSample } from '../photometry/open-light.ts';
import type { SampleNumbers } from '../trace/arrival.ts';
import { irradianceSample } from '../trace/irradiance.ts';
import type { SurfacePoint } from '../trace/surface-point.ts';
import type { Stage } from '../world/stage.ts';
import { poseAt, type Source, type WorldLight } from '../world/world.ts';
import { litBy } from './face-light.ts';
import { readingSamples } from './reading-samples.ts';

/** What a light makes of the relief of a patch, as the camera sees it. */
export interface PatchReading {
  /** Standard deviation of luminance over its mean: 0 = flat, and in the dark. */
  readonly rmsContrast: number;
  /** Share of what the light would reach unhindered that faces away from it or is mostly hidden from it, 0 to 1. */
  readonly shadowedShare: number;
}

/** Light of one source on the points of a patch. */
export interface PatchLight {
  /** Illuminance per unit strength, point by point. */
  readonly lux: readonly number[];
  /** null where the source reaches nothing, and for the sky, which throws no shadow of its own. */
  readonly shadowedShare: number | null;
}

/** Light of one sample with nothing in the way, on a surface that faces the source. */
const openLux = (source: Source, { place }: SurfacePoint, { u, v, time }: SampleNumbers): number => {
  if (source.kind !== 'lamp') return source.kind === 'moon' ? 1 : 0;
  const pose = poseAt(source, time);
  const way = sub(pose.position, place);
  const normal: Vec3 = scale(way, 1 / Math.max(length(way), 1e-9));
  return openLampSample(source.emitter, pose, { place, normal }, u, v).lux;
};

/** Meters a source over a patch. */
export const patchLight = (stage: Stage, points: readonly SurfacePoint[], source: Source): PatchLight => {
  const [samples, isLit] = [readingSamples(source), litBy(source)];
  let [reached, shadowed] = [0, 0];
  const lux = points.map((point) => {
    let [sum, open, unhidden] = [0, 0, 0];
    for (const each of samples) {
      const unhindered = openLux(source, point, each);
      const sample = irradianceSample(stage, source, point, each);
      sum += sample;
      open += unhindered;
      if (sample > 0) unhidden += unhindered;
    }
    if (isLit(point, open / samples.length)) {
      reached++;
      if (unhidden < open / 2) shadowed++;
    }
    return sum / samples.length;
  });
  return { lux, shadowedShare: reached > 0 ? shadowed / reached : null };
};

/**
 * Standard deviation over mean of values that are not negative; null when all are nought. The RMS contrast of E. Peli,
 * "Contrast in complex images", J. Opt. Soc. Am. A 7, 1990, is the standard deviation of luminances between 0 and 1; here
 * they are measured by their own mean, so that neither exposure nor reflectance enters.
 */
const rmsContrast = (values: readonly number[]): number | null => {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  if (!(mean > 0)) return null;
  return Math.sqrt(values.reduce((sum, value) => sum + (value / mean - 1) ** 2, 0) / values.length);
};

const reflectanceOf = ({ reflectance }: SurfacePoint): number => luminanceOfLinearSrgb(reflectance);

/**
 * Reads a patch under one source alone; null when its beam does not reach the patch, were nothing in the way, and for the
 * sky. A patch that the beam would reach and that lies wholly in shadow has no contrast, and shadow all over. Luminance is
 * light times luminous reflectance: paint of several greys is contrast too.
 *
 * @param points as `patchView` gives them
 * @param light the source's light on them, where the caller has metered it already
 */
export const patchReading = (
  stage: Stage,
  points: readonly SurfacePoint[],
  source: Source,
  { lux, shadowedShare }: PatchLight = patchLight(stage, points, source),
): PatchReading | null => {
  if (shadowedShare === null) return null;
  const contrast = rmsContrast(points.map((point, i) => (lux[i] as number) * reflectanceOf(point)));
  return { rmsContrast: contrast ?? 0, shadowedShare };
};

/** RMS contrast of a patch under all lights of a frame together: fill takes it away. null when it is dark or not seen. */
export const patchContrast = (
  points: readonly SurfacePoint[],
  lights: readonly (readonly [light: Pick<WorldLight, 'strength' | 'seconds'>, lux: readonly number[]])[],
): number | null => {
  const weights = lights.map(([{ strength, seconds }]) => luminanceOfLinearSrgb(strength) * seconds);
  return rmsContrast(
    points.map((point, p) => {
      const dose = lights.reduce((sum, [, lux], i) => sum + (lux[p] as number) * (weights[i] as number), 0);
      return dose * reflectanceOf(point);
    }),
  );
};

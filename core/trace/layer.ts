import { type CameraView, type Ray, viewRay } from '../camera/camera-view.ts';
import { seenEmitter } from '../photometry/seen-emitter.ts';
import type { Stage } from '../world/stage.ts';
import { poseAt, type Source } from '../world/world.ts';
import { type BounceNumbers, type Bounces, bounceSample } from './bounce.ts';
import { irradianceSample } from './irradiance.ts';
import { chanceNumber, dimension, sampleNumber, scatteredNumber, sharedSampleNumber } from './sequence.ts';
import { type SurfacePoint, surfaceAlong } from './surface-point.ts';

/** Size of a picture in pixels and how many samples a pixel gets. */
export interface PictureSize {
  readonly width: number;
  readonly height: number;
  readonly samples: number;
}

/** A layer: mean luminance per unit strength, linear RGB, three numbers a pixel, rows from the top; cd/m^2 per lm or lx. */
export type Layer = Float64Array;

/** Luminance of the even sky per lux on level ground. */
const skyLuminancePerLux = 1 / Math.PI;

/** The random numbers of a pixel's sample. Bounced light has no middle: its first sample lies anywhere. */
const bounceNumbersOf = (sample: number, x: number, y: number, time: number): BounceNumbers => {
  const scattered = (dim: number) => scatteredNumber(sample, dim, x, y);
  const chance = (dim: number) => chanceNumber(sample, dim, x, y);
  return [
    {
      way: [scattered(dimension.bounceU), scattered(dimension.bounceV)],
      u: chance(dimension.bouncedEmitterU),
      v: chance(dimension.bouncedEmitterV),
      time,
    },
    {
      way: [chance(dimension.secondBounceU), chance(dimension.secondBounceV)],
      u: chance(dimension.secondBouncedEmitterU),
      v: chance(dimension.secondBouncedEmitterV),
      time,
    },
  ];
};

/**
 * Traces the layers of several sources together, sharing first hits. The reference that the GPU is held to.
 *
 * @returns one layer a source, in order, its bounced light included
 */
export const traceLayers = (
  stage: Stage,
  view: CameraView,
  sources: readonly Source[],
  { width, height, samples }: PictureSize,
  bounces: Bounces = 0,
): Layer[] => {
  const layers = sources.map(() => new Float64Array(width * height * 3));
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++)
      for (let s = 0; s < samples; s++) {
        const number = (dim: number) => sampleNumber(s, dim, x, y);
        const px = (x + number(dimension.pixelX)) / width;
        const py = (y + number(dimension.pixelY)) / height;
        // no middle of the lens either: a sharp first sample would stay in the mean as a ghost
        const onLens = [dimension.lensU, dimension.lensV].map((dim) => scatteredNumber(s, dim, x, y));
        const ray = viewRay(view, px, py, onLens[0] as number, onLens[1] as number);
        const surface = surfaceAlong(stage, ray.origin, ray.direction);
        const time = sharedSampleNumber(s, dimension.time);
        const numbers = { u: number(dimension.emitterU), v: number(dimension.emitterV), time };
        const bounced = bounces > 0 && surface ? bounceNumbersOf(s, x, y, time) : null;
        sources.forEach((source, i) => {
          const bare = bareLuminance(source, ray, surface, time);
          const lit = surface ? irradianceSample(stage, source, surface, numbers) / Math.PI : 0;
          const far = surface && bounced ? bounceSample(stage, source, surface, bounces, bounced) : null;
          const layer = layers[i] as Layer;
          const at = (y * width + x) * 3;
          for (let c = 0; c < 3; c++) {
            const value = bare + lit * (surface?.reflectance[c] ?? 0) + (far?.[c] ?? 0);
            layer[at + c] = (layer[at + c] as number) + value / samples;
          }
        });
      }
  return layers;
};

/** What the lens sees of the source itself: the bare lamp in front of any surface, or the sky where there is none. */
const bareLuminance = (
  source: Source,
  { origin, direction }: Ray,
  surface: SurfacePoint | null,
  time: number,
): number => {
  if (source.kind === 'sky') return surface ? 0 : skyLuminancePerLux;
  if (source.kind === 'moon') return 0;
  const seen = seenEmitter(source.emitter, poseAt(source, time), origin, direction);
  return seen && (!surface || seen.t < surface.distance) ? seen.luminancePerLumen : 0;
};

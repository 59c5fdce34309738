import { type CameraView, viewDirection } from '../camera/camera-view.ts';
import type { Vec3 } from '../geometry/vec.ts';
import { seenEmitter } from '../photometry/emitter.ts';
import type { Stage } from '../world/stage.ts';
import { poseAt, type Source } from '../world/world.ts';
import { irradianceSample } from './irradiance.ts';
import { dimension, sampleNumber, sharedSampleNumber } from './sequence.ts';
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

/**
 * Traces the layers of several sources together, sharing first hits. The reference that the GPU is held to.
 *
 * @returns one layer a source, in order
 */
export const traceLayers = (
  stage: Stage,
  view: CameraView,
  sources: readonly Source[],
  { width, height, samples }: PictureSize,
): Layer[] => {
  const layers = sources.map(() => new Float64Array(width * height * 3));
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++)
      for (let s = 0; s < samples; s++) {
        const number = (dim: number) => sampleNumber(s, dim, x, y);
        const px = (x + number(dimension.pixelX)) / width;
        const py = (y + number(dimension.pixelY)) / height;
        const direction = viewDirection(view, px, py);
        const surface = surfaceAlong(stage, view.position, direction);
        const numbers = {
          u: number(dimension.emitterU),
          v: number(dimension.emitterV),
          time: sharedSampleNumber(s, dimension.time),
        };
        sources.forEach((source, i) => {
          const bare = bareLuminance(source, view.position, direction, surface, numbers.time);
          const lit = surface ? irradianceSample(stage, source, surface, numbers) / Math.PI : 0;
          const layer = layers[i] as Layer;
          const at = (y * width + x) * 3;
          for (let c = 0; c < 3; c++)
            layer[at + c] = (layer[at + c] as number) + (bare + lit * (surface?.reflectance[c] ?? 0)) / samples;
        });
      }
  return layers;
};

/** What the lens sees of the source itself: the bare lamp in front of any surface, or the sky where there is none. */
const bareLuminance = (
  source: Source,
  eye: Vec3,
  direction: Vec3,
  surface: SurfacePoint | null,
  time: number,
): number => {
  if (source.kind === 'sky') return surface ? 0 : skyLuminancePerLux;
  if (source.kind === 'moon') return 0;
  const seen = seenEmitter(source.emitter, poseAt(source, time), eye, direction);
  return seen && (!surface || seen.t < surface.distance) ? seen.luminancePerLumen : 0;
};

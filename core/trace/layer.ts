import { type CameraView, viewRay } from '../camera/camera-view.ts';
import type { SeenSky } from '../sky/seen-sky.ts';
import type { StarCatalogue } from '../sky/star-catalogue.ts';
import { throughAir } from '../world/air.ts';
import type { Stage } from '../world/stage.ts';
import type { Source } from '../world/world.ts';
import { type Bounces, bounceSample } from './bounce.ts';
import { bounceNumbersOf, sheenNumbersOf } from './bounce-numbers.ts';
import { directLuminance, holderShare, look } from './direct-light.ts';
import { momentsTaken } from './moments-taken.ts';
import { chanceNumber, dimension, sampleNumber, scatteredNumber } from './sequence.ts';
import { skyPicture } from './sky-picture.ts';
import { metresBefore } from './through-air.ts';

/** Size of a picture in pixels and how many samples a pixel gets. */
export interface PictureSize {
  readonly width: number;
  readonly height: number;
  readonly samples: number;
  /** Stars to be drawn; left out, their light is spread over the sky. */
  readonly stars?: StarCatalogue | null;
}

/** A layer: mean luminance per unit strength, linear RGB, three numbers a pixel, rows from the top; cd/m^2 per lm or lx. */
export type Layer = Float64Array;

/** Layers, and for each the share of its samples at which whoever holds its lamp is before all else; null without one. */
export interface TracedLayers {
  readonly layers: readonly Layer[];
  readonly covers: readonly (Float64Array | null)[];
}

const none = [0, 0, 0] as const;

/** The sky as it is seen, where nothing stands before it; `open` tells where, one share a pixel. */
export const openSky = (
  view: CameraView,
  sky: SeenSky,
  { width, height, stars = null }: PictureSize,
  open: Float64Array,
): Float64Array<ArrayBuffer> =>
  Float64Array.from(skyPicture({ view, width, height }, sky, stars), (v, i) => v * (open[Math.floor(i / 3)] as number));

/** Which samples of which rows: from the first one on, up to the last and without it. */
export interface TracePart {
  readonly rows: readonly [from: number, to: number];
  readonly samples: readonly [from: number, to: number];
}

/** Layers under way, and the share of each pixel's samples that meet nothing. */
export interface TraceSums extends TracedLayers {
  readonly open: Float64Array;
}

/** Nothing gathered yet. */
export const noSums = (
  sources: readonly Source[],
  { width, height }: Pick<PictureSize, 'width' | 'height'>,
): TraceSums => ({
  open: new Float64Array(width * height),
  layers: sources.map(() => new Float64Array(width * height * 3)),
  covers: sources.map((source) =>
    source.kind === 'lamp' && source.holder?.isDrawn ? new Float64Array(width * height) : null,
  ),
});

/**
 * Traces a part of several sources' layers together, sharing first hits, and adds it to their sums: each sample counts for
 * one of `size.samples`. Of a sky that is seen only `open` is traced.
 */
export const tracePart = (
  stage: Stage,
  view: CameraView,
  sources: readonly Source[],
  { width, height, samples }: PictureSize,
  bounces: Bounces,
  part: TracePart,
  { open, layers, covers }: TraceSums,
): void => {
  const [firstSample, endSample] = part.samples;
  const moments = Array.from({ length: endSample - firstSample }, (_, i) =>
    sources.map((source) => (source.kind === 'lamp' ? momentsTaken(stage, source, firstSample + i) : null)),
  );
  for (let y = part.rows[0]; y < part.rows[1]; y++)
    for (let x = 0; x < width; x++)
      for (let s = firstSample; s < endSample; s++) {
        const number = (dim: number) => sampleNumber(s, dim, x, y);
        const px = (x + number(dimension.pixelX)) / width;
        const py = (y + number(dimension.pixelY)) / height;
        // no middle of the lens either: a sharp first sample would stay in the mean as a ghost
        const onLens = [dimension.lensU, dimension.lensV].map((dim) => scatteredNumber(s, dim, x, y));
        const ray = viewRay(view, px, py, onLens[0] as number, onLens[1] as number);
        const way = [dimension.bounceU, dimension.bounceV].map((dim) => scatteredNumber(s, dim, x, y));
        const seen = look(stage, ray, s === 0 ? null : [way[0] as number, way[1] as number]);
        const { surface } = seen;
        const haze = {
          along: s === 0 ? 0.5 : chanceNumber(s, dimension.hazeAlong, x, y),
          choice: s === 0 ? 0.5 : chanceNumber(s, dimension.hazeChoice, x, y),
          turn: s === 0 ? 0.5 : chanceNumber(s, dimension.hazeTurn, x, y),
        };
        const numbers = { u: number(dimension.emitterU), v: number(dimension.emitterV), time: 0.5, haze };
        const choice = number(dimension.moment);
        if (!surface) open[y * width + x] = (open[y * width + x] as number) + 1 / samples;
        sources.forEach((source, i) => {
          if (source.kind === 'seen-sky') return;
          const taken = moments[s - firstSample]?.[i] ?? null;
          const direct = directLuminance(
            stage,
            source,
            seen,
            taken ? { ...numbers, taken: { ...taken, choice } } : numbers,
          );
          // who stands before a surface stands before its bounced light too
          const hidden = taken ? holderShare(seen, taken) : 0;
          const through = surface ? throughAir(stage.air, metresBefore(stage.air, ray, surface.distance)) : 1;
          const far =
            surface && bounces > 0
              ? bounceSample(stage, source, surface, bounces, bounceNumbersOf(s, x, y, taken), sheenNumbersOf(s, x, y))
              : none;
          const layer = layers[i] as Layer;
          const at = (y * width + x) * 3;
          for (const c of [0, 1, 2] as const)
            layer[at + c] = (layer[at + c] as number) + (direct[c] + far[c] * (1 - hidden) * through) / samples;
          const cover = covers[i];
          if (cover) cover[at / 3] = (cover[at / 3] as number) + hidden / samples;
        });
      }
};

/**
 * Traces the layers of several sources together, sharing first hits. The reference that the GPU is held to.
 *
 * @returns one layer a source, in order, its bounced light included
 */
export const traceWithCovers = (
  stage: Stage,
  view: CameraView,
  sources: readonly Source[],
  size: PictureSize,
  bounces: Bounces = 0,
): TracedLayers => {
  const sums = noSums(sources, size);
  const whole: TracePart = { rows: [0, size.height], samples: [0, size.samples] };
  tracePart(stage, view, sources, size, bounces, whole, sums);
  const layers = sources.map((source, i) =>
    source.kind === 'seen-sky' ? openSky(view, source.sky, size, sums.open) : (sums.layers[i] as Layer),
  );
  return { layers, covers: sums.covers };
};

/** The layers alone. */
export const traceLayers = (...what: Parameters<typeof traceWithCovers>): readonly Layer[] =>
  traceWithCovers(...what).layers;

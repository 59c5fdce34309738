import { type CameraView, viewRay } from '../camera/camera-view.ts';
import { closestHit } from '../geometry/cast-ray.ts';
import type { BlendEntry } from '../setup/blend-entries.ts';
import type { Stage } from '../world/stage.ts';
import type { Source } from '../world/world.ts';
import type { PictureSize } from './layer.ts';
import { dimension, sampleNumber, scatteredNumber } from './sequence.ts';

/**
 * A part of the picture, from the scene itself: where the eye meets the sky, anything else, the ground without what stands
 * on it, or a subject by its index.
 */
export interface Mask {
  readonly kind: 'mask';
  readonly part: 'sky' | 'land' | 'ground' | 'nowhere' | number;
}

/** What a layer can be traced of; a sky is seen where the mask of the sky is open. */
export type Traced = Exclude<Source, { kind: 'seen-sky' }> | Mask;

/** The mask of a frame in a blend; null where it counts everywhere. A subject that is hidden is nowhere. */
export const maskOf = ({ where, subjectId }: Pick<BlendEntry, 'where' | 'subjectId'>, stage: Stage): Mask | null => {
  if (where === 'everything') return null;
  if (where !== 'subject') return { kind: 'mask', part: where };
  const subject = stage.subjects.findIndex(({ id }) => id === subjectId);
  return { kind: 'mask', part: subject < 0 ? 'nowhere' : subject };
};

/** Number of a part as `subjectOfTriangle` counts: -1 the ground, -2 the sky, -3 nothing at all, -4 all but the sky. */
export const partNumber = ({ part }: Mask): number =>
  typeof part === 'number' ? part : { ground: -1, sky: -2, nowhere: -3, land: -4 }[part];

/** Whether a mask takes what the eye meets, by its number as `partNumber` counts: a subject’s index, -1 the ground, -2 the sky. */
export const isInPart = (mask: Mask | null, met: number): boolean =>
  mask === null || (mask.part === 'land' ? met !== -2 : partNumber(mask) === met);

/** Share of each pixel that a mask covers, 0 to 1, rows from the top: the samples are those of the picture. */
export const traceMask = (
  stage: Stage,
  view: CameraView,
  mask: Mask,
  { width, height, samples }: PictureSize,
): Float64Array => {
  const shares = new Float64Array(width * height);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++)
      for (let s = 0; s < samples; s++) {
        const [px, py] = [dimension.pixelX, dimension.pixelY].map((dim) => sampleNumber(s, dim, x, y));
        const [u, v] = [dimension.lensU, dimension.lensV].map((dim) => scatteredNumber(s, dim, x, y));
        const ray = viewRay(
          view,
          (x + (px as number)) / width,
          (y + (py as number)) / height,
          u as number,
          v as number,
        );
        const hit = closestHit(stage.tree, ray.origin, ray.direction);
        const met = hit ? (stage.subjectOfTriangle[hit.triangle] as number) : -2;
        if (isInPart(mask, met)) shares[y * width + x] = (shares[y * width + x] as number) + 1 / samples;
      }
  return shares;
};

import { type CameraView, viewDirection } from '../camera/camera-view.ts';
import { anyHit } from '../geometry/cast-ray.ts';
import { dot, length, scale, sub } from '../geometry/vec.ts';
import { emitterPeakPerLumen, spotIntensityPerLumen } from '../photometry/emitter.ts';
import { type SurfacePoint, surfaceAlong } from '../trace/surface-point.ts';
import type { Stage } from '../world/stage.ts';
import { poseAt, type Source } from '../world/world.ts';

/** A source that throws shadows: a sky has none to outline. */
export type CastingSource = Extract<Source, { kind: 'lamp' | 'moon' }>;

/** What a source does to a place in the picture. */
export const litState = {
  /** The camera looks into the sky. */
  nothing: 0,
  lit: 1,
  /** In a cast shadow: something stands between the place and the lamp. */
  shadow: 2,
  /** The surface is turned away from the lamp; whatever stands between makes no difference. */
  away: 3,
  /** The beam does not reach there; whatever stands between makes no difference. */
  outside: 4,
} as const;

export type LitState = (typeof litState)[keyof typeof litState];

/** Share of the peak intensity below which a place counts as outside the beam: the far tail of a spot lights all round. */
const leastShareOfPeak = 0.01;

/** Shadow rays end this share short of the lamp, as in `irradianceSample`. */
const reach = 1 - 1e-5;
const farAway = 1e5;

/**
 * What a source does to a surface, judged at the middle of the emitter and the middle of the on-time.
 *
 * @param surface what the camera sees; null where it looks into the sky
 */
export const litStateAt = (stage: Stage, source: CastingSource, surface: SurfacePoint | null): LitState => {
  if (!surface) return litState.nothing;
  const { place, normal, shadowOrigin } = surface;
  if (source.kind === 'moon') {
    if (dot(normal, source.toward) <= 0) return litState.away;
    return anyHit(stage.tree, shadowOrigin, source.toward, farAway) ? litState.shadow : litState.lit;
  }
  const { emitter } = source;
  const pose = poseAt(source, 0.5);
  const way = sub(pose.position, place);
  const distance = Math.max(length(way), 1e-4);
  const toLamp = scale(way, 1 / distance);
  if (dot(normal, toLamp) <= 0) return litState.away;
  const intensity = spotIntensityPerLumen(emitter, pose, scale(toLamp, -1), null);
  if (intensity < leastShareOfPeak * emitterPeakPerLumen(emitter)) return litState.outside;
  return anyHit(stage.tree, shadowOrigin, toLamp, distance * reach) ? litState.shadow : litState.lit;
};

/** What stands in the subject grid for the sky; the ground is -1, as on the stage. */
export const skyCell = -2;

/** An even grid over the picture, row by row from the top, looked at through the middle of each cell. */
export interface LitGrid {
  readonly columns: number;
  readonly rows: number;
  /** Index of the subject that is seen, -1 for the ground, -2 for the sky. */
  readonly subjects: Int16Array;
  /** One mask a source, in order: a `LitState` a cell. */
  readonly masks: readonly Uint8Array[];
}

/** Looks through a pinhole at every cell and asks what each source does there. First hits are shared by all sources. */
export const litGrid = (
  stage: Stage,
  view: CameraView,
  columns: number,
  rows: number,
  sources: readonly CastingSource[],
): LitGrid => {
  const subjects = new Int16Array(columns * rows).fill(skyCell);
  const masks = sources.map(() => new Uint8Array(columns * rows));
  for (let j = 0; j < rows; j++)
    for (let i = 0; i < columns; i++) {
      const direction = viewDirection(view, (i + 0.5) / columns, (j + 0.5) / rows);
      const surface = surfaceAlong(stage, view.position, direction);
      if (!surface) continue;
      const cell = j * columns + i;
      subjects[cell] = surface.subject;
      sources.forEach((source, s) => {
        (masks[s] as Uint8Array)[cell] = litStateAt(stage, source, surface);
      });
    }
  return { columns, rows, subjects, masks };
};

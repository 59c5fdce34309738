import type { Ray } from '../camera/camera-view.ts';
import type { Triple } from '../colour/matrix.ts';
import type { Stage } from '../world/stage.ts';
import type { Source } from '../world/world.ts';
import type { SampleNumbers } from './irradiance.ts';
import { surfaceLuminance } from './lit-surface.ts';
import { bareLuminance } from './seen-source.ts';
import { wayOn } from './sheen.ts';
import { type SurfacePoint, surfaceAlong } from './surface-point.ts';

/** What the eye's ray meets when it goes on from a sheen. */
interface ShownInSheen {
  readonly ray: Ray;
  readonly surface: SurfacePoint | null;
  readonly weight: Triple;
  /** As `bareLuminance` wants it. */
  readonly density: number | null;
}

/** What one ray of the eye sees, whatever the light. */
export interface Seen {
  readonly ray: Ray;
  /** null = the sky. */
  readonly surface: SurfacePoint | null;
  /** What shows in the surface's sheen; null without one. */
  readonly shown: ShownInSheen | null;
  /** Whether it stands for the middle of everything: lamps then show in rough sheens by their middle spots alone. */
  readonly isMiddle: boolean;
}

/**
 * Follows a ray of the eye: to what it meets, and on from there once if that shines. A mirror seen in a mirror shows its
 * even part and no more; in a rough sheen no highlights of other things show, only their even part.
 *
 * @param way two numbers in [0, 1) for the way on from a rough sheen; null = the middle
 */
export const look = (stage: Stage, ray: Ray, way: readonly [number, number] | null): Seen => {
  const surface = surfaceAlong(stage, ray.origin, ray.direction);
  const sheen = surface?.finish.sheen;
  const on = sheen ? wayOn(surface, sheen, way) : null;
  const isMiddle = way === null;
  if (!sheen || !on) return { ray, surface, shown: null, isMiddle };
  const density = isMiddle && sheen.alpha > 0 ? null : on.density;
  const there = surfaceAlong(stage, on.ray.origin, on.ray.direction);
  return { ray, surface, shown: { ...on, surface: there, density }, isMiddle };
};

const black: Triple = [0, 0, 0];

/**
 * Luminance toward the eye of one source's direct light, one sample, per unit strength, linear RGB: of what it sees, and of
 * what shows in the sheen of that. Light that a sheen or a mirror throws onto other things is left out.
 */
export const directLuminance = (
  stage: Stage,
  source: Source,
  { ray, surface, shown, isMiddle }: Seen,
  numbers: SampleNumbers,
): Triple => {
  const bare = bareLuminance(source, ray, surface, numbers.time, Number.POSITIVE_INFINITY);
  const lit = surface ? surfaceLuminance(stage, source, surface, numbers, isMiddle ? 'spots' : 'shared') : black;
  if (!shown) return [bare + lit[0], bare + lit[1], bare + lit[2]];
  const bareThere = bareLuminance(source, shown.ray, shown.surface, numbers.time, shown.density);
  // a highlight met by chance from a rough sheen would be a bright speck
  const by = shown.density === Number.POSITIVE_INFINITY ? 'spots' : 'none';
  const there = shown.surface ? surfaceLuminance(stage, source, shown.surface, numbers, by) : black;
  const at = (c: 0 | 1 | 2) => bare + lit[c] + shown.weight[c] * (bareThere + there[c]);
  return [at(0), at(1), at(2)];
};

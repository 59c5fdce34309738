import type { Ray } from '../camera/camera-view.ts';
import type { Triple } from '../colour/matrix.ts';
import { domeLuminance } from '../sky/dome-light.ts';
import { type DomeOf, domeLightOf } from '../sky/dome-of.ts';
import { type Air, throughAir } from '../world/air.ts';
import { airLight } from '../world/air-light.ts';
import type { Stage } from '../world/stage.ts';
import { poseAt, type Source } from '../world/world.ts';
import type { SampleNumbers, TakenTogether } from './arrival.ts';
import { beamInHaze } from './haze-light.ts';
import { holderAlong, holderLuminance } from './holder-light.ts';
import { surfaceLuminance } from './lit-surface.ts';
import type { MomentsTaken } from './moments-taken.ts';
import { bareLuminance } from './seen-source.ts';
import { wayOn } from './sheen.ts';
import { seenPastHaze } from './sky-picture.ts';
import { type SurfacePoint, surfaceAlong } from './surface-point.ts';
import { metresBefore } from './through-air.ts';

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
const farAway = 1e5;

/** The sky of an hour, as light, in a sheen: its smooth part. */
const domeShown = (of: DomeOf, { ray, surface }: ShownInSheen): number =>
  surface ? 0 : domeLuminance(domeLightOf(of), ray.direction);

/** Light of haze itself along the eye's ray, per unit strength. */
const hazeAlong = (
  stage: Stage,
  air: Air,
  source: Source,
  ray: Ray,
  length: number,
  limits: readonly number[] | null,
  { taken, haze }: SampleNumbers,
): number => {
  if (source.kind !== 'lamp') return airLight(source, ray.direction, throughAir(air, length));
  return taken && haze ? beamInHaze(stage, air, source, ray, length, taken, limits, haze) : 0;
};

/**
 * Luminance toward the eye of one source's direct light, one sample, per unit strength, linear RGB: of what it sees, and of
 * what shows in the sheen of that. Light that a sheen or a mirror throws onto other things is left out. Whoever holds the
 * lamp stands before what the ray meets, not in the sheens of things.
 */
export const directLuminance = (stage: Stage, source: Source, seen: Seen, numbers: SampleNumbers): Triple => {
  const { ray, surface, shown, isMiddle } = seen;
  if (source.kind === 'seen-sky') return surface ? black : seenPastHaze(source.sky, ray);
  const { taken } = numbers;
  const poses = source.kind === 'lamp' ? (taken?.poses ?? [poseAt(source, numbers.time)]) : [];
  const hits = source.kind === 'lamp' && taken ? holderAlong(taken, ray, surface?.distance ?? farAway) : null;
  const limits = hits?.map((hit) => hit?.t ?? farAway) ?? null;
  const before = hits && {
    ...numbers,
    taken: { ...(taken as TakenTogether), isHidden: hits.map((hit) => hit !== null) },
  };
  const bare = bareLuminance(source, stage.air, ray, surface, poses, limits, Number.POSITIVE_INFINITY);
  const onHolder =
    source.kind === 'lamp' && hits && taken ? holderLuminance(stage, source, ray, hits, numbers, taken) : 0;
  const by = isMiddle ? 'spots' : 'shared';
  const lit = surface ? surfaceLuminance(stage, source, surface, before ?? numbers, by) : black;
  const { air } = stage;
  const length = metresBefore(air, ray, surface?.distance ?? farAway);
  const through = throughAir(air, length);
  const isOpen = surface === null && source.kind === 'sky';
  const near =
    (isOpen ? bare * through : bare) +
    onHolder +
    (air ? hazeAlong(stage, air, source, ray, length, limits, numbers) : 0);
  if (!shown) return [near + through * lit[0], near + through * lit[1], near + through * lit[2]];
  // the sheen shows for as long as nobody stands before it
  const open = hits ? hits.filter((hit) => hit === null).length / hits.length : 1;
  const bareThere =
    source.kind === 'dome'
      ? domeShown(source.of, shown)
      : bareLuminance(source, stage.air, shown.ray, shown.surface, poses, null, shown.density);
  // a highlight met by chance from a rough sheen would be a bright speck
  const byThere = shown.density === Number.POSITIVE_INFINITY ? 'spots' : 'none';
  const there = shown.surface ? surfaceLuminance(stage, source, shown.surface, numbers, byThere) : black;
  const at = (c: 0 | 1 | 2) => near + through * (lit[c] + open * shown.weight[c] * (bareThere + there[c]));
  return [at(0), at(1), at(2)];
};

/** Share of the moments taken at which the ray meets whoever holds the lamp before anything else, 0 to 1. */
export const holderShare = ({ ray, surface }: Seen, taken: MomentsTaken): number => {
  const hits = holderAlong(taken, ray, surface?.distance ?? farAway);
  return hits ? hits.filter((hit) => hit !== null).length / hits.length : 0;
};

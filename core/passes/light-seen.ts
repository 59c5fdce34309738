import { add, basisAround, distance, normalize, scale, sub, type Vec3 } from '../geometry/vec.ts';
import { irradianceSample } from '../trace/irradiance.ts';
import { dimension, sampleNumber } from '../trace/sequence.ts';
import { type SurfacePoint, surfaceAlong } from '../trace/surface-point.ts';
import type { Stage } from '../world/stage.ts';
import type { Source } from '../world/world.ts';

/** Moments of a group of legs that are metered, shared among the surfaces at an aim. */
const legSamples = 36;
/** Looks round an aim. */
const lookCount = 8;
/** What is seen beside an aim, but this far in front of it or behind, is something else; metres. */
const mostAwayMetres = 0.5;

/** Surfaces seen at an aim and just round it; none where the eye looks past everything. */
export const surfacesSeen = (stage: Stage, eye: Vec3, aim: Vec3, roundMetres: number): SurfacePoint[] => {
  const toAim = sub(aim, eye);
  const { first, second } = basisAround(normalize(toAim));
  const middle = surfaceAlong(stage, eye, normalize(toAim));
  if (!middle) return [];
  const round = Array.from({ length: lookCount }, (_, i) => (2 * Math.PI * i) / lookCount).flatMap((turn) => {
    const aside = add(scale(first, Math.cos(turn)), scale(second, Math.sin(turn)));
    const found = surfaceAlong(stage, eye, normalize(add(toAim, scale(aside, roundMetres))));
    return found && distance(found.position, middle.position) < mostAwayMetres ? [found] : [];
  });
  return [middle, ...round];
};

/**
 * Mean illuminance per lumen on surfaces while a lamp goes from one moment to another; each is metered at other moments.
 *
 * @param from share of the source's on-time, 0 to 1; `to` likewise
 */
export const lightBetween = (
  stage: Stage,
  source: Source,
  surfaces: readonly SurfacePoint[],
  from: number,
  to: number,
) => {
  const own = Math.ceil(legSamples / surfaces.length);
  const count = own * surfaces.length;
  let sum = 0;
  surfaces.forEach((surface, i) => {
    for (let s = i; s < count; s += surfaces.length)
      sum += irradianceSample(stage, source, surface, {
        u: sampleNumber(s, dimension.emitterU, 0, 0),
        v: sampleNumber(s, dimension.emitterV, 0, 0),
        time: from + ((s + 0.5) / count) * (to - from),
      });
  });
  return sum / count;
};

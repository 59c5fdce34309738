import type { GroundPoint } from '../../../core/geometry/hull.ts';

/**
 * Which of many places on a drawing are far enough apart to be numbered and taken hold of: the first and the last always,
 * others where there is room. None where they all lie on one spot.
 */
export const spacedPlaces = (places: readonly GroundPoint[], leastUnits: number): number[] => {
  const last = places.length - 1;
  const isApart = (a: number, b: number, units = leastUnits) => {
    const [p, q] = [places[a] as GroundPoint, places[b] as GroundPoint];
    return Math.hypot(p[0] - q[0], p[1] - q[1]) >= units;
  };
  if (!places.some((_, i) => isApart(0, i, 1))) return [];
  const kept = [0];
  for (let i = 1; i < last; i++) if (isApart(kept.at(-1) as number, i) && isApart(i, last)) kept.push(i);
  return [...kept, last];
};

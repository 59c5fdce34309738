import { add, basisAround, scale, type Vec3 } from '../../../core/geometry/vec.ts';

const degrees = (value: number): number => Math.cos((value * Math.PI) / 180);
/** Where rings begin and end whatever the lamp, so that narrow beams get their share of them. */
const usualEdges = [2, 5, 10, 20, 30, 45, 60, 75, 90, 110, 140].map(degrees);

/** A direction at an angle off an axis, given by its cosine, and round it. */
export const directionAround = (axis: Vec3, cos: number, turn: number): Vec3 => {
  const { first, second } = basisAround(axis);
  const sin = Math.sqrt(Math.max(1 - cos * cos, 0));
  return add(scale(axis, cos), add(scale(first, sin * Math.cos(turn)), scale(second, sin * Math.sin(turn))));
};

/**
 * Integral over all directions by the midpoint rule in the cosine off the axis and the turn round it.
 *
 * @param edges cosines where the value jumps or bends: cells do not lie across them
 */
export const overSphere = (axis: Vec3, edges: readonly number[], value: (direction: Vec3) => number): number => {
  const [steps, turns] = [40, 24];
  const cosines = [...new Set([-1, 1, ...usualEdges, ...edges])].sort((a, b) => a - b);
  let sum = 0;
  for (const [k, from] of cosines.slice(0, -1).entries()) {
    const width = (cosines[k + 1] as number) - from;
    let piece = 0;
    for (let i = 0; i < steps; i++)
      for (let j = 0; j < turns; j++)
        piece += value(directionAround(axis, from + ((i + 0.5) / steps) * width, (2 * Math.PI * (j + 0.5)) / turns));
    sum += (piece * width * 2 * Math.PI) / (steps * turns);
  }
  return sum;
};

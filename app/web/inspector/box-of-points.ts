import type { Vec3 } from '../../../core/geometry/vec.ts';

/** The upright box round some points, and its middle. World axes. */
export interface Box {
  readonly low: Vec3;
  readonly high: Vec3;
  readonly middle: Vec3;
}

const boxes = new WeakMap<Float64Array, Box>();

const measure = (points: Float64Array): Box => {
  const low: [number, number, number] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  const high: [number, number, number] = [Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let i = 0; i < points.length; i += 3)
    for (const axis of [0, 1, 2] as const) {
      const v = points[i + axis] as number;
      if (v < low[axis]) low[axis] = v;
      if (v > high[axis]) high[axis] = v;
    }
  const middle: Vec3 = [(low[0] + high[0]) / 2, (low[1] + high[1]) / 2, (low[2] + high[2]) / 2];
  return { low, high, middle };
};

/** The box round a stage's points of a subject, three numbers each. They never change, so each is measured once. */
export const boxOfPoints = (points: Float64Array): Box => {
  const box = boxes.get(points) ?? measure(points);
  boxes.set(points, box);
  return box;
};

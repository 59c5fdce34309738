import { z } from 'zod';
import { degrees, quantity } from './fields.ts';

const coordinate = (description: string) => quantity('metres', -2000, 2000, description);
type Point = readonly [number, number];

const turn = (a: Point, b: Point, c: Point) => (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);

/** Whether two stretches cross or touch. */
const meet = (a: Point, b: Point, c: Point, d: Point): boolean => {
  const within = (p: Point, q: Point, r: Point) =>
    Math.min(p[0], q[0]) <= r[0] &&
    r[0] <= Math.max(p[0], q[0]) &&
    Math.min(p[1], q[1]) <= r[1] &&
    r[1] <= Math.max(p[1], q[1]);
  const [abc, abd, cda, cdb] = [turn(a, b, c), turn(a, b, d), turn(c, d, a), turn(c, d, b)];
  if (abc * abd < 0 && cda * cdb < 0) return true;
  return (
    (abc === 0 && within(a, b, c)) ||
    (abd === 0 && within(a, b, d)) ||
    (cda === 0 && within(c, d, a)) ||
    (cdb === 0 && within(c, d, b))
  );
};

/** Whether a closed outline never meets itself. */
const isSimple = (points: readonly Point[]): boolean => {
  const count = points.length;
  const at = (i: number) => points[i % count] as Point;
  for (let i = 0; i < count; i++) {
    if (at(i)[0] === at(i + 1)[0] && at(i)[1] === at(i + 1)[1]) return false;
    for (let j = i + 2; j < count; j++)
      if ((j + 1) % count !== i && meet(at(i), at(i + 1), at(j), at(j + 1))) return false;
  }
  return true;
};

const points = (first: string, second: string) =>
  z.tuple([coordinate(first), coordinate(second)], { error: `must be two numbers: [${first}, ${second}] in metres` });

/** A closed outline seen from above; either way round. */
export const outline = z
  .array(points('east', 'north'))
  .min(3, 'must have at least 3 points')
  .max(256, 'must be at most 256 points')
  .refine(isSimple, 'must not cross or touch itself')
  .describe('points of a closed outline, one after the other: [east, north] in metres');

/** Half of a turned shape's section. */
export const profile = z
  .array(
    z.tuple([quantity('metres', 0, 2000, 'distance from the axis'), coordinate('up')], {
      error: 'must be two numbers: [distance from the axis, up] in metres',
    }),
  )
  .min(2, 'must have at least 2 points')
  .max(128, 'must be at most 128 points')
  .describe('from the foot up: [distance from the axis, up] in metres');

/** A closed section across a loft. */
export const section = z
  .strictObject({
    northMetres: coordinate('where the section stands'),
    outline: z
      .array(points('east', 'up'))
      .min(3, 'must have at least 3 points')
      .max(128, 'must be at most 128 points')
      .refine(isSimple, 'must not cross or touch itself')
      .describe('points of a closed outline: [east, up] in metres'),
  })
  .describe('a section across the part');

export const creaseDegrees = degrees(0, 180, 'faces that meet at a smaller angle look like one curved surface').default(
  30,
);

import { z } from 'zod';
import { degrees, quantity } from './fields.ts';
import { type Edge, leastGap, mayBeNear, type Rim, rimOf, somePair } from './near-edges.ts';

const coordinate = (description: string) => quantity('metres', -2000, 2000, description);
type Point = readonly [number, number];

const turn = (a: Point, b: Point, c: Point) => (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);

/** Distance from a point to a stretch. */
const away = (p: Point, a: Point, b: Point): number => {
  const [x, y] = [b[0] - a[0], b[1] - a[1]];
  const square = x * x + y * y;
  const t = square > 0 ? Math.min(Math.max(((p[0] - a[0]) * x + (p[1] - a[1]) * y) / square, 0), 1) : 0;
  return Math.hypot(p[0] - a[0] - t * x, p[1] - a[1] - t * y);
};

/** Whether a stretch lies wholly on one side of the line through another, farther off than the least gap. */
const isBeside = (line: Edge, { from, to }: Edge): boolean => {
  const [one, two] = [turn(line.from, line.to, from), turn(line.from, line.to, to)];
  // a thousandth more, for what rounding takes
  const gap = 1.001 * leastGap * line.length;
  return (one > gap && two > gap) || (one < -gap && two < -gap);
};

/** Whether two stretches cross or come too near. */
const meet = (one: Edge, two: Edge): boolean => {
  if (isBeside(one, two) || isBeside(two, one)) return false;
  const [a, b, c, d] = [one.from, one.to, two.from, two.to];
  if (turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0) return true;
  return Math.min(away(a, c, d), away(b, c, d), away(c, a, b), away(d, a, b)) < leastGap;
};

/** Whether a line of stretches keeps clear of itself; neighbours only touch where they join. */
const isSimple = (points: readonly Point[], isClosed = true): boolean => {
  const count = points.length;
  const edges = isClosed ? count : count - 1;
  const at = (i: number) => points[i % count] as Point;
  for (let i = 0; i < edges; i++) {
    if (Math.hypot(at(i + 1)[0] - at(i)[0], at(i + 1)[1] - at(i)[1]) < leastGap) return false;
    const hasNext = isClosed || i + 1 < edges;
    // a stretch that turns straight back lies on the one before
    if (hasNext && (away(at(i + 2), at(i), at(i + 1)) < leastGap || away(at(i), at(i + 1), at(i + 2)) < leastGap))
      return false;
  }
  const rim = rimOf(points, isClosed);
  const areNeighbours = (i: number, j: number) => j - i < 2 || (isClosed && (j + 1) % count === i);
  return !somePair(rim, rim, (a, b) => a.index < b.index && !areNeighbours(a.index, b.index) && meet(a, b));
};

/** Whether a point lies inside a closed outline: a ray from it crosses the rim an odd number of times. */
const isInside = ([x, y]: Point, outline: readonly Point[]): boolean =>
  outline.reduce((inside, [bx, by], i) => {
    const [ax, ay] = outline[(i + outline.length - 1) % outline.length] as Point;
    return ay > y !== by > y && x < ax + ((bx - ax) * (y - ay)) / (by - ay) ? !inside : inside;
  }, false);

/** An outline with its edges. */
interface Outline extends Rim {
  readonly points: readonly Point[];
}

const outlineOf = (points: readonly Point[]): Outline => ({ ...rimOf(points, true), points });

/** Whether the rims of two outlines meet, or one lies inside the other. */
const overlap = (one: Outline, two: Outline): boolean =>
  mayBeNear(one, two) &&
  (somePair(one, two, meet) ||
    isInside(one.points[0] as Point, two.points) ||
    isInside(two.points[0] as Point, one.points));

/** Says which hole does not lie inside its outline, or runs into another. */
export const holesFit = (
  { outline, holes }: { readonly outline: readonly Point[]; readonly holes: readonly (readonly Point[])[] },
  context: z.RefinementCtx,
): void => {
  const whole = outlineOf(outline);
  const all = holes.map(outlineOf);
  all.forEach((hole, i) => {
    const say = (message: string) => context.addIssue({ code: 'custom', path: ['holes', i], message });
    if (somePair(hole, whole, meet) || !isInside(hole.points[0] as Point, outline)) say('must lie inside the outline');
    else if (all.slice(0, i).some((other) => overlap(hole, other))) say('must not run into another hole');
  });
};

/** Says when a profile crosses itself, or its lids would, or when nothing of it stands off the axis. */
export const profileFits = (
  { profile, closed }: { readonly profile: readonly Point[]; readonly closed: boolean },
  context: z.RefinementCtx,
): void => {
  const say = (message: string) => context.addIssue({ code: 'custom', path: ['profile'], message });
  const [first, last] = [profile[0], profile.at(-1)] as [Point, Point];
  const lid = (point: Point): Point[] => (point[0] >= leastGap ? [[0, point[1]]] : []);
  if (Math.max(...profile.map(([out]) => out)) < 0.001) say('must stand off the axis by at least 0.001 metres');
  else if (closed && profile.length < 3) say('must have at least 3 points where it is closed');
  else if (!isSimple(closed ? profile : [...lid(first), ...profile, ...lid(last)], closed))
    say('must not cross, touch or repeat itself, nor its lids');
};

const points = (first: string, second: string) =>
  z.tuple([coordinate(first), coordinate(second)], { error: `must be two numbers: [${first}, ${second}] in metres` });

/** A closed outline seen from above; either way round. */
export const outline = z
  .array(points('east', 'north'))
  .min(3, 'must have at least 3 points')
  .max(256, 'must be at most 256 points')
  .refine((points) => isSimple(points), 'must not cross, touch or repeat itself')
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
      .refine((points) => isSimple(points), 'must not cross, touch or repeat itself')
      .describe('points of a closed outline: [east, up] in metres'),
  })
  .describe('a section across the part');

export const creaseDegrees = degrees(0, 180, 'faces that meet at a smaller angle look like one curved surface').default(
  30,
);

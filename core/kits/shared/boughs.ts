import { normalize, type Vec3 } from '../../geometry/vec.ts';
import { between } from './between.ts';
import type { Place } from './frame.ts';

/** A straight piece of a limb, branch or twig; metres, document axes. */
export interface Bough {
  readonly from: Place;
  readonly to: Place;
  readonly radii: readonly [start: number, end: number];
  /** 0 = a limb, and one more at every fork. */
  readonly level: number;
}

export interface BoughShape {
  /** Where the trunk parts. */
  readonly fork: Vec3;
  /** Of the trunk there. */
  readonly radius: number;
  /** How far to each side the crown reaches, and how far over the fork. */
  readonly reach: number;
  readonly rise: number;
}

const limbCount = 5;
/** Twigs have no forks: limb, three kinds of branch, twig. */
const lastLevel = 4;
const thinnestMetres = 0.006;

const along = (from: Vec3, direction: Vec3, length: number): Place => [
  from[0] + direction[0] * length,
  from[1] + direction[1] * length,
  from[2] + direction[2] * length,
];

/** A direction turned away by an angle toward a random side. */
const strayed = (direction: Vec3, radians: number, random: () => number): Vec3 => {
  const turn = random() * 2 * Math.PI;
  const seed: Vec3 = Math.abs(direction[2]) < 0.9 ? [0, 0, 1] : [1, 0, 0];
  const u = normalize([
    direction[1] * seed[2] - direction[2] * seed[1],
    direction[2] * seed[0] - direction[0] * seed[2],
    direction[0] * seed[1] - direction[1] * seed[0],
  ]);
  const v: Vec3 = [
    direction[1] * u[2] - direction[2] * u[1],
    direction[2] * u[0] - direction[0] * u[2],
    direction[0] * u[1] - direction[1] * u[0],
  ];
  const [c, s] = [Math.cos(radians), Math.sin(radians)];
  return normalize(
    [0, 1, 2].map(
      (i) => c * (direction[i] as number) + s * (Math.cos(turn) * (u[i] as number) + Math.sin(turn) * (v[i] as number)),
    ) as [number, number, number],
  );
};

/** How limbs leave the trunk: evenly round it, the first steeply, the others more level. */
const limbDirections = (random: () => number): Vec3[] => {
  const from = random() * 2 * Math.PI;
  return Array.from({ length: limbCount }, (_, k): Vec3 => {
    const turn = from + ((k + between(random, -0.2, 0.2)) / limbCount) * 2 * Math.PI;
    const lean = k === 0 ? 0.12 : between(random, 0.5, 1);
    return [Math.sin(lean) * Math.sin(turn), Math.sin(lean) * Math.cos(turn), Math.cos(lean)];
  });
};

/** Limbs begin inside the trunk, a little under where it ends. */
const limbStart = ({ fork, radius }: BoughShape, k: number): Place => [
  fork[0],
  fork[1],
  fork[2] - radius * (0.4 + 0.5 * (k % 3)),
];

/** Limbs with a fork each, for a crown in leaf that hides the rest. */
export const limbPieces = (shape: BoughShape, random: () => number): Bough[] => {
  const span = Math.min(shape.reach, shape.rise);
  return limbDirections(random).flatMap((direction, k): Bough[] => {
    const from = limbStart(shape, k);
    const [start, end] = [shape.radius * 0.75, shape.radius * 0.4];
    const to = along(from, direction, span * between(random, 0.5, 0.62));
    return [
      { from, to, radii: [start, end], level: 0 },
      ...[0, 1].map((): Bough => {
        const next = strayed(direction, between(random, 0.25, 0.6), random);
        return {
          from: along(to, direction, -0.5 * end),
          to: along(to, next, span * between(random, 0.25, 0.35)),
          radii: [end * 0.9, end * 0.35],
          level: 1,
        };
      }),
    ];
  });
};

/** A branch and all that grows from it. */
const grown = (
  from: Place,
  direction: Vec3,
  length: number,
  start: number,
  level: number,
  random: () => number,
): Bough[] => {
  const end = Math.max(start * between(random, 0.6, 0.7), thinnestMetres);
  const to = along(from, direction, length);
  const bough: Bough = {
    from,
    to,
    radii: [Math.max(start, thinnestMetres), level === lastLevel ? thinnestMetres : end],
    level,
  };
  if (level === lastLevel) return [bough];
  const forks = level === 1 || random() < 0.08 ? 3 : 2;
  const children = Array.from({ length: forks }, (_, k) => {
    // the first goes nearly on, the others stray; all turn up a little toward the light
    const [e, n, u] = strayed(direction, k === 0 ? between(random, 0.1, 0.3) : between(random, 0.4, 0.8), random);
    const next = normalize([e, n, u + 0.12]);
    const share = k === 0 ? between(random, 0.72, 0.85) : between(random, 0.55, 0.75);
    const middle = k === 2 ? along(from, direction, length * between(random, 0.5, 0.8)) : to;
    return grown(middle, next, length * share, end * (k === 0 ? 0.95 : 0.75), level + 1, random);
  });
  return [bough, ...children.flat()];
};

/** A bare crown that reaches as far to east and west and as high as said; twigs' own thickness comes on top. */
export const barePieces = (shape: BoughShape, random: () => number): Bough[] => {
  const [, , fork] = shape.fork;
  const wild = limbDirections(random).flatMap((direction, k) =>
    grown(
      [0, 0, fork],
      direction,
      (k === 0 ? 0.46 : 0.34) * Math.min(shape.reach, shape.rise),
      shape.radius * 0.7,
      0,
      random,
    ),
  );
  const ends = wild.map(({ to }) => to);
  const upright = shape.rise / (Math.max(...ends.map(([, , up]) => up)) - fork);
  /** How far a crown that is leant over by so much a metre reaches to one side. */
  const reachOf = (axis: 0 | 1, side: number, lean: number) =>
    Math.max(...ends.map((end) => side * (end[axis] + lean * (end[2] - fork))));
  /** The lean that brings its middle over the trunk. */
  const leanOf = (axis: 0 | 1): number => {
    let lean = 0;
    for (let k = 0; k < 30; k++)
      lean -= (reachOf(axis, 1, lean) - reachOf(axis, -1, lean)) / (2 * (shape.rise / upright));
    return lean;
  };
  const [eastLean, northLean] = [leanOf(0), leanOf(1)];
  const level = (2 * shape.reach) / (reachOf(0, 1, eastLean) + reachOf(0, -1, eastLean));
  // straight things stay straight, so that twigs stay where they grow
  const fitted = ([e, n, u]: Place): Place => [
    (e + eastLean * (u - fork)) * level,
    (n + northLean * (u - fork)) * level,
    fork + (u - fork) * upright,
  ];
  return wild.map((bough) => ({ ...bough, from: fitted(bough.from), to: fitted(bough.to) }));
};

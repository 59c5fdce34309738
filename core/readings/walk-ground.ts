import { type CameraView, viewDirection } from '../camera/camera-view.ts';
import type { GroundPoint } from '../geometry/hull.ts';
import type { Vec3 } from '../geometry/vec.ts';
import type { Setup, Subject } from '../setup/schema/setup.ts';
import { halfTurnRadians } from '../units/angle.ts';
import { body } from '../walk/body.ts';
import { type Convex, convexOf } from '../walk/convex.ts';
import { boundsOf, footprintsOfPart, surfaceAt } from '../walk/footprint.ts';
import { type Footprint, footprintOf, stepMetres } from '../walk/walk.ts';
import { partMesh } from '../world/part-mesh.ts';
import type { Stage } from '../world/stage.ts';
import { Recent } from './recent.ts';

/** What of a setup stands on its stage. */
export type Standing = Pick<Setup, 'subjects' | 'scans'>;

/** The level, seen from above, of a place in world axes. */
export const onLevel = ([x, , z]: Vec3): GroundPoint => [x, -z];

/** A part of a subject that is shown, and the box round it. */
interface StandingPart {
  /** Corners of its triangles in world axes. Made when asked for: of a large scan they take a hundred megabytes. */
  readonly corners: () => Float64Array;
  readonly low: number;
  readonly high: number;
  readonly box: Convex['box'];
  readonly middle: GroundPoint;
}

/** What is known of a stage: its parts, and the footprints that were asked for lately. */
interface Ground {
  readonly parts: readonly StandingPart[];
  readonly footprints: Recent<readonly Footprint[]>;
}
const grounds = new WeakMap<Stage, Ground>();

const groundOf = (stage: Stage, { subjects, scans }: Standing): Ground => {
  const known = grounds.get(stage);
  if (known) return known;
  const parts = stage.subjects.flatMap(({ id, points, partStarts }) => {
    const subject = subjects.find((each) => each.id === id) as Subject;
    return subject.parts.map((part, p): StandingPart => {
      const [west, low, north, east, high, south] = boundsOf(points.subarray(partStarts[p], partStarts[p + 1]));
      return {
        corners: () => partMesh(subject, part, scans).positions,
        low,
        high,
        box: [west, -south, east, -north],
        middle: [(west + east) / 2, -(north + south) / 2],
      };
    });
  });
  const made: Ground = { parts, footprints: new Recent(4) };
  grounds.set(stage, made);
  return made;
};

const isOver = ([west, south, east, north]: Convex['box'], [e, n]: GroundPoint): boolean =>
  e >= west && e <= east && n >= south && n <= north;

/** How near feet are to a surface that they stand on, metres. */
const standsMetres = 0.05;

/**
 * What keeps a walker off between places where one stands: parts that reach from a step over what is walked on to a
 * person's height. One walks on the highest of where one stands and, under each part, of what one stands on (hill, ridge,
 * deck, floor): what is no higher than a step over that is stepped over, what begins over one's head is walked under.
 *
 * @param standing of the setup that the stage is made of
 * @param feet where one stands, world metres
 */
export const footprintsBetween = (stage: Stage, standing: Standing, feet: readonly Vec3[]): readonly Footprint[] => {
  const { parts, footprints } = groundOf(stage, standing);
  const isStoodOn = ({ corners, low, high, box }: StandingPart, foot: Vec3): boolean => {
    const [place, up] = [onLevel(foot), foot[1]];
    if (up <= standsMetres || low > up || high < up - standsMetres || !isOver(box, place)) return false;
    return surfaceAt(corners(), place, up + standsMetres) >= up - standsMetres;
  };
  const land = parts.filter((part) => feet.some((foot) => isStoodOn(part, foot)));
  // in tenths of a metre: a lamp that is dragged over a slope asks for the same again
  const level = Math.max(Math.floor(Math.max(...feet.map(([, up]) => up)) * 10) / 10, 0);
  const key = [level, ...land.map((part) => parts.indexOf(part))].join(' ');
  return footprints.get(key, () => {
    const surfaces = land.map(({ box, corners }) => ({ box, corners: corners() }));
    return parts.flatMap((part) => {
      if (land.includes(part)) return [];
      const under = surfaces.map(({ box, corners }) =>
        isOver(box, part.middle) ? surfaceAt(corners, part.middle, Number.POSITIVE_INFINITY) : 0,
      );
      const walked = Math.max(level, ...under);
      const [low, high] = [walked + stepMetres, walked + body.heightMetres];
      if (part.high <= low || part.low >= high) return [];
      return footprintsOfPart(part.corners(), low, high).map(footprintOf);
    });
  });
};

/** Looks along the picture's edge for how wide it is on the level. */
const edgeLooks = [0, 0.5, 1];
/** A picture wider than this to one side is no wedge. */
const widestRadians = 1.45;

/**
 * What a camera sees of the level, as a wedge from under the lens: from the leftmost to the rightmost of the picture, however
 * high it looks. null where it looks up or down so steeply, or so wide, that it is no wedge.
 *
 * @param farMetres how far the wedge goes
 */
export const pictureWedge = (view: CameraView, farMetres: number): Convex | null => {
  const bearing = ([x, , z]: Vec3) => Math.atan2(x, -z);
  const middle = bearing(view.forward);
  const turns = edgeLooks.flatMap((y) =>
    [0, 1].map((x) => {
      const turn = bearing(viewDirection(view, x, y)) - middle;
      return halfTurnRadians(turn);
    }),
  );
  const [left, right] = [Math.min(...turns), Math.max(...turns)];
  if (Math.hypot(view.forward[0], view.forward[2]) < 0.1 || -left > widestRadians || right > widestRadians) return null;
  const [east, north] = onLevel(view.position);
  const far = (turn: number): GroundPoint => {
    const reach = farMetres / Math.cos(turn);
    return [east + reach * Math.sin(middle + turn), north + reach * Math.cos(middle + turn)];
  };
  return convexOf([[east, north], far(right), far(left)]);
};

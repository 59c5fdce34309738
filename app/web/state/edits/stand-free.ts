import { type CameraView, projectPoint } from '../../../../core/camera/camera-view.ts';
import type { Vec3 } from '../../../../core/geometry/vec.ts';
import type { Camera, Position, Scan, Setup, Subject } from '../../../../core/setup/schema/setup.ts';
import { degreesFromRadians } from '../../../../core/units/angle.ts';
import { worldFromDocument } from '../../../../core/world/axes.ts';
import { buildWorld } from '../../../../core/world/world.ts';
import { type Box, boxOfMeshes, meshesOf } from './own-box.ts';
import { cameraOf } from './place-edits.ts';
import { withinWorld } from './within.ts';

/** A level direction, or a place on the ground: [east, north]. */
type Level = readonly [east: number, north: number];

/** Level unit direction that the camera looks in; north when it looks straight down or up. */
export const levelLook = ({ position, aim }: Camera): Level => {
  const [east, north] = [aim[0] - position[0], aim[1] - position[1]];
  const away = Math.hypot(east, north);
  return away > 1e-6 ? [east / away, north / away] : [0, 1];
};

const rounded = (metres: number) => Math.round(metres * 100) / 100 + 0;
const at = ([east, north]: Level): Position => withinWorld([rounded(east), rounded(north), 0]);

/** Least space between two subjects that stand free of each other, metres. */
const gapMetres = 0.2;

const boxOf = (subject: Subject, scans: readonly Scan[]): Box => boxOfMeshes(meshesOf(subject, scans));

const overlap = (a: Box, b: Box): boolean =>
  [0, 1, 2].every((axis) => {
    const gap = axis === 1 ? 0 : gapMetres;
    return (
      (a.low[axis] as number) < (b.high[axis] as number) + gap &&
      (b.low[axis] as number) < (a.high[axis] as number) + gap
    );
  });

const moved = ({ low, high }: Box, [east, north]: Level): Box => {
  const shift = ([x, y, z]: Vec3): Vec3 => [x + east, y, z - north];
  return { low: shift(low), high: shift(high) };
};

const cornersOf = ({ low, high }: Box): Vec3[] =>
  [low[0], high[0]].flatMap((x) => [low[1], high[1]].flatMap((y) => [low[2], high[2]].map((z): Vec3 => [x, y, z])));

/** Whether a point lies in the picture, that far from its edges (as a share of it). */
const isShown = (view: CameraView, point: Vec3, margin: number): boolean => {
  const place = projectPoint(view, point);
  return place?.every((v) => v >= margin && v <= 1 - margin) ?? false;
};

/** Distances before the camera that are tried, metres, and how far aside, in widths of the thing. */
const distances = [3, 4, 5, 6, 8, 10, 12, 15, 18, 22, 27, 33, 40, 50, 65, 80, 100, 150, 200];
const asides = [0, -1, 1, -2, 2];

/** Those places, nearest first to what the camera looks at, or to fifteen metres when that is farther off. */
const placesBefore = ({ position, aim }: Camera, [east, north]: Level, widthMetres: number): Level[] => {
  const wished = Math.min(Math.max(Math.hypot(aim[0] - position[0], aim[1] - position[1]), 3), 15);
  const off = (ahead: number, aside: number) => Math.abs(Math.log(ahead / wished)) + 0.3 * Math.abs(aside);
  return distances
    .flatMap((ahead) => asides.map((aside) => ({ ahead, aside, off: off(ahead, aside) })))
    .sort((a, b) => a.off - b.off)
    .map(({ ahead, aside }): Level => {
      const right = aside * widthMetres;
      return [position[0] + east * ahead + north * right, position[1] + north * ahead - east * right];
    });
};

/**
 * Stands a new subject on the ground where the camera looks: at its aim when that lies on the ground, else before it,
 * near but whole in the picture, and clear of what is there when a place for that is found. Its front is turned to the
 * camera, by whole 15°.
 */
export const standFree = (setup: Setup, schemeId: string, subject: Subject): Subject => {
  const scheme = setup.schemes.find(({ id }) => id === schemeId) ?? setup.schemes[0];
  if (!scheme) return subject;
  const camera = cameraOf(setup, scheme.id);
  const [east, north] = levelLook(camera);
  const turnDegrees = Math.round(degreesFromRadians(Math.atan2(east, north)) / 15) * 15 + 0;
  const turned: Subject = { ...subject, position: [0, 0, 0], turnDegrees };
  const own = boxOf(turned, setup.scans);
  const { view, stage } = buildWorld(setup, scheme);
  const others = stage.subjects.map(({ points }) => boxOfMeshes([{ positions: points }]));
  const aim: Level = [camera.aim[0], camera.aim[1]];
  const step = Math.hypot(own.high[0] - own.low[0], own.high[2] - own.low[2]) + gapMetres;
  const places = placesBefore(camera, [east, north], step);
  const isFree = (place: Level) => !others.some((other) => overlap(moved(own, place), other));
  const isWhole = (place: Level) => cornersOf(moved(own, place)).every((corner) => isShown(view, corner, 0.06));
  const isSeen = ([e, n]: Level) => isShown(view, worldFromDocument([e, n, own.high[1] / 2]), 0);
  const aimsAtGround = Math.abs(camera.aim[2]) < 0.05;
  const found =
    (aimsAtGround && isFree(aim) && isSeen(aim) ? aim : undefined) ??
    [aim, ...places].find((place) => isFree(place) && isWhole(place)) ??
    [aim, ...places].find((place) => isFree(place) && isSeen(place)) ??
    (isSeen(aim) ? aim : (places.find(isSeen) ?? aim));
  return { ...turned, position: at(found) };
};

/** Stands a copy beside what it is a copy of, along the camera's right, clear of what is there when that is found. */
export const standBeside = (setup: Setup, schemeId: string, subject: Subject): Subject => {
  const [east, north] = levelLook(cameraOf(setup, schemeId));
  const own = boxOf(subject, setup.scans);
  // how far it reaches along the camera's right, world x east and z south
  const reach = Math.abs(north) * (own.high[0] - own.low[0]) + Math.abs(east) * (own.high[2] - own.low[2]);
  const others = setup.subjects.filter(({ hidden }) => !hidden).map((other) => boxOf(other, setup.scans));
  const offsets = [1, -1, 2, -2, 3, -3, 4, -4].map((times): Level => {
    const metres = times * (reach + 0.3);
    return [north * metres, -east * metres];
  });
  const isFree = (offset: Level) => !others.some((other) => overlap(moved(own, offset), other));
  const [e, n] = offsets.find(isFree) ?? (offsets[0] as Level);
  const [fromEast, fromNorth, up] = subject.position;
  return { ...subject, position: withinWorld([rounded(fromEast + e), rounded(fromNorth + n), up]) };
};

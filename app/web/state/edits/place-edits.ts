import { distance } from '../../../../core/geometry/vec.ts';
import type { Camera, Position, Scheme, Setup } from '../../../../core/setup/schema/setup.ts';
import { infinityMetres, nearestFocusMetres } from '../../../../core/units/focus-range.ts';
import { areApart, changeScheme, withinWorld } from './within.ts';

/** The camera that a scheme is seen with: its own, else the setup's. */
export const cameraOf = (setup: Setup, schemeId: string): Camera =>
  setup.schemes.find(({ id }) => id === schemeId)?.camera ?? setup.camera;

/** Changes that camera. The same setup where all its numbers stay: an entry of history without a change would cut off what can be redone. */
export const changeCamera = (setup: Setup, schemeId: string, change: (camera: Camera) => Camera): Setup => {
  const before = cameraOf(setup, schemeId);
  const camera = change(before);
  if (camera === before || JSON.stringify(camera) === JSON.stringify(before)) return setup;
  const own = setup.schemes.find(({ id }) => id === schemeId)?.camera;
  return own ? changeScheme(setup, schemeId, (scheme) => ({ ...scheme, camera })) : { ...setup, camera };
};

/** Whether two schemes stand at the same distance from all: focus means the same in both only then. */
export const shareCamera = (a: Scheme, b: Scheme): boolean => a.id === b.id || (a.camera === null && b.camera === null);

/** Moves the camera; the aim stays, and a place on the aim itself is refused. */
export const moveCamera = (setup: Setup, schemeId: string, to: Position): Setup =>
  changeCamera(setup, schemeId, (camera) => {
    const position = withinWorld(to);
    return areApart(camera.aim, position) ? { ...camera, position } : camera;
  });

/** Turns the camera to look at a place; its own place is refused. */
export const aimCamera = (setup: Setup, schemeId: string, to: Position): Setup =>
  changeCamera(setup, schemeId, (camera) => {
    const aim = withinWorld(to);
    return areApart(camera.position, aim) ? { ...camera, aim } : camera;
  });

/** Changes some numbers of the sensor; pixels are made whole. */
export const setSensor = (setup: Setup, schemeId: string, part: Partial<Camera['sensor']>): Setup =>
  changeCamera(setup, schemeId, (camera) => {
    const sensor = { ...camera.sensor, ...part };
    const [pixelsWide, pixelsHigh] = [Math.round(sensor.pixelsWide), Math.round(sensor.pixelsHigh)];
    return { ...camera, sensor: { ...sensor, pixelsWide, pixelsHigh } };
  });

/** Changes what of lens and sensor the picture shows. */
export const setDrawn = (setup: Setup, schemeId: string, part: Partial<Camera['drawn']>): Setup =>
  changeCamera(setup, schemeId, (camera) => ({ ...camera, drawn: { ...camera.drawn, ...part } }));

/** Gives a scheme a camera of its own, which begins as the setup's. */
export const giveOwnCamera = (setup: Setup, schemeId: string): Setup =>
  changeScheme(setup, schemeId, (scheme) => (scheme.camera ? scheme : { ...scheme, camera: setup.camera }));

/** Has a scheme seen with the setup's camera again. */
export const dropOwnCamera = (setup: Setup, schemeId: string): Setup =>
  changeScheme(setup, schemeId, (scheme) => (scheme.camera ? { ...scheme, camera: null } : scheme));

/**
 * The camera with another focal length, moved along its level bearing to where what it looks at comes out as large as
 * before. Size in the picture goes with focal length over depth (pinhole), so the distance to the aim changes in
 * proportion to the focal length; the height stays. Exact for what lies square to the view at the aim; what stands plumb
 * changes by the cosine of the tilt besides.
 *
 * @returns null where there is no such place: nearer than the aim is higher or lower than the camera, straight above or
 *   below it, or outside the world
 */
export const sameSizeCamera = (camera: Camera, focalLengthMm: number): Camera | null => {
  const { position, aim } = camera;
  const [east, north, up] = [position[0] - aim[0], position[1] - aim[1], position[2] - aim[2]];
  const level = Math.hypot(east, north);
  const away = Math.hypot(level, up) * (focalLengthMm / camera.focalLengthMm);
  const square = away ** 2 - up ** 2;
  if (level < 1e-6 || square < 1e-6) return null;
  const share = Math.sqrt(square) / level;
  const to: Position = [aim[0] + east * share, aim[1] + north * share, position[2]];
  return areApart(to, withinWorld(to)) ? null : { ...camera, position: to, focalLengthMm };
};

/**
 * The scheme seen with another camera of its own. Its focus goes along in proportion to the distance to the aim, so that
 * what was sharp at the aim stays so; focus on the stars is left.
 */
export const withOwnCamera = (scheme: Scheme, before: Camera, camera: Camera): Scheme => {
  const ratio = distance(camera.position, camera.aim) / distance(before.position, before.aim);
  const moved = (metres: number) =>
    metres < infinityMetres ? Math.min(Math.max(metres * ratio, nearestFocusMetres), infinityMetres) : metres;
  const frames = scheme.frames.map((frame) => ({ ...frame, focusMetres: moved(frame.focusMetres) }));
  return { ...scheme, camera, frames };
};

/** Gives a scheme's own camera, made if need be, another focal length with the subject kept the same size. The same setup where that can't be. */
export const setFocalLengthSameSize = (setup: Setup, schemeId: string, focalLengthMm: number): Setup => {
  const before = cameraOf(setup, schemeId);
  const camera = sameSizeCamera(before, focalLengthMm);
  return camera ? changeScheme(setup, schemeId, (scheme) => withOwnCamera(scheme, before, camera)) : setup;
};

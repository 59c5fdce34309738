import { cameraView } from '../../../../core/camera/camera-view.ts';
import { forwardThatShows, turned } from '../../../../core/camera/turn-camera.ts';
import { closestHit } from '../../../../core/geometry/cast-ray.ts';
import { add, distance, length, normalize, scale, sub, type Vec3 } from '../../../../core/geometry/vec.ts';
import type { Camera, Setup } from '../../../../core/setup/schema/setup.ts';
import { radiansFromDegrees } from '../../../../core/units/angle.ts';
import { worldFromDocument } from '../../../../core/world/axes.ts';
import { stageOf } from '../../../../core/world/stage.ts';
import { documentPlace } from './document-place.ts';
import { EditRefused } from './edit-refused.ts';
import { changeCamera } from './place-edits.ts';
import { areApart, withinWorld } from './within.ts';

const viewOf = ({ position, aim, rollDegrees, sensor, focalLengthMm }: Camera) =>
  cameraView({
    position: worldFromDocument(position),
    aim: worldFromDocument(aim),
    rollRadians: radiansFromDegrees(rollDegrees),
    sensorWidthMm: sensor.widthMm,
    sensorHeightMm: sensor.heightMm,
    focalLengthMm,
  });

/** How fine the camera's places are kept, metres. */
const fineMetres = 1e-4;

/** How far a press walks, turns and lifts the camera. */
export const cameraSteps = { walkMetres: 0.5, turnDegrees: 1, liftMetres: 0.1 } as const;

/** The camera at a place, looking at another; the same camera where the document does not take them. */
const placed = (camera: Camera, from: Vec3, to: Vec3): Camera => {
  const [position, aim] = [documentPlace(from, fineMetres), documentPlace(to, fineMetres)];
  const fits =
    !areApart(position, withinWorld(position)) && !areApart(aim, withinWorld(aim)) && areApart(position, aim);
  return fits ? { ...camera, position, aim } : camera;
};

/** Looks another way from the same place, as far as before. */
const facing = (camera: Camera, forward: Vec3): Camera => {
  const [position, aim] = [camera.position, camera.aim].map(worldFromDocument) as [Vec3, Vec3];
  return placed(camera, position, add(position, scale(forward, distance(position, aim))));
};

/** Walks the camera over level ground; it goes on looking the same way. */
export const walkCamera = (setup: Setup, schemeId: string, aheadMetres: number, rightMetres: number): Setup =>
  changeCamera(setup, schemeId, (camera) => {
    const { forward } = viewOf(camera);
    const level = Math.hypot(forward[0], forward[2]);
    const ahead: Vec3 = level > 1e-6 ? [forward[0] / level, 0, forward[2] / level] : [0, 0, -1];
    const step = add(scale(ahead, aheadMetres), scale([-ahead[2], 0, ahead[0]], rightMetres));
    return placed(camera, add(worldFromDocument(camera.position), step), add(worldFromDocument(camera.aim), step));
  });

/** Turns the camera aside (clockwise seen from above) and up where it stands. */
export const turnCamera = (setup: Setup, schemeId: string, panDegrees: number, tiltDegrees: number): Setup =>
  changeCamera(setup, schemeId, (camera) =>
    facing(camera, turned(viewOf(camera).forward, radiansFromDegrees(panDegrees), radiansFromDegrees(tiltDegrees))),
  );

/** Sets the height of the lens; it goes on looking at the same place. */
export const setCameraHeight = (setup: Setup, schemeId: string, heightMetres: number): Setup =>
  changeCamera(setup, schemeId, (camera) => {
    const [east, north] = camera.position;
    return placed(camera, worldFromDocument([east, north, heightMetres]), worldFromDocument(camera.aim));
  });

/** Turns the camera until a place stands at a point of the picture (0 to 1 from left and top); null where that can't be. */
export const cameraThatShows = (camera: Camera, point: Vec3, x: number, y: number): Camera | null => {
  const view = viewOf(camera);
  if (distance(view.position, point) < 1e-3) return null;
  const forward = forwardThatShows(view, point, x, y);
  return forward && facing(camera, forward);
};

export const isPortrait = ({ sensor: { widthMm, heightMm } }: Camera): boolean => heightMm > widthMm;

/** Turns the camera on its side or back: the picture stands upright all the same. */
export const setPortrait = (setup: Setup, schemeId: string, wantsPortrait: boolean): Setup =>
  changeCamera(setup, schemeId, (camera) => {
    if (isPortrait(camera) === wantsPortrait) return camera;
    const { widthMm, heightMm, pixelsWide, pixelsHigh, ...rest } = camera.sensor;
    const sensor = { ...rest, widthMm: heightMm, heightMm: widthMm, pixelsWide: pixelsHigh, pixelsHigh: pixelsWide };
    return { ...camera, sensor };
  });

/** Height of a low camera: the legs of a tripod spread flat. Common practice, no published source. */
const lowMetres = 0.3;

/** Nearer to plumb than this, the way ahead is no more than a rounding. */
const leastAheadMetres = 1e-3;

/** Height of what lies under the camera: the ground, or whatever stands there. */
const groundUnder = (setup: Setup, position: Vec3): number => {
  const hit = closestHit(stageOf(setup).tree, position, [0, -1, 0]);
  return hit ? position[1] - hit.t : 0;
};

/**
 * Lowers the camera to just over what it stands on and brings the horizon to the lower third: for silhouettes.
 *
 * @throws EditRefused when it looks straight up or down, or at what would come to lie past the edge of the world
 */
export const lowCamera = (setup: Setup, schemeId: string): Setup =>
  changeCamera(setup, schemeId, (camera) => {
    const [east, north] = camera.position;
    const ground = groundUnder(setup, worldFromDocument(camera.position));
    const position = worldFromDocument([east, north, ground + lowMetres]);
    const aim = worldFromDocument(camera.aim);
    const ahead = sub([aim[0], position[1], aim[2]], position);
    if (length(ahead) < leastAheadMetres) {
      const way = camera.aim[2] < camera.position[2] ? 'down' : 'up';
      throw new EditRefused(`The camera looks straight ${way}: no side is ahead of it. Turn it to the subject first.`);
    }
    const level = normalize(ahead);
    const even = { ...camera, rollDegrees: 0 };
    const low = placed(even, position, add(position, scale(level, distance(position, aim))));
    if (low === even)
      throw new EditRefused(
        'What the camera looks at would come to lie past the edge of the world. Aim it nearer first.',
      );
    return cameraThatShows(low, add(position, scale(level, 1000)), 0.5, 2 / 3) ?? low;
  });

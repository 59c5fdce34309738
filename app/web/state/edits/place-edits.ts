import type { Camera, Position, Setup } from '../../../../core/setup/schema/setup.ts';
import { areApart, changeScheme, replaceById, withinWorld } from './within.ts';

/** The camera that a scheme is seen with: its own, else the setup's. */
export const cameraOf = (setup: Setup, schemeId: string): Camera =>
  setup.schemes.find(({ id }) => id === schemeId)?.camera ?? setup.camera;

/** Changes that camera. */
export const changeCamera = (setup: Setup, schemeId: string, change: (camera: Camera) => Camera): Setup => {
  const own = setup.schemes.find(({ id }) => id === schemeId)?.camera;
  if (own) return changeScheme(setup, schemeId, (scheme) => ({ ...scheme, camera: change(own) }));
  return { ...setup, camera: change(setup.camera) };
};

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

export const moveSubject = (setup: Setup, subjectId: string, to: Position): Setup => ({
  ...setup,
  subjects: replaceById(setup.subjects, subjectId, (subject) => ({ ...subject, position: withinWorld(to) })),
});

export const turnSubject = (setup: Setup, subjectId: string, turnDegrees: number): Setup => ({
  ...setup,
  subjects: replaceById(setup.subjects, subjectId, (subject) => ({ ...subject, turnDegrees })),
});

import type { Camera, Frame, Pass, Position, Scheme, Setup } from '../../../../core/setup/schema/setup.ts';
import { changeFrame, changeScheme, type FramePlace, freshId, replaceById } from './within.ts';

/** The fields of a frame that are plain numbers. */
export type FrameNumber = 'aperture' | 'seconds' | 'iso' | 'focusMetres';

/** Squeezes a pass into a frame of that length. */
const fitPass = (pass: Pass, seconds: number): Pass => {
  if (pass.off <= seconds) return pass;
  const length = Math.min(pass.off - pass.on, seconds);
  return { ...pass, on: seconds - length, off: seconds };
};

export const setFrameNumber = (setup: Setup, place: FramePlace, field: FrameNumber, value: number): Setup =>
  changeFrame(setup, place, (frame) => ({
    ...frame,
    [field]: value,
    passes: field === 'seconds' ? frame.passes.map((pass) => fitPass(pass, value)) : frame.passes,
  }));

export const setWhiteBalance = (setup: Setup, place: FramePlace, kelvin: number): Setup =>
  changeFrame(setup, place, (frame) => ({ ...frame, whiteBalance: { ...frame.whiteBalance, kelvin } }));

/** A copy of a scheme after it, under a new name. */
export const duplicateScheme = (setup: Setup, schemeId: string): { setup: Setup; schemeId: string } => {
  const at = setup.schemes.findIndex(({ id }) => id === schemeId);
  const original = setup.schemes[at];
  if (!original || setup.schemes.length >= 24) return { setup, schemeId };
  const id = freshId(setup.schemes, original.id);
  const copy: Scheme = { ...original, id, name: `${original.name} copy`.slice(0, 80) };
  return { setup: { ...setup, schemes: setup.schemes.toSpliced(at + 1, 0, copy) }, schemeId: id };
};

export const renameScheme = (setup: Setup, schemeId: string, name: string): Setup =>
  changeScheme(setup, schemeId, (scheme) => ({ ...scheme, name }));

export const removeScheme = (setup: Setup, schemeId: string): Setup =>
  setup.schemes.length > 1 ? { ...setup, schemes: setup.schemes.filter(({ id }) => id !== schemeId) } : setup;

/** A pass at the end of a frame. */
export const addPass = (setup: Setup, place: FramePlace, pass: Pass): Setup =>
  changeFrame(setup, place, (frame: Frame) =>
    frame.passes.length >= 64 ? frame : { ...frame, passes: [...frame.passes, fitPass(pass, frame.seconds)] },
  );

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
export const moveCamera = (setup: Setup, schemeId: string, position: Position): Setup =>
  changeCamera(setup, schemeId, (camera) =>
    camera.aim.some((v, i) => Math.abs(v - (position[i] as number)) > 1e-6) ? { ...camera, position } : camera,
  );

export const aimCamera = (setup: Setup, schemeId: string, aim: Position): Setup =>
  changeCamera(setup, schemeId, (camera) =>
    camera.position.some((v, i) => Math.abs(v - (aim[i] as number)) > 1e-6) ? { ...camera, aim } : camera,
  );

export const moveSubject = (setup: Setup, subjectId: string, position: Position): Setup => ({
  ...setup,
  subjects: replaceById(setup.subjects, subjectId, (subject) => ({ ...subject, position })),
});

export const turnSubject = (setup: Setup, subjectId: string, turnDegrees: number): Setup => ({
  ...setup,
  subjects: replaceById(setup.subjects, subjectId, (subject) => ({ ...subject, turnDegrees })),
});

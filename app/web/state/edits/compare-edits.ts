import type { Camera, Frame, Scheme, Setup } from '../../../../core/setup/schema/setup.ts';
import { likeFrame } from '../like-frame.ts';
import { cutTo, longestName } from './cut-to.ts';
import { maxSchemes, setFrameNumber, setTint, setWhiteBalance } from './frame-edits.ts';
import { cameraOf, sameSizeCamera, shareCamera, withOwnCamera } from './place-edits.ts';
import { areApart, type FramePlace, freshId } from './within.ts';

/** Edits of several schemes at once: pure, each one step of the history. */

/** Puts a scheme at another place in the row, counted from nought. */
export const moveScheme = (setup: Setup, schemeId: string, index: number): Setup => {
  const at = setup.schemes.findIndex(({ id }) => id === schemeId);
  const scheme = setup.schemes[at];
  const to = Math.min(Math.max(index, 0), setup.schemes.length - 1);
  if (!scheme || to === at) return setup;
  return { ...setup, schemes: setup.schemes.toSpliced(at, 1).toSpliced(to, 0, scheme) };
};

/** Makes one change to a frame and to the like frame of other schemes. A scheme without one is left alone. */
export const changeLikeFrames = (
  setup: Setup,
  { schemeId, frameId }: FramePlace,
  schemeIds: readonly string[],
  change: (setup: Setup, place: FramePlace) => Setup,
): Setup => {
  const frame = setup.schemes.find(({ id }) => id === schemeId)?.frames.find(({ id }) => id === frameId);
  if (!frame) return setup;
  return setup.schemes.reduce((next, scheme) => {
    if (scheme.id === schemeId) return change(next, { schemeId, frameId });
    const like = schemeIds.includes(scheme.id) ? likeFrame(scheme, frame) : undefined;
    return like ? change(next, { schemeId: scheme.id, frameId: like.id }) : next;
  }, setup);
};

const exposureFields = ['aperture', 'seconds', 'iso'] as const;

const copyExposure = (setup: Setup, place: FramePlace, from: Frame, takesFocus: boolean): Setup => {
  let next = setup;
  for (const field of takesFocus ? ([...exposureFields, 'focusMetres'] as const) : exposureFields)
    next = setFrameNumber(next, place, field, from[field]);
  return setTint(setWhiteBalance(next, place, from.whiteBalance.kelvin), place, from.whiteBalance.tint);
};

/** Gives the frames of other schemes the exposure and white balance of their like in one scheme, and its focus where they share its camera. */
export const makeExposureAlike = (setup: Setup, schemeId: string, schemeIds: readonly string[]): Setup => {
  const model = setup.schemes.find(({ id }) => id === schemeId);
  if (!model) return setup;
  const others = setup.schemes.filter(({ id }) => id !== schemeId && schemeIds.includes(id));
  return others.reduce(
    (next, scheme) =>
      scheme.frames.reduce((so, frame) => {
        const like = likeFrame(model, frame);
        const place = { schemeId: scheme.id, frameId: frame.id };
        return like ? copyExposure(so, place, like, shareCamera(model, scheme)) : so;
      }, next),
    setup,
  );
};

/** Some schemes made of one, each seen with a camera of its own. */
export interface MadeSchemes {
  readonly setup: Setup;
  /** Those that were made, in order; empty when there was no room or no place for the cameras. */
  readonly schemeIds: readonly string[];
}

const withCameras = (
  setup: Setup,
  schemeId: string,
  cameras: readonly (readonly [name: string, camera: Camera | null])[],
): MadeSchemes => {
  const at = setup.schemes.findIndex(({ id }) => id === schemeId);
  const original = setup.schemes[at];
  const able = cameras.flatMap(([name, camera]) => (camera ? [{ name, camera }] : []));
  if (!original || able.length < cameras.length || setup.schemes.length + able.length > maxSchemes)
    return { setup, schemeIds: [] };
  const made: Scheme[] = [];
  for (const { name, camera } of able) {
    const id = freshId([...setup.schemes, ...made], original.id);
    const ending = ` · ${name}`;
    const named = { ...original, id, name: cutTo(original.name, longestName - ending.length) + ending };
    made.push(withOwnCamera(named, cameraOf(setup, schemeId), camera));
  }
  return {
    setup: { ...setup, schemes: setup.schemes.toSpliced(at + 1, 0, ...made) },
    schemeIds: made.map(({ id }) => id),
  };
};

/** Focal lengths that are compared, full frame. */
export const comparedLenses = [24, 50, 85] as const;

/** Three schemes of one, seen through three lenses with the subject kept the same size. */
export const makeLensSchemes = (setup: Setup, schemeId: string): MadeSchemes => {
  const camera = cameraOf(setup, schemeId);
  return withCameras(
    setup,
    schemeId,
    comparedLenses.map((mm) => [`${mm} mm`, sameSizeCamera(camera, mm)]),
  );
};

/** Heights of a low and of a high camera over the ground, metres: on the shin, and over the head. */
export const lowAndHighMetres = [0.3, 2.2] as const;

/** Two schemes of one, seen from low and from high; the aim is kept. */
export const makeLowAndHighSchemes = (setup: Setup, schemeId: string): MadeSchemes => {
  const camera = cameraOf(setup, schemeId);
  const at = (up: number): Camera | null => {
    const position: Camera['position'] = [camera.position[0], camera.position[1], up];
    return areApart(position, camera.aim) ? { ...camera, position } : null;
  };
  const [low, high] = lowAndHighMetres;
  return withCameras(setup, schemeId, [
    ['low camera', at(low)],
    ['high camera', at(high)],
  ]);
};

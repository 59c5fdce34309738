import { fullEntry } from '../../../../core/setup/blend-entries.ts';
import type { Frame, Lesson, Scheme, Setup } from '../../../../core/setup/schema/setup.ts';
import { cutTo, longestName } from './cut-to.ts';
import { EditRefused } from './edit-refused.ts';
import { frameKinds } from './frame-kinds.ts';
import { freshName, plainName } from './plain-name.ts';
import { changeFrame, changeScheme, type FramePlace, freshId } from './within.ts';

/** Edits of the frames of a scheme: pure, each one step of the history. */

/** Most frames of a scheme, and most entries of its blend. */
export const mostFrames = 64;

/** A setup with another frame, and which one that is. */
export interface WithFrame {
  readonly setup: Setup;
  readonly frameId: string;
}

/** Where stars are in focus. */
const farMetres = 10000;

const withRoom = (scheme: Scheme): void => {
  if (scheme.frames.length >= mostFrames) throw new EditRefused(`A scheme has at most ${mostFrames} frames.`);
};

/** A blend that was written out gets entries for a new frame too; one that takes every frame has them already. */
const blendWith = ({ blend }: Scheme, entries: Scheme['blend']['frames']): Scheme['blend'] =>
  blend.frames.length === 0 ? blend : { ...blend, frames: [...blend.frames, ...entries].slice(0, mostFrames) };

/**
 * A new frame of a kind after the others, without lamps. It has the white balance of the frame that is shown, so that the
 * blend is of one colour, and its focus; a sky frame is focused on the stars. It counts in the blend everywhere.
 */
export const addFrame = (setup: Setup, { schemeId, frameId }: FramePlace, purpose: Frame['purpose']): WithFrame => {
  const scheme = setup.schemes.find(({ id }) => id === schemeId);
  const model = scheme?.frames.find(({ id }) => id === frameId) ?? scheme?.frames.at(-1);
  if (!scheme || !model) return { setup, frameId };
  withRoom(scheme);
  const { name, exposure } = frameKinds[purpose];
  const names = scheme.frames.map((frame) => frame.name);
  const id = freshId(scheme.frames, purpose);
  const { whiteBalance } = model;
  const focusMetres = purpose === 'sky' ? farMetres : model.focusMetres;
  const frame: Frame = {
    ...exposure,
    id,
    name: freshName(names, name),
    purpose,
    whiteBalance,
    focusMetres,
    passes: [],
  };
  const change = (before: Scheme): Scheme => ({
    ...before,
    frames: [...before.frames, frame],
    blend: blendWith(before, [fullEntry(id)]),
  });
  return { setup: changeScheme(setup, schemeId, change), frameId: id };
};

/** A copy of a frame after it, with its lamps and its part in the blend. */
export const duplicateFrame = (setup: Setup, { schemeId, frameId }: FramePlace): WithFrame => {
  const scheme = setup.schemes.find(({ id }) => id === schemeId);
  const at = scheme?.frames.findIndex(({ id }) => id === frameId) ?? -1;
  const original = scheme?.frames[at];
  if (!scheme || !original) return { setup, frameId };
  withRoom(scheme);
  const names = scheme.frames.map((frame) => frame.name);
  const id = freshId(scheme.frames, original.id);
  const copy = { ...original, id, name: freshName(names, original.name) };
  const entries = scheme.blend.frames.filter((entry) => entry.frameId === frameId);
  const change = (before: Scheme): Scheme => ({
    ...before,
    frames: before.frames.toSpliced(at + 1, 0, copy),
    blend: blendWith(
      before,
      entries.map((entry) => ({ ...entry, frameId: id })),
    ),
  });
  return { setup: changeScheme(setup, schemeId, change), frameId: id };
};

/** Gives a frame another name; an empty one is not taken. */
export const renameFrame = (setup: Setup, place: FramePlace, typed: string): Setup => {
  const name = cutTo(plainName(typed), longestName);
  return changeFrame(setup, place, (frame) => (name === '' || name === frame.name ? frame : { ...frame, name }));
};

/** Puts a frame at another place in the order in which they are exposed, counted from nought. */
export const moveFrame = (setup: Setup, { schemeId, frameId }: FramePlace, index: number): Setup =>
  changeScheme(setup, schemeId, (scheme) => {
    const at = scheme.frames.findIndex(({ id }) => id === frameId);
    const frame = scheme.frames[at];
    const to = Math.min(Math.max(index, 0), scheme.frames.length - 1);
    if (!frame || to === at) return scheme;
    return { ...scheme, frames: scheme.frames.toSpliced(at, 1).toSpliced(to, 0, frame) };
  });

/** A lesson that asks nothing about lamps that are gone. */
const lessonAfter = (lesson: Lesson | null, { id, frames }: Scheme): Lesson | null => {
  const isGone = ({ schemeIds, predict }: Lesson['steps'][number]) =>
    predict !== null &&
    schemeIds[0] === id &&
    !frames.some(({ passes }) => passes.some((pass) => pass.id === predict.passId));
  if (!lesson?.steps.some(isGone)) return lesson;
  return { ...lesson, steps: lesson.steps.map((step) => (isGone(step) ? { ...step, predict: null } : step)) };
};

/** Removes a frame with its lamps, what the blend says of it, and what a lesson asks about them; the last one stays. */
export const removeFrame = (setup: Setup, { schemeId, frameId }: FramePlace): Setup => {
  const next = changeScheme(setup, schemeId, (scheme) => {
    const frames = scheme.frames.filter(({ id }) => id !== frameId);
    if (frames.length === 0 || frames.length === scheme.frames.length) return scheme;
    const entries = scheme.blend.frames.filter((entry) => entry.frameId !== frameId);
    return { ...scheme, frames, blend: { ...scheme.blend, frames: entries } };
  });
  const scheme = next.schemes.find(({ id }) => id === schemeId);
  if (next === setup || !scheme) return setup;
  return { ...next, lesson: lessonAfter(setup.lesson, scheme) };
};

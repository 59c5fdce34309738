import { fixedRuleSeconds } from '../../../../core/camera/star-rules.ts';
import { fullEntry, namedEntries } from '../../../../core/setup/blend-entries.ts';
import type { Frame, Lesson, Scheme, Setup } from '../../../../core/setup/schema/setup.ts';
import { infinityMetres } from '../../../../core/units/focus-range.ts';
import { stepThird } from '../../../../core/units/third-stops.ts';
import { blendWithCopies } from './blend-with-copies.ts';
import { EditRefused } from './edit-refused.ts';
import { frameKinds } from './frame-kinds.ts';
import { mostFrames } from './most-frames.ts';
import { cameraOf } from './place-edits.ts';
import { freshName, renamed } from './plain-name.ts';
import { changeFrame, changeScheme, type FramePlace, freshId } from './within.ts';

/** Edits of the frames of a scheme: pure, each one step of the history. */

/** A setup with another frame, and which one that is. */
export interface WithFrame {
  readonly setup: Setup;
  readonly frameId: string;
}

/** Seconds before the stars draw lines by the loosest rule in use, in a marked time; never longer than asked for. */
const starSeconds = (setup: Setup, schemeId: string, most: number): number => {
  const { focalLengthMm, sensor } = cameraOf(setup, schemeId);
  const fullFrameMm = (focalLengthMm * Math.hypot(36, 24)) / Math.hypot(sensor.widthMm, sensor.heightMm);
  let seconds = most;
  while (seconds > fixedRuleSeconds(fullFrameMm)) {
    const shorter = stepThird('seconds', seconds, -1);
    if (shorter === seconds) break;
    seconds = shorter;
  }
  return seconds;
};

/** Refused where a scheme has no room for so many more frames. */
export const withRoom = (scheme: Scheme, count = 1): void => {
  if (scheme.frames.length + count > mostFrames) throw new EditRefused(`A scheme has at most ${mostFrames} frames.`);
};

/**
 * A blend with a new frame, if there is room: one that takes every frame has it already. A land frame counts on the land
 * alone, since its sky is bright and drawn out, so that it has the list written out.
 */
const blendWith = (scheme: Scheme, { id, purpose }: Pick<Frame, 'id' | 'purpose'>): Scheme['blend'] => {
  const { blend } = scheme;
  if (blend.frames.length === 0 && purpose !== 'land') return blend;
  const entry = purpose === 'land' ? { ...fullEntry(id), where: 'land' as const } : fullEntry(id);
  return { ...blend, frames: [...namedEntries(scheme), entry].slice(0, mostFrames) };
};

/**
 * A new frame of a kind after the others, without lamps. It has the white balance of the frame that is shown, so that the
 * blend is of one colour, and its focus; a sky frame is focused on the stars, and shorter with a longer lens. It counts in
 * the blend everywhere, a land frame on the land.
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
  const focusMetres = purpose === 'sky' ? infinityMetres : model.focusMetres;
  const seconds = purpose === 'sky' ? starSeconds(setup, schemeId, exposure.seconds) : exposure.seconds;
  const frame: Frame = {
    ...exposure,
    seconds,
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
    blend: blendWith(before, frame),
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
  const change = (before: Scheme): Scheme => ({
    ...before,
    frames: before.frames.toSpliced(at + 1, 0, copy),
    blend: blendWithCopies(before.blend, frameId, [id]),
  });
  return { setup: changeScheme(setup, schemeId, change), frameId: id };
};

/** Gives a frame another name; an empty one is not taken. */
export const renameFrame = (setup: Setup, place: FramePlace, typed: string): Setup =>
  changeFrame(setup, place, (frame) => renamed(frame, typed));

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

/**
 * Removes a frame with its lamps, what the blend says of it, and what a lesson asks about them; the last one stays. Refused
 * where the blend takes it alone: the picture would be of frames that were left out of it.
 */
export const removeFrame = (setup: Setup, { schemeId, frameId }: FramePlace): Setup => {
  const next = changeScheme(setup, schemeId, (scheme) => {
    const frames = scheme.frames.filter(({ id }) => id !== frameId);
    if (frames.length === 0 || frames.length === scheme.frames.length) return scheme;
    const entries = scheme.blend.frames.filter((entry) => entry.frameId !== frameId);
    if (entries.length === 0 && scheme.blend.frames.length > 0)
      throw new EditRefused(
        `“${scheme.frames.find(({ id }) => id === frameId)?.name}” is the only frame that the blend takes. Take another one into it first.`,
      );
    return { ...scheme, frames, blend: { ...scheme.blend, frames: entries } };
  });
  const scheme = next.schemes.find(({ id }) => id === schemeId);
  if (next === setup || !scheme) return setup;
  return { ...next, lesson: lessonAfter(setup.lesson, scheme) };
};

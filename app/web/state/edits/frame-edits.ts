import { litFrom } from '../../../../core/passes/lit-from.ts';
import type { Frame, Pass, Scheme, Setup } from '../../../../core/setup/schema/setup.ts';
import { infinityMetres, nearestFocusMetres } from '../../../../core/units/focus-range.ts';
import { cutTo, longestName } from './cut-to.ts';
import { renamed } from './plain-name.ts';
import { changeFrame, changeScheme, type FramePlace, freshId } from './within.ts';

/** The fields of a frame that are plain numbers. */
export type FrameNumber = 'aperture' | 'seconds' | 'iso' | 'focusMetres' | 'delaySeconds';

/** Squeezes a pass into a frame of that length. */
const fitPass = (pass: Pass, seconds: number): Pass => {
  if (pass.off <= seconds) return pass;
  const length = Math.min(pass.off - pass.on, seconds);
  return litFrom(pass, seconds - length, seconds);
};

export const setFrameNumber = (setup: Setup, place: FramePlace, field: FrameNumber, value: number): Setup =>
  changeFrame(setup, place, (frame) => ({
    ...frame,
    [field]: value,
    passes: field === 'seconds' ? frame.passes.map((pass) => fitPass(pass, value)) : frame.passes,
  }));

export const setWhiteBalance = (setup: Setup, place: FramePlace, kelvin: number): Setup =>
  changeFrame(setup, place, (frame) => ({ ...frame, whiteBalance: { ...frame.whiteBalance, kelvin } }));

export const setTint = (setup: Setup, place: FramePlace, tint: number): Setup =>
  changeFrame(setup, place, (frame) => ({ ...frame, whiteBalance: { ...frame.whiteBalance, tint } }));

/** Focuses a frame at a distance, to the millimetre and never short of it; null = infinity. */
export const focusAt = (setup: Setup, place: FramePlace, metres: number | null): Setup => {
  const wanted = metres === null ? infinityMetres : Math.ceil(metres * 1000) / 1000;
  const focusMetres = Math.min(Math.max(wanted, nearestFocusMetres), infinityMetres);
  return changeFrame(setup, place, (frame) => (frame.focusMetres === focusMetres ? frame : { ...frame, focusMetres }));
};

/** Most schemes of a setup. */
export const maxSchemes = 24;

/** A name that no scheme has yet: "Side 2", "Side 3" … */
const freshName = (schemes: readonly Scheme[], name: string): string => {
  const stem = cutTo(name.replace(/ \d+$/, ''), longestName - 4);
  const taken = new Set(schemes.map((scheme) => scheme.name));
  for (let n = 2; ; n++) if (!taken.has(`${stem} ${n}`)) return `${stem} ${n}`;
};

/** A copy of a scheme after it, under a new name. */
export const duplicateScheme = (setup: Setup, schemeId: string): { setup: Setup; schemeId: string } => {
  const at = setup.schemes.findIndex(({ id }) => id === schemeId);
  const original = setup.schemes[at];
  if (!original || setup.schemes.length >= maxSchemes) return { setup, schemeId };
  const id = freshId(setup.schemes, original.id);
  const copy: Scheme = { ...original, id, name: freshName(setup.schemes, original.name) };
  return { setup: { ...setup, schemes: setup.schemes.toSpliced(at + 1, 0, copy) }, schemeId: id };
};

export const renameScheme = (setup: Setup, schemeId: string, name: string): Setup =>
  changeScheme(setup, schemeId, (scheme) => renamed(scheme, name));

/** A lesson without a scheme: steps that showed nothing else go, and nothing is asked of one that is not there. */
const lessonWithout = ({ lesson }: Setup, schemeId: string): Setup['lesson'] => {
  if (!lesson?.steps.some(({ schemeIds }) => schemeIds.includes(schemeId))) return lesson;
  const steps = lesson.steps.flatMap((step) => {
    const schemeIds = step.schemeIds.filter((id) => id !== schemeId);
    const predict = step.schemeIds[0] === schemeId ? null : step.predict;
    return schemeIds.length > 0 ? [{ ...step, schemeIds, predict }] : [];
  });
  return steps.length > 0 ? { ...lesson, steps } : null;
};

/** Removes a scheme, but the last. */
export const removeScheme = (setup: Setup, schemeId: string): Setup => {
  const schemes = setup.schemes.filter(({ id }) => id !== schemeId);
  if (schemes.length === 0 || schemes.length === setup.schemes.length) return setup;
  return { ...setup, schemes, lesson: lessonWithout(setup, schemeId) };
};

/** A pass at the end of a frame. */
export const addPass = (setup: Setup, place: FramePlace, pass: Pass): Setup =>
  changeFrame(setup, place, (frame: Frame) =>
    frame.passes.length >= 64 ? frame : { ...frame, passes: [...frame.passes, fitPass(pass, frame.seconds)] },
  );

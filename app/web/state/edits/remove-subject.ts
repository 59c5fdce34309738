import type { Blend } from '../../../../core/setup/blend-entries.ts';
import type { Lesson, Scheme, Setup } from '../../../../core/setup/schema/setup.ts';
import { EditRefused } from './edit-refused.ts';
import { pruneScans } from './prune-scans.ts';
import { subjectNamed } from './subject-edits.ts';
import { withoutLoneGroups } from './subject-groups.ts';

/** The first entry of each frame, which counts everywhere. */
const everywhere = (frames: Blend['frames']): Blend['frames'] =>
  frames
    .filter(({ frameId }, i) => frames.findIndex((part) => part.frameId === frameId) === i)
    .map((part) => ({ ...part, where: 'everything', subjectId: null }));

/**
 * A blend without the frames that counted on that subject alone. Where that is all that it takes they count everywhere
 * instead: an empty list would take every frame.
 */
const schemeWithout = (scheme: Scheme, subjectId: string): Scheme => {
  const { frames } = scheme.blend;
  if (frames.every((part) => part.subjectId !== subjectId)) return scheme;
  const kept = frames
    .filter((part) => !(part.where === 'subject' && part.subjectId === subjectId))
    .map((part) => (part.subjectId === subjectId ? { ...part, subjectId: null } : part));
  return { ...scheme, blend: { ...scheme.blend, frames: kept.length > 0 ? kept : everywhere(frames) } };
};

/** A lesson that asks nothing of that subject. */
const lessonWithout = (lesson: Lesson | null, subjectId: string): Lesson | null => {
  if (!lesson?.steps.some(({ predict }) => predict?.subjectId === subjectId)) return lesson;
  const steps = lesson.steps.map((step) => (step.predict?.subjectId === subjectId ? { ...step, predict: null } : step));
  return { ...lesson, steps };
};

/** Removes a subject with all that points to it: masks of blends, questions of a lesson, scans that nothing else shows. A locked one is not. */
export const removeSubject = (setup: Setup, subjectId: string): Setup => {
  const subjects = setup.subjects.filter(({ id }) => id !== subjectId);
  if (subjects.length === setup.subjects.length) return setup;
  const subject = subjectNamed(setup, subjectId);
  if (subject?.locked) throw new EditRefused(`${subject.name} is locked and stays as it is. Unlock it first.`);
  const schemes = setup.schemes.map((scheme) => schemeWithout(scheme, subjectId));
  return pruneScans({
    ...setup,
    subjects: withoutLoneGroups(subjects),
    schemes: schemes.every((scheme, s) => scheme === setup.schemes[s]) ? setup.schemes : schemes,
    lesson: lessonWithout(setup.lesson, subjectId),
  });
};

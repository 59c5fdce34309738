import { recolouredParts } from '../../../../core/setup/recolour.ts';
import type { Finish, Setup, Subject } from '../../../../core/setup/schema/setup.ts';
import { renamed } from './plain-name.ts';
import { replaceById } from './within.ts';

/** Edits of one subject: pure, each (setup, subject, argument) -> setup. They keep every rule that `parseSetup` checks. */

export const changeSubject = (setup: Setup, subjectId: string, change: (subject: Subject) => Subject): Setup => {
  const subjects = replaceById(setup.subjects, subjectId, change);
  return subjects === setup.subjects ? setup : { ...setup, subjects };
};

export const subjectNamed = (setup: Setup, subjectId: string): Subject | undefined =>
  setup.subjects.find(({ id }) => id === subjectId);

/** Gives it another name; an empty one is not taken. */
export const renameSubject = (setup: Setup, subjectId: string, typed: string): Setup =>
  changeSubject(setup, subjectId, (subject) => renamed(subject, typed));

/** Leaves it out of the picture and of all numbers, or takes it in again. */
export const setSubjectHidden = (setup: Setup, subjectId: string, hidden: boolean): Setup =>
  changeSubject(setup, subjectId, (subject) => (subject.hidden === hidden ? subject : { ...subject, hidden }));

/** Keeps it from being moved by hand, or lets it go. */
export const setSubjectLocked = (setup: Setup, subjectId: string, locked: boolean): Setup =>
  changeSubject(setup, subjectId, (subject) => (subject.locked === locked ? subject : { ...subject, locked }));

/** Gives it another finish; its parts that are tones of the one before are toned from the new one. */
export const setSubjectFinish = (setup: Setup, subjectId: string, finish: Finish): Setup =>
  changeSubject(setup, subjectId, (subject) => ({
    ...subject,
    finish,
    parts: recolouredParts(subject.parts, subject.finish, finish) as Subject['parts'],
  }));

/** Exchanges east and west of the subject about its own axis. A locked one stays as it is. */
export const mirrorSubject = (setup: Setup, subjectId: string): Setup =>
  changeSubject(setup, subjectId, (subject) =>
    subject.locked ? subject : { ...subject, mirrored: !subject.mirrored },
  );

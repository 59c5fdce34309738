import { kitNamed } from '../../../../core/kits/all-kits.ts';
import { initialValues } from '../../../../core/kits/kit.ts';
import type { Setup, Subject } from '../../../../core/setup/schema/setup.ts';
import { subject } from '../../../../core/setup/schema/subject.ts';
import { madeFromKit } from './kit-edits.ts';
import { type NewPartKind, newPart, partWords } from './new-parts.ts';
import { boxOfMeshes, meshesOf } from './own-box.ts';
import { aimPass } from './pass-edits.ts';
import { freshName } from './plain-name.ts';
import { standBeside, standFree } from './stand-free.ts';
import { subjectNamed } from './subject-edits.ts';
import { withinLimits } from './subject-limits.ts';
import { freshId } from './within.ts';

/** A setup with one subject more, and which it is. */
export interface WithSubject {
  readonly setup: Setup;
  readonly subjectId: string;
}

/** An id from a name: "Hut" -> "hut". */
const idFrom = (name: string): string =>
  name
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 40) || 'subject';

const nameAndId = ({ subjects }: Setup, wish: string): Pick<Subject, 'id' | 'name'> => ({
  id: freshId(subjects, idFrom(wish)),
  name: freshName(
    subjects.map(({ name }) => name),
    wish,
  ),
});

const added = (setup: Setup, subject: Subject): WithSubject => ({
  setup: withinLimits({ ...setup, subjects: [...setup.subjects, subject] }),
  subjectId: subject.id,
});

/** The first subject is what the lamps are there for: each is aimed at its middle. */
const withLampsAimed = ({ setup, subjectId }: WithSubject): WithSubject => {
  const [subject] = setup.subjects;
  if (!subject || setup.subjects.length > 1) return { setup, subjectId };
  const [east, north] = subject.position;
  const half = Math.round(50 * boxOfMeshes(meshesOf(subject, setup.scans)).high[1]) / 100;
  const places = setup.schemes.flatMap(({ id: schemeId, frames }) =>
    frames.flatMap(({ id: frameId, passes }) => passes.map(({ id: passId }) => ({ schemeId, frameId, passId }))),
  );
  return { setup: places.reduce((all, place) => aimPass(all, place, [east, north, half]), setup), subjectId };
};

/** A subject put into the setup where the camera looks; its id and name are made unique. Throws `EditRefused` past the limits. */
export const addSubject = (setup: Setup, schemeId: string, made: Subject): WithSubject =>
  withLampsAimed(added(setup, standFree(setup, schemeId, { ...made, ...nameAndId(setup, made.name) })));

/** A new subject of one part, where the camera looks. */
export const addPartSubject = (setup: Setup, schemeId: string, kind: NewPartKind): WithSubject =>
  addSubject(setup, schemeId, subject.parse({ id: kind, name: partWords[kind], parts: [newPart(kind)] }));

/** A new subject from a kit with its first numbers, where the camera looks. */
export const addKitSubject = (setup: Setup, schemeId: string, kitName: string): WithSubject => {
  const kit = kitNamed(kitName);
  const base = { id: kitName, name: kit?.label ?? kitName };
  return addSubject(setup, schemeId, madeFromKit(kitName, kit ? initialValues(kit) : {}, 1, base));
};

/** A copy of a subject beside it, along the camera's right. It is neither locked nor hidden, and in no group. */
export const duplicateSubject = (setup: Setup, schemeId: string, subjectId: string): WithSubject => {
  const original = subjectNamed(setup, subjectId);
  if (!original) return { setup, subjectId };
  const copy = { ...original, ...nameAndId(setup, original.name), locked: false, hidden: false, group: null };
  return added(setup, standBeside(setup, schemeId, copy));
};

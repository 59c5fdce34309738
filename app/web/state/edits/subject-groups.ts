import type { Setup, Subject } from '../../../../core/setup/schema/setup.ts';
import { EditRefused } from './edit-refused.ts';
import { freshName, plainName } from './plain-name.ts';
import { changeSubject, subjectNamed } from './subject-edits.ts';

/** Names of the groups, each once, in the order of the document. */
export const groupNames = ({ subjects }: Setup): string[] => [
  ...new Set(subjects.flatMap(({ group }) => (group === null ? [] : [group]))),
];

/** A group of one is none. */
export const withoutLoneGroups = (subjects: Subject[]): Subject[] => {
  const counts = new Map<string, number>();
  for (const { group } of subjects) if (group !== null) counts.set(group, (counts.get(group) ?? 0) + 1);
  const isLone = ({ group }: Subject) => group !== null && counts.get(group) === 1;
  return subjects.some(isLone)
    ? subjects.map((subject) => (isLone(subject) ? { ...subject, group: null } : subject))
    : subjects;
};

/** Puts a subject with another one: into its group, or both into a new one. */
export const groupWith = (setup: Setup, subjectId: string, otherId: string): Setup => {
  const [subject, other] = [subjectNamed(setup, subjectId), subjectNamed(setup, otherId)];
  if (!subject || !other || subject === other) return setup;
  if (subject.group !== null && subject.group === other.group) return setup;
  const group = other.group ?? subject.group ?? freshName(groupNames(setup), 'Group 1');
  const both = [subjectId, otherId].reduce((s, id) => changeSubject(s, id, (each) => ({ ...each, group })), setup);
  return { ...both, subjects: withoutLoneGroups(both.subjects) };
};

/** Takes a subject out of its group. */
export const ungroup = (setup: Setup, subjectId: string): Setup => {
  const out = changeSubject(setup, subjectId, (each) => (each.group === null ? each : { ...each, group: null }));
  return out === setup ? setup : { ...out, subjects: withoutLoneGroups(out.subjects) };
};

/** Gives a group another name; an empty one is not taken. Throws `EditRefused` for one that another group has. */
export const renameGroup = (setup: Setup, group: string, typed: string): Setup => {
  const name = plainName(typed);
  if (name === '' || name === group) return setup;
  if (groupNames(setup).includes(name)) throw new EditRefused(`Another group is called ${name}. Choose another name.`);
  const subjects = setup.subjects.map((each) => (each.group === group ? { ...each, group: name } : each));
  return { ...setup, subjects };
};

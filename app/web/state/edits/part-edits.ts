import type { Part, Position, Setup, Subject } from '../../../../core/setup/schema/setup.ts';
import { EditRefused } from './edit-refused.ts';
import { type NewPartKind, newPart } from './new-parts.ts';
import { boxOfMeshes, meshOfOwnPart } from './own-box.ts';
import { partProblem } from './part-problem.ts';
import { plainName } from './plain-name.ts';
import { pruneScans } from './prune-scans.ts';
import { changeSubject, subjectNamed } from './subject-edits.ts';
import { withinLimits } from './subject-limits.ts';

/**
 * Edits of a subject's parts by hand. From the first one on, the parts are the user's: the kit that they were made from is
 * forgotten. Those that break a rule or a limit throw `EditRefused`.
 */

/** Free space between a new part and the ones that are there, metres. */
const gapMetres = 0.1;

const changeParts = (setup: Setup, subjectId: string, change: (subject: Subject) => Part[]): Setup => {
  const changed = changeSubject(setup, subjectId, (subject) => {
    if (subject.locked) throw new EditRefused(`${subject.name} is locked and stays as it is. Unlock it first.`);
    const parts = change(subject);
    return parts === subject.parts ? subject : { ...subject, parts, kit: null };
  });
  return changed === setup ? setup : withinLimits(pruneScans(changed));
};

/** Puts another part in the place of one. */
export const changePart = (setup: Setup, subjectId: string, index: number, changed: Part): Setup => {
  const name = plainName(changed.name);
  const part = name === changed.name ? changed : { ...changed, name };
  const problem = partProblem(part);
  if (problem) throw new EditRefused(`That part can’t be so: ${problem.text.toLowerCase()}.`);
  return changeParts(setup, subjectId, ({ parts }) =>
    parts[index] === undefined || parts[index] === part ? parts : parts.with(index, part),
  );
};

const east = (position: Position, byMetres: number): Position => {
  const to = Math.round((position[0] + byMetres) * 1000) / 1000 + 0;
  return [Math.min(Math.max(to, -5000), 5000), position[1], position[2]];
};

/** Adds a part of a kind, east of the ones that are there. */
export const addPart = (setup: Setup, subjectId: string, kind: NewPartKind): Setup =>
  changeParts(setup, subjectId, ({ parts }) => {
    const part = newPart(kind);
    const own = boxOfMeshes([meshOfOwnPart(part, setup.scans)]);
    const there = boxOfMeshes(parts.map((each) => meshOfOwnPart(each, setup.scans)));
    const position = east(part.position, there.high[0] + gapMetres - own.low[0]);
    return [...parts, { ...part, position }];
  });

/** A copy of a part, beside it to the east. */
export const duplicatePart = (setup: Setup, subjectId: string, index: number): Setup =>
  changeParts(setup, subjectId, ({ parts }) => {
    const part = parts[index];
    if (!part) return parts;
    const { low, high } = boxOfMeshes([meshOfOwnPart(part, setup.scans)]);
    const copy = { ...part, position: east(part.position, high[0] - low[0] + gapMetres) };
    return parts.toSpliced(index + 1, 0, copy);
  });

/** Takes a part out; the last one stays. */
export const removePart = (setup: Setup, subjectId: string, index: number): Setup => {
  const subject = subjectNamed(setup, subjectId);
  if (subject?.parts.length === 1)
    throw new EditRefused(`${subject.name} has no other part. To take it away, delete the subject.`);
  return changeParts(setup, subjectId, ({ parts }) => (parts[index] ? parts.toSpliced(index, 1) : parts));
};

/** Puts a part at another place in the list, counted from nought. */
export const reorderPart = (setup: Setup, subjectId: string, index: number, to: number): Setup =>
  changeParts(setup, subjectId, ({ parts }) => {
    const part = parts[index];
    const at = Math.min(Math.max(to, 0), parts.length - 1);
    return !part || at === index ? parts : parts.toSpliced(index, 1).toSpliced(at, 0, part);
  });

/** Has every part take the subject's finish. */
export const makeFinishAlike = (setup: Setup, subjectId: string): Setup =>
  changeParts(setup, subjectId, ({ parts }) =>
    parts.some(({ finish }) => finish !== null)
      ? parts.map((part) => (part.finish === null ? part : { ...part, finish: null }))
      : parts,
  );

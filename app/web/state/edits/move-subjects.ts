import type { Position, Setup, Subject } from '../../../../core/setup/schema/setup.ts';
import { radiansFromDegrees } from '../../../../core/units/angle.ts';
import { changeSubject, subjectNamed } from './subject-edits.ts';
import { withinWorld } from './within.ts';

/** To the micrometre, so that a group turned there and back is where it was; and no minus nought. */
const tidy = (metres: number) => Math.round(metres * 1e6) / 1e6 + 0;

/**
 * What moves when a subject is moved: itself, and those of its group that are not locked. Nothing when it is locked
 * itself.
 */
export const movedTogether = (setup: Setup, subjectId: string): readonly Subject[] => {
  const subject = subjectNamed(setup, subjectId);
  if (!subject || subject.locked) return [];
  if (subject.group === null) return [subject];
  return setup.subjects.filter(({ group, locked }) => group === subject.group && !locked);
};

const change = (setup: Setup, moved: readonly Subject[], how: (subject: Subject) => Subject): Setup =>
  moved.length === 0
    ? setup
    : { ...setup, subjects: setup.subjects.map((subject) => (moved.includes(subject) ? how(subject) : subject)) };

/** How far all of them can go along one axis before the first leaves the world. */
const heldStep = (moved: readonly Subject[], axis: 0 | 1 | 2, step: number): number =>
  moved.reduce((most, { position }) => {
    const to = [...position] as Position;
    to[axis] += most;
    return withinWorld(to)[axis] - position[axis];
  }, step);

/** Moves a subject to a place, and its group by as much. Locked ones stay. */
export const moveSubject = (setup: Setup, subjectId: string, to: Position): Setup => {
  const subject = subjectNamed(setup, subjectId);
  const moved = movedTogether(setup, subjectId);
  if (!subject || moved.length === 0) return setup;
  const steps = ([0, 1, 2] as const).map((axis) => heldStep(moved, axis, to[axis] - subject.position[axis]));
  if (steps.every((step) => step === 0)) return setup;
  const shift = (position: Position) => withinWorld(position.map((v, i) => tidy(v + (steps[i] ?? 0))) as Position);
  return change(setup, moved, (each) => ({ ...each, position: shift(each.position) }));
};

/** The middle of some subjects' places, from above: what a group turns about. */
const middleOf = (moved: readonly Subject[]): readonly [east: number, north: number] => {
  const mean = (axis: 0 | 1) => moved.reduce((sum, { position }) => sum + position[axis], 0) / moved.length;
  return [mean(0), mean(1)];
};

/** Within one turn either way, which is what the document takes. */
const withinTurn = (degrees: number) => (Math.abs(degrees) <= 360 ? degrees : degrees % 360);

/** Turns a subject to an angle, clockwise seen from above; a group turns by as much about its middle. Locked ones stay. */
export const turnSubject = (setup: Setup, subjectId: string, turnDegrees: number): Setup => {
  const subject = subjectNamed(setup, subjectId);
  const moved = movedTogether(setup, subjectId);
  if (!subject || moved.length === 0) return setup;
  const byDegrees = withinTurn(turnDegrees) - subject.turnDegrees;
  if (byDegrees === 0) return setup;
  if (moved.length === 1) return change(setup, moved, (each) => ({ ...each, turnDegrees: withinTurn(turnDegrees) }));
  const [east, north] = middleOf(moved);
  const [c, s] = [Math.cos(radiansFromDegrees(byDegrees)), Math.sin(radiansFromDegrees(byDegrees))];
  return change(setup, moved, (each) => {
    const [e, n, up] = [each.position[0] - east, each.position[1] - north, each.position[2]];
    const position = withinWorld([tidy(east + e * c + n * s), tidy(north - e * s + n * c), up]);
    return { ...each, position, turnDegrees: tidy(withinTurn(each.turnDegrees + byDegrees)) };
  });
};

/** Leans a subject: `tiltDegrees` toward its own north, `rollDegrees` toward its own east. A locked one stays. */
export const leanSubject = (
  setup: Setup,
  subjectId: string,
  lean: Partial<Pick<Subject, 'tiltDegrees' | 'rollDegrees'>>,
): Setup => changeSubject(setup, subjectId, (subject) => (subject.locked ? subject : { ...subject, ...lean }));

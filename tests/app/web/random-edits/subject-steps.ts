import * as adding from '../../../../app/web/state/edits/add-subjects.ts';
import * as kits from '../../../../app/web/state/edits/kit-edits.ts';
import * as moving from '../../../../app/web/state/edits/move-subjects.ts';
import { newPart, newPartKinds } from '../../../../app/web/state/edits/new-parts.ts';
import * as parts from '../../../../app/web/state/edits/part-edits.ts';
import { removeSubject } from '../../../../app/web/state/edits/remove-subject.ts';
import { setDown } from '../../../../app/web/state/edits/set-down.ts';
import * as subjects from '../../../../app/web/state/edits/subject-edits.ts';
import * as groups from '../../../../app/web/state/edits/subject-groups.ts';
import { allKits, kitNamed } from '../../../../core/kits/all-kits.ts';
import type { Finish, Setup, Subject } from '../../../../core/setup/schema/setup.ts';
import type { Dice } from './dice.ts';
import { edits, type Step, type Steps } from './step.ts';

/** Kits whose parts are so many that each check of the setup would take long. */
const large = ['drystone-wall', 'roofless-chapel', 'jetty', 'boat'];
const smallKits = allKits.filter(({ name }) => !large.includes(name));

/** A finish as its fields make it: no more light comes back and goes through than falls in. */
export const randomFinish = (dice: Dice): Finish => {
  const reflectance = dice.between(0, 1);
  return {
    reflectance: dice.flag() ? reflectance : [reflectance, dice.share() * reflectance, dice.share() * reflectance],
    transmittance: dice.between(0, 1 - reflectance),
    gloss: dice.between(0, 1),
    refractiveIndex: dice.between(1, 4),
    metal: dice.flag(),
  };
};

const editsSubject = (change: (setup: Setup, id: string, dice: Dice, subject: Subject) => Setup): Step =>
  edits((setup, _, dice) => {
    const subject = dice.maybe(setup.subjects);
    return subject ? change(setup, subject.id, dice, subject) : setup;
  });

/** A subject that is made is selected, as the page does. */
const makes =
  (make: (setup: Setup, schemeId: string, dice: Dice) => adding.WithSubject): Step =>
  ({ app, scheme }, dice) => {
    let subjectId: string | null = null;
    app.getState().edit((setup) => {
      const made = make(setup, scheme.id, dice);
      subjectId = made.subjectId;
      return made.setup;
    });
    if (subjectId !== null) app.getState().select({ kind: 'subject', subjectId });
  };

const somePart = ({ parts: own }: Subject, dice: Dice) => dice.whole(0, own.length - 1);

/** What is done with subjects and their parts. */
export const subjectSteps: Steps = {
  addPartSubject: makes((s, schemeId, dice) => adding.addPartSubject(s, schemeId, dice.one(newPartKinds))),
  addKitSubject: makes((s, schemeId, dice) => adding.addKitSubject(s, schemeId, dice.one(smallKits).name)),
  duplicateSubject: ({ app, setup, scheme }, dice) => {
    const subject = dice.maybe(setup.subjects);
    if (subject) app.getState().edit((s) => adding.duplicateSubject(s, scheme.id, subject.id).setup);
  },
  retuneKit: editsSubject((s, id, dice, { kit }) => {
    const field = kit && dice.maybe(kitNamed(kit.name)?.fields ?? []);
    return field ? kits.retuneKit(s, id, { values: { [field.key]: dice.between(field.min, field.max) } }) : s;
  }),
  nextOfKit: editsSubject((s, id) => kits.nextOfKit(s, id)),
  moveSubject: editsSubject((s, id, dice) => moving.moveSubject(s, id, dice.place())),
  turnSubject: editsSubject((s, id, dice) => moving.turnSubject(s, id, dice.between(-360, 360))),
  leanSubject: editsSubject((s, id, dice) =>
    moving.leanSubject(s, id, { tiltDegrees: dice.between(-180, 180), rollDegrees: dice.between(-180, 180) }),
  ),
  removeSubject: editsSubject((s, id) => removeSubject(s, id)),
  setDown: editsSubject((s, id) => setDown(s, id)),
  renameSubject: editsSubject((s, id, dice) => subjects.renameSubject(s, id, dice.text())),
  hideSubject: editsSubject((s, id, dice) => subjects.setSubjectHidden(s, id, dice.flag())),
  lockSubject: editsSubject((s, id, dice) => subjects.setSubjectLocked(s, id, dice.share() < 0.3)),
  mirrorSubject: editsSubject((s, id) => subjects.mirrorSubject(s, id)),
  subjectFinish: editsSubject((s, id, dice) => subjects.setSubjectFinish(s, id, randomFinish(dice))),
  groupWith: editsSubject((s, id, dice) => groups.groupWith(s, id, dice.one(s.subjects).id)),
  ungroup: editsSubject((s, id) => groups.ungroup(s, id)),
  renameGroup: edits((s, _, dice) => groups.renameGroup(s, dice.maybe(groups.groupNames(s)) ?? '', dice.text())),
  addPart: editsSubject((s, id, dice) => parts.addPart(s, id, dice.one(newPartKinds))),
  changePart: editsSubject((s, id, dice, subject) => {
    const index = somePart(subject, dice);
    const at = dice.place().map((v) => v / 10) as [number, number, number];
    return dice.flag()
      ? parts.changePart(s, id, index, { ...newPart(dice.one(newPartKinds)), position: at })
      : parts.changePart(s, id, index, {
          ...(subject.parts[index] as Subject['parts'][number]),
          finish: randomFinish(dice),
        });
  }),
  duplicatePart: editsSubject((s, id, dice, subject) => parts.duplicatePart(s, id, somePart(subject, dice))),
  removePart: editsSubject((s, id, dice, subject) => parts.removePart(s, id, somePart(subject, dice))),
  reorderPart: editsSubject((s, id, dice, subject) =>
    parts.reorderPart(s, id, somePart(subject, dice), dice.whole(-1, 9)),
  ),
  finishAlike: editsSubject((s, id) => parts.makeFinishAlike(s, id)),
};

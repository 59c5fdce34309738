import { describe, expect, it } from 'vitest';
import { addKitSubject } from '../../../app/web/state/edits/add-subjects.ts';
import { EditRefused } from '../../../app/web/state/edits/edit-refused.ts';
import { retuneKit } from '../../../app/web/state/edits/kit-edits.ts';
import { changePart } from '../../../app/web/state/edits/part-edits.ts';
import { removeSubject } from '../../../app/web/state/edits/remove-subject.ts';
import { setSubjectFinish, setSubjectLocked } from '../../../app/web/state/edits/subject-edits.ts';
import { finishNamed, rgbOf } from '../../../core/setup/finish-presets.ts';
import type { Part, Setup, Subject } from '../../../core/setup/schema/setup.ts';
import { blockSubject, placeWith } from './subject-setups.ts';

const empty = placeWith(blockSubject('rock', [1, 1, 1], { position: [20, 8, 0] }));
const added = (kit: string): { readonly setup: Setup; readonly id: string } => {
  const { setup, subjectId } = addKitSubject(empty, 'scheme', kit);
  return { setup, id: subjectId };
};
const subjectIn = (setup: Setup, id: string) => setup.subjects.find((subject) => subject.id === id) as Subject;
const green = ({ finish }: Part, subject: Subject) => rgbOf(finish ?? subject.finish)[1];
const spread = (subject: Subject) => {
  // the dark filling between the faces is no tone of the stones
  const shares = subject.parts.filter(({ name }) => name !== 'Filling').map((part) => green(part, subject));
  const [least, most] = [Math.min(...shares), Math.max(...shares)];
  return { least, most, ratio: most / least };
};

describe('the finish of what a kit made', () => {
  const wall = added('drystone-wall');
  const whitewash = finishNamed('whitewash');
  const before = spread(subjectIn(wall.setup, wall.id));
  const painted = setSubjectFinish(wall.setup, wall.id, whitewash);

  it('chosen anew colours all its stones, lighter and darker as they were (ratio to 2 %)', () => {
    const after = spread(subjectIn(painted, wall.id));
    const share = rgbOf(whitewash)[1];
    expect(before.most).toBeLessThan(0.5);
    expect(after.least).toBeGreaterThan(0.6 * share);
    expect(after.most).toBeGreaterThan(0.9 * share);
    // none returns more than falls on it, so that the lightest may be cut off
    expect(after.most).toBeLessThanOrEqual(1);
    expect(after.ratio).toBeLessThanOrEqual(1.02 * before.ratio);
  });

  it('stays when its numbers are typed anew', () => {
    const wider = subjectIn(retuneKit(painted, wall.id, { values: { heightMetres: 1.1 } }), wall.id);
    expect(wider.finish).toEqual(whitewash);
    expect(spread(wider).least).toBeGreaterThan(0.6 * rgbOf(whitewash)[1]);
  });

  it('leaves what is no tone of it: a hut’s roof and chimney pot', () => {
    const hut = added('hut');
    const was = subjectIn(hut.setup, hut.id);
    const now = subjectIn(setSubjectFinish(hut.setup, hut.id, finishNamed('granite')), hut.id);
    for (const name of ['Roof', 'Chimney pot']) {
      const finishOf = ({ parts }: Subject) => parts.find((part) => part.name === name)?.finish;
      expect(finishOf(was)).not.toBeNull();
      expect(finishOf(now)).toEqual(finishOf(was));
    }
  });

  it('is the kit’s own to choose until it was chosen by hand: light clothes', () => {
    const person = added('person');
    const lit = retuneKit(person.setup, person.id, { values: { clothes: 1 } });
    expect(subjectIn(person.setup, person.id).finish).toEqual(finishNamed('dark-clothes'));
    expect(subjectIn(lit, person.id).finish).toEqual(finishNamed('light-clothes'));
    const red = setSubjectFinish(person.setup, person.id, { ...finishNamed('dark-clothes'), reflectance: [0.3, 0, 0] });
    expect(subjectIn(retuneKit(red, person.id, { values: { clothes: 1 } }), person.id).finish.reflectance).toEqual([
      0.3, 0, 0,
    ]);
  });
});

describe('a locked subject', () => {
  const locked = setSubjectLocked(empty, 'rock', true);
  const part = subjectIn(locked, 'rock').parts[0] as Part;

  it('is neither deleted nor changed: both are refused by its name', () => {
    expect(() => removeSubject(locked, 'rock')).toThrow(EditRefused);
    expect(() => changePart(locked, 'rock', 0, { ...part, name: 'Other' })).toThrow(/rock is locked/i);
    expect(removeSubject(empty, 'rock').subjects).toEqual([]);
  });
});

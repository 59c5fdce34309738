import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import { addKitSubject, addPartSubject, duplicateSubject } from '../../../app/web/state/edits/add-subjects.ts';
import { nextOfKit, retuneKit } from '../../../app/web/state/edits/kit-edits.ts';
import { leanSubject, moveSubject, turnSubject } from '../../../app/web/state/edits/move-subjects.ts';
import { newPart, newPartKinds } from '../../../app/web/state/edits/new-parts.ts';
import {
  addPart,
  changePart,
  duplicatePart,
  removePart,
  reorderPart,
} from '../../../app/web/state/edits/part-edits.ts';
import { removeSubject } from '../../../app/web/state/edits/remove-subject.ts';
import { setDown } from '../../../app/web/state/edits/set-down.ts';
import {
  mirrorSubject,
  renameSubject,
  setSubjectFinish,
  setSubjectHidden,
  setSubjectLocked,
} from '../../../app/web/state/edits/subject-edits.ts';
import { groupNames, groupWith, renameGroup, ungroup } from '../../../app/web/state/edits/subject-groups.ts';
import { createAppStore } from '../../../app/web/state/store.ts';
import { formatSetup } from '../../../core/setup/format-setup.ts';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import type { Part, Setup } from '../../../core/setup/schema/setup.ts';
import { blockSubject, placeWith } from './subject-setups.ts';

vi.mock('../../../core/kits/all-kits.ts', async () => {
  const { postsKit: kit } = await import('./subject-setups.ts');
  return { allKits: [kit], kitNamed: (name: string) => (name === kit.name ? kit : null) };
});

type Edit = (setup: Setup) => Setup;

const start = placeWith(
  blockSubject('rock', [1, 1, 1], { position: [0, 8, 0], group: 'G' }),
  blockSubject('slab', [2, 1, 0.3], { position: [3, 9, 0.2], tiltDegrees: 12, group: 'G', locked: true }),
);

/** The how-manieth subject or part, whatever there is. */
const index = fc.nat(6);
const idAt = (setup: Setup, n: number) => setup.subjects[n % Math.max(setup.subjects.length, 1)]?.id ?? 'nobody';
const coordinate = fc.double({ min: -9000, max: 9000, noNaN: true });
const degrees = fc.double({ min: -180, max: 180, noNaN: true });
const text = fc.oneof(fc.string({ unit: 'binary', maxLength: 100 }), fc.constantFrom('Hut', 'Rock 2', '', ' '));
/** An edit of the n-th subject. */
const of = <T>(argument: fc.Arbitrary<T>, edit: (setup: Setup, id: string, value: T) => Setup): fc.Arbitrary<Edit> =>
  fc.tuple(index, argument).map(
    ([n, value]): Edit =>
      (s) =>
        edit(s, idAt(s, n), value),
  );
const kind = fc.constantFrom(...newPartKinds);

const edit: fc.Arbitrary<Edit> = fc.oneof(
  kind.map(
    (k): Edit =>
      (s) =>
        addPartSubject(s, 'scheme', k).setup,
  ),
  fc.constant<Edit>((s) => addKitSubject(s, 'scheme', 'posts').setup),
  of(fc.double({ min: -5, max: 40, noNaN: true }), (s, id, count) => retuneKit(s, id, { values: { count } })),
  of(fc.constant(null), (s, id) => nextOfKit(s, id)),
  of(fc.constant(null), (s, id) => duplicateSubject(s, 'scheme', id).setup),
  of(fc.constant(null), (s, id) => removeSubject(s, id)),
  of(fc.constant(null), (s, id) => mirrorSubject(s, id)),
  of(fc.constant(null), (s, id) => setDown(s, id)),
  of(fc.boolean(), (s, id, v) => setSubjectHidden(s, id, v)),
  of(fc.boolean(), (s, id, v) => setSubjectLocked(s, id, v)),
  of(text, (s, id, v) => renameSubject(s, id, v)),
  of(fc.tuple(coordinate, coordinate, coordinate), (s, id, v) => moveSubject(s, id, v)),
  of(fc.double({ min: -900, max: 900, noNaN: true }), (s, id, v) => turnSubject(s, id, v)),
  of(degrees, (s, id, tiltDegrees) => leanSubject(s, id, { tiltDegrees })),
  of(fc.double({ min: 0, max: 1, noNaN: true }), (s, id, reflectance) =>
    setSubjectFinish(s, id, { reflectance, transmittance: 0, gloss: 0, refractiveIndex: 1.5, metal: false }),
  ),
  of(index, (s, id, n) => groupWith(s, id, idAt(s, n))),
  of(fc.constant(null), (s, id) => ungroup(s, id)),
  text.map(
    (name): Edit =>
      (s) =>
        renameGroup(s, groupNames(s)[0] ?? 'none', name),
  ),
  of(kind, (s, id, k) => addPart(s, id, k)),
  of(index, (s, id, n) => duplicatePart(s, id, n)),
  of(index, (s, id, n) => removePart(s, id, n)),
  of(fc.tuple(index, fc.integer({ min: -3, max: 9 })), (s, id, [n, to]) => reorderPart(s, id, n, to)),
  of(fc.tuple(index, kind, fc.double({ min: -1, max: 3000, noNaN: true })), (s, id, [n, k, heightMetres]) =>
    changePart(s, id, n, { ...newPart(k), heightMetres } as Part),
  ),
);

describe('any run of edits of subjects', () => {
  it('leaves a setup that can be saved and read back unchanged, and undoes to the very start (150 runs, seed 23)', () => {
    let refused = 0;
    let made = 0;
    fc.assert(
      fc.property(fc.array(edit, { minLength: 1, maxLength: 14 }), (run) => {
        const store = createAppStore(start);
        for (const each of run) {
          store.getState().edit(each);
          if (store.getState().notice) refused++;
          store.getState().tell(null);
        }
        const { present, past } = store.getState().history;
        made += past.length;
        expect(parseSetup(formatSetup(present))).toEqual(present);
        while (store.getState().history.past.length > 0) store.getState().undo();
        expect(store.getState().history.present).toBe(start);
        while (store.getState().history.future.length > 0) store.getState().redo();
        expect(store.getState().history.present).toBe(present);
      }),
      { numRuns: 150, seed: 23 },
    );
    // the runs must have done something, and have met what is refused
    expect(made).toBeGreaterThan(300);
    expect(refused).toBeGreaterThan(10);
  });
});

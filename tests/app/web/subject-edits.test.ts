import { describe, expect, it, vi } from 'vitest';
import { addKitSubject } from '../../../app/web/state/edits/add-subjects.ts';
import { EditRefused } from '../../../app/web/state/edits/edit-refused.ts';
import { nextOfKit, retuneKit } from '../../../app/web/state/edits/kit-edits.ts';
import { newPart } from '../../../app/web/state/edits/new-parts.ts';
import {
  addPart,
  changePart,
  duplicatePart,
  makeFinishAlike,
  removePart,
  reorderPart,
} from '../../../app/web/state/edits/part-edits.ts';
import { removeSubject } from '../../../app/web/state/edits/remove-subject.ts';
import {
  mirrorSubject,
  renameSubject,
  setSubjectFinish,
  setSubjectHidden,
  setSubjectLocked,
} from '../../../app/web/state/edits/subject-edits.ts';
import { formatSetup } from '../../../core/setup/format-setup.ts';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import type { Part, PartOf, Setup, Subject } from '../../../core/setup/schema/setup.ts';
import { blockSubject, changed, placeWith, stones } from './subject-setups.ts';

vi.mock('../../../core/kits/all-kits.ts', async () => {
  const { postsKit: kit } = await import('./subject-setups.ts');
  return { allKits: [kit], kitNamed: (name: string) => (name === kit.name ? kit : null) };
});

const one = placeWith(blockSubject('rock', [1, 1, 1], { position: [0, 8, 0], turnDegrees: 10 }));
const subjectIn = (setup: Setup, id: string): Subject => {
  const found = setup.subjects.find((subject) => subject.id === id);
  if (!found) throw new Error(`no ${id}`);
  return found;
};
const isValid = (setup: Setup) => expect(parseSetup(formatSetup(setup))).toEqual(setup);

describe('edits of one subject', () => {
  it('change what they say and nothing else', () => {
    const finish = { ...subjectIn(one, 'rock').finish, reflectance: 0.6 };
    const edits: readonly (readonly [Setup, Partial<Subject>])[] = [
      [renameSubject(one, 'rock', ' Big  rock\u0007 '), { name: 'Big  rock' }],
      [setSubjectHidden(one, 'rock', true), { hidden: true }],
      [setSubjectLocked(one, 'rock', true), { locked: true }],
      [mirrorSubject(one, 'rock'), { mirrored: true }],
      [setSubjectFinish(one, 'rock', finish), { finish }],
    ];
    for (const [setup, part] of edits) {
      expect(setup).toEqual({ ...one, subjects: [{ ...subjectIn(one, 'rock'), ...part }] });
      isValid(setup);
    }
  });

  it('an empty name, a name of control characters, and what is so already leave the same setup', () => {
    expect(renameSubject(one, 'rock', '   ')).toBe(one);
    expect(renameSubject(one, 'rock', '\u0000\u2028')).toBe(one);
    expect(renameSubject(one, 'rock', 'The rock')).toBe(one);
    expect(setSubjectHidden(one, 'rock', false)).toBe(one);
    expect(setSubjectLocked(one, 'nobody', true)).toBe(one);
  });

  it('mirrored twice is as before; a locked one is not mirrored', () => {
    expect(mirrorSubject(mirrorSubject(one, 'rock'), 'rock')).toEqual(one);
    const locked = setSubjectLocked(one, 'rock', true);
    expect(mirrorSubject(locked, 'rock')).toBe(locked);
  });
});

describe('removeSubject', () => {
  const blend = {
    mode: 'lighten',
    frames: [
      { frameId: 'dark', where: 'subject', subjectId: 'stone-2' },
      { frameId: 'painted', where: 'everything', subjectId: 'stone-2' },
    ],
  };
  const [scheme] = stones.schemes;
  const pass = scheme?.frames.flatMap(({ passes }) => passes)[0];
  const step = { title: 'Where?', text: 'Point.', schemeIds: [scheme?.id] };
  const bound = changed(stones, {
    schemes: [
      {
        ...scheme,
        blend: {
          ...blend,
          frames: blend.frames.map((part, i) => ({ ...part, frameId: scheme?.frames[i]?.id })),
        },
      },
      ...stones.schemes.slice(1),
    ],
    lesson: { steps: [{ ...step, predict: { passId: pass?.id, subjectId: 'stone-2' } }, step] },
  });

  it('takes along what points to it: the frame that counted on it alone, the question of a lesson', () => {
    const gone = removeSubject(bound, 'stone-2');
    isValid(gone);
    expect(gone.subjects.map(({ id }) => id)).toEqual(
      stones.subjects.map(({ id }) => id).filter((id) => id !== 'stone-2'),
    );
    expect(gone.schemes[0]?.blend.frames).toMatchObject([{ where: 'everything', subjectId: null }]);
    expect(gone.lesson?.steps.map(({ predict }) => predict)).toEqual([null, null]);
    expect(gone.schemes[1]).toBe(bound.schemes[1]);
  });

  it('leaves a blend the frames that it takes, and no others, where all of them counted on it alone', () => {
    const part = { frameId: scheme?.frames[1]?.id, weight: 2, where: 'subject', subjectId: 'stone-2' };
    const frames = [part, { ...part, weight: 1 }];
    const alone = changed(stones, {
      schemes: [{ ...scheme, blend: { mode: 'add', frames } }, ...stones.schemes.slice(1)],
    });
    const gone = removeSubject(alone, 'stone-2');
    isValid(gone);
    expect(gone.schemes[0]?.blend.frames).toMatchObject([{ ...part, where: 'everything', subjectId: null }]);
  });

  it('of another subject leaves blends and lesson shared', () => {
    const gone = removeSubject(bound, 'stone-1');
    expect(gone.schemes).toBe(bound.schemes);
    expect(gone.lesson).toBe(bound.lesson);
    expect(removeSubject(bound, 'nobody')).toBe(bound);
  });

  it('takes scans along that nothing else shows', () => {
    const scan = {
      id: 'rock-scan',
      name: 'Rock scan',
      fileName: 'rock.glb',
      triangleCount: 1,
      vertexCount: 3,
      sizeMetres: [1, 1, 1],
      hasColour: false,
      data: 'AAAA',
    };
    const shows = (id: string) => ({ id, name: id, parts: [{ kind: 'scan', scanId: 'rock-scan' }] });
    const both = changed(one, { scans: [scan], subjects: [shows('a'), shows('b')] });
    const left = removeSubject(both, 'a');
    expect(left.scans).toBe(both.scans);
    expect(removeSubject(left, 'b').scans).toEqual([]);
    isValid(removeSubject(left, 'b'));
  });
});

describe('edits of a kit’s subject', () => {
  const { setup, subjectId } = addKitSubject(one, 'scheme', 'posts');
  const posts = subjectIn(setup, subjectId);

  it('is made with the first numbers of the kit, named after it, and remembers them', () => {
    expect(posts).toMatchObject({
      id: 'posts',
      name: 'Posts',
      kit: { name: 'posts', values: { count: 3, height: 1 } },
    });
    expect(posts.parts).toHaveLength(3);
    isValid(setup);
  });

  it('other numbers make the parts anew; name, place, turn, finish, group, lock and hiding stay', () => {
    const own = {
      name: 'Mine',
      position: [3, 4, 1],
      turnDegrees: 77,
      tiltDegrees: 3,
      mirrored: true,
      hidden: true,
      locked: true,
      finish: { reflectance: 0.9 },
    };
    const mine = changed(setup, { subjects: [setup.subjects[0], { ...posts, ...own }] });
    const before = subjectIn(mine, 'posts');
    const after = subjectIn(retuneKit(mine, 'posts', { values: { count: 5 } }), 'posts');
    expect(after.parts).toHaveLength(5);
    expect(after.kit).toEqual({ name: 'posts', values: { count: 5, height: 1 }, seed: 1 });
    expect({ ...after, kit: null, parts: [] }).toEqual({ ...before, kit: null, parts: [] });
  });

  it('the same numbers and seed give the same parts, another seed others', () => {
    expect(subjectIn(retuneKit(setup, 'posts', {}), 'posts')).toEqual(posts);
    const next = subjectIn(nextOfKit(setup, 'posts'), 'posts');
    expect(next.kit?.seed).toBe(2);
    expect(next.parts).not.toEqual(posts.parts);
  });

  it('more parts than a subject may have are refused, and nothing is lost', () => {
    expect(() => retuneKit(setup, 'posts', { values: { count: 2500 } })).toThrow(EditRefused);
    expect(() => retuneKit(setup, 'posts', { values: { count: 2500 } })).toThrow(/posts.*Nothing was changed/);
  });

  it('a part changed by hand, added or taken out makes the parts the user’s own', () => {
    const [first] = posts.parts as [PartOf<'cylinder'>];
    const edits: readonly Setup[] = [
      changePart(setup, 'posts', 0, { ...first, heightMetres: 2 }),
      addPart(setup, 'posts', 'sphere'),
      duplicatePart(setup, 'posts', 0),
      removePart(setup, 'posts', 0),
      reorderPart(setup, 'posts', 0, 2),
    ];
    for (const edited of edits) {
      expect(subjectIn(edited, 'posts').kit).toBeNull();
      expect(nextOfKit(edited, 'posts')).toBe(edited);
      isValid(edited);
    }
    expect(changePart(setup, 'posts', 0, first)).toBe(setup);
    expect(reorderPart(setup, 'posts', 1, 1)).toBe(setup);
  });
});

describe('edits of parts', () => {
  const partsIn = (setup: Setup): Part[] => subjectIn(setup, 'rock').parts;

  it('a new one stands east of what is there, a tenth of a metre off (block of 1 m: ball of radius 0.5 m at 1.1 m)', () => {
    const [, ball] = partsIn(addPart(one, 'rock', 'sphere'));
    expect(ball?.position[0]).toBeCloseTo(0.5 + 0.1 + 0.5, 3);
  });

  it('a copy stands beside its original, after it in the list', () => {
    const two = addPart(one, 'rock', 'cone');
    const [block, copy, cone] = partsIn(duplicatePart(two, 'rock', 0));
    expect(copy).toEqual({ ...block, position: [1.1, 0, 0] });
    expect(cone?.kind).toBe('cone');
  });

  it('reordering keeps all parts; places beyond the ends are the ends', () => {
    const three = addPart(addPart(one, 'rock', 'cone'), 'rock', 'sphere');
    const kinds = (setup: Setup) => partsIn(setup).map(({ kind }) => kind);
    expect(kinds(reorderPart(three, 'rock', 0, 9))).toEqual(['cone', 'sphere', 'box']);
    expect(kinds(reorderPart(three, 'rock', 2, -4))).toEqual(['sphere', 'box', 'cone']);
  });

  it('all parts can be made to take the subject’s finish', () => {
    const { finish } = subjectIn(one, 'rock');
    const [block] = partsIn(one) as [Part];
    const mixed = changePart(addPart(one, 'rock', 'cone'), 'rock', 0, { ...block, finish });
    expect(partsIn(makeFinishAlike(mixed, 'rock')).map((part) => part.finish)).toEqual([null, null]);
    expect(makeFinishAlike(one, 'rock')).toBe(one);
  });

  it('the last part stays', () => {
    expect(() => removePart(one, 'rock', 0)).toThrow(/The rock has no other part.*delete the subject/);
  });

  it('a part against the rules is refused with the reason', () => {
    const capsule = { ...newPart('capsule'), radiusMetres: 2 } as Part;
    expect(() => changePart(one, 'rock', 0, capsule)).toThrow(/must be at least twice the radius/);
  });
});

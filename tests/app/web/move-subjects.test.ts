import { describe, expect, it } from 'vitest';
import { EditRefused } from '../../../app/web/state/edits/edit-refused.ts';
import { leanSubject, movedTogether, moveSubject, turnSubject } from '../../../app/web/state/edits/move-subjects.ts';
import { setDown } from '../../../app/web/state/edits/set-down.ts';
import { setSubjectLocked } from '../../../app/web/state/edits/subject-edits.ts';
import { groupNames, groupWith, renameGroup, ungroup } from '../../../app/web/state/edits/subject-groups.ts';
import type { Position, Setup } from '../../../core/setup/schema/setup.ts';
import { subjectOf } from '../../core/support/scenes.ts';
import { blockSubject, changed, placeWith } from './subject-setups.ts';

const at = (setup: Setup, id: string): Position => {
  const found = setup.subjects.find((subject) => subject.id === id);
  if (!found) throw new Error(`no ${id}`);
  return found.position;
};
const turnOf = (setup: Setup, id: string) => setup.subjects.find((subject) => subject.id === id)?.turnDegrees;

const three = placeWith(
  blockSubject('a', [1, 1, 1], { position: [0, 8, 0] }),
  blockSubject('b', [1, 1, 1], { position: [4, 8, 0], turnDegrees: 350 }),
  blockSubject('c', [1, 1, 1], { position: [0, 12, 0] }),
);
const grouped = groupWith(three, 'a', 'b');

describe('groups', () => {
  it('two make a group, a third one joins it, a group of one is none', () => {
    expect(groupNames(three)).toEqual([]);
    expect(grouped.subjects.map(({ group }) => group)).toEqual(['Group 1', 'Group 1', null]);
    const all = groupWith(grouped, 'c', 'a');
    expect(all.subjects.map(({ group }) => group)).toEqual(['Group 1', 'Group 1', 'Group 1']);
    expect(ungroup(all, 'b').subjects.map(({ group }) => group)).toEqual(['Group 1', null, 'Group 1']);
    expect(ungroup(grouped, 'b').subjects.map(({ group }) => group)).toEqual([null, null, null]);
  });

  it('one that leaves its group for another leaves no group of one behind', () => {
    const four = changed(grouped, {
      subjects: [
        ...grouped.subjects.slice(0, 2),
        ...['c', 'd'].map((id) => ({ ...grouped.subjects[2], id, group: 'X' })),
      ],
    });
    const moved = groupWith(four, 'a', 'c');
    expect(moved.subjects.map(({ group }) => group)).toEqual(['X', null, 'X', 'X']);
  });

  it('a group is renamed as a whole; a name that another has is not taken', () => {
    expect(renameGroup(grouped, 'Group 1', 'Stones').subjects.map(({ group }) => group)).toEqual([
      'Stones',
      'Stones',
      null,
    ]);
    expect(renameGroup(grouped, 'Group 1', 'Group 1')).toBe(grouped);
    expect(renameGroup(grouped, 'Group 1', '  ')).toBe(grouped);
  });

  it('a name that another group has is refused in a sentence that names it', () => {
    const two = groupWith(placeWith(...grouped.subjects, blockSubject('d', [1, 1, 1])), 'c', 'd');
    expect(groupNames(two)).toEqual(['Group 1', 'Group 2']);
    expect(() => renameGroup(two, 'Group 1', ' Group 2 ')).toThrow(EditRefused);
    expect(() => renameGroup(two, 'Group 1', ' Group 2 ')).toThrow('Another group is called Group 2');
  });
});

describe('moving', () => {
  it('moves the whole group by as much, and no other', () => {
    const moved = moveSubject(grouped, 'a', [1, 6, 0.5]);
    expect([at(moved, 'a'), at(moved, 'b'), at(moved, 'c')]).toEqual([
      [1, 6, 0.5],
      [5, 6, 0.5],
      [0, 12, 0],
    ]);
    expect(moved.subjects[2]).toBe(grouped.subjects[2]);
  });

  it('leaves locked ones where they are: alone, in a group, and as the one that is moved', () => {
    const locked = setSubjectLocked(grouped, 'b', true);
    expect(movedTogether(locked, 'a').map(({ id }) => id)).toEqual(['a']);
    expect(at(moveSubject(locked, 'a', [9, 9, 0]), 'b')).toEqual([4, 8, 0]);
    expect(moveSubject(locked, 'b', [9, 9, 0])).toBe(locked);
    expect(turnSubject(locked, 'b', 20)).toBe(locked);
    expect(leanSubject(locked, 'b', { tiltDegrees: 5 })).toBe(locked);
    expect(setDown(locked, 'b')).toBe(locked);
  });

  it('a group stops together at the edge of the world, its members as far apart as before', () => {
    const moved = moveSubject(grouped, 'a', [99_000, 8, 0]);
    expect(at(moved, 'b')[0]).toBe(5000);
    expect(at(moved, 'a')[0]).toBe(4996);
  });
});

describe('turning', () => {
  it('turns one subject where it stands', () => {
    const turned = turnSubject(three, 'a', 40);
    expect(at(turned, 'a')).toEqual([0, 8, 0]);
    expect(turnOf(turned, 'a')).toBe(40);
  });

  it('turns a group about its middle, clockwise seen from above: a quarter turn takes west to north (1e-5 m)', () => {
    const turned = turnSubject(grouped, 'a', 90);
    // the middle is [2, 8]: a stood 2 m west of it, b 2 m east
    for (const [id, [east, north]] of [
      ['a', [2, 10]],
      ['b', [2, 6]],
    ] as const) {
      expect(at(turned, id)[0]).toBeCloseTo(east, 5);
      expect(at(turned, id)[1]).toBeCloseTo(north, 5);
    }
    expect(turnOf(turned, 'a')).toBe(90);
    // 350 + 90 = 440, which the document does not take
    expect(turnOf(turned, 'b')).toBe(80);
  });

  it('any turns keep the distances in the group and its middle; turned back, all is where it was (1e-4 m)', () => {
    let setup = groupWith(grouped, 'c', 'a');
    for (const degrees of [13, -170, 360, 7.5, 0]) {
      setup = turnSubject(setup, 'b', degrees);
      const [a, b, c] = ['a', 'b', 'c'].map((id) => at(setup, id)) as [Position, Position, Position];
      expect(Math.hypot(a[0] - b[0], a[1] - b[1])).toBeCloseTo(4, 4);
      expect(Math.hypot(b[0] - c[0], b[1] - c[1])).toBeCloseTo(Math.hypot(4, 4), 4);
      expect((a[0] + b[0] + c[0]) / 3).toBeCloseTo(4 / 3, 4);
      expect((a[1] + b[1] + c[1]) / 3).toBeCloseTo(28 / 3, 4);
    }
    const back = turnSubject(setup, 'b', 350);
    for (const id of ['a', 'b', 'c'])
      at(back, id).forEach((v, axis) => {
        expect(v).toBeCloseTo(at(three, id)[axis] as number, 4);
      });
  });
});

describe('setDown', () => {
  const table = blockSubject('table', [2, 2, 0.8], { position: [0, 8, 0] });

  it('stands what hangs in the air, or is sunk, on the ground', () => {
    for (const up of [3, -0.4]) {
      const setup = placeWith(blockSubject('rock', [1, 1, 1], { position: [5, 8, up] }));
      expect(at(setDown(setup, 'rock'), 'rock')).toEqual([5, 8, 0]);
    }
  });

  it('stands it on what lies under its base, also where only a corner does (0.1 mm)', () => {
    const cases: readonly (readonly [east: number, up: number])[] = [
      [0, 0.8],
      [1.45, 0.8],
      [1.55, 0],
    ];
    for (const [east, up] of cases) {
      const setup = placeWith(table, blockSubject('rock', [1, 1, 1], { position: [east, 8, 2] }));
      expect(at(setDown(setup, 'rock'), 'rock')[2]).toBeCloseTo(up, 4);
    }
  });

  it('finds a post under the middle of the base, unless that reaches above its own top', () => {
    const post = subjectOf('post', [{ kind: 'cylinder', radiusMetres: 0.1, heightMetres: 1.2 }], {
      position: [0, 8, 0],
    });
    for (const up of [2, 0.5]) {
      const setup = placeWith(post, blockSubject('slab', [2, 2, 0.2], { position: [0, 8, up] }));
      // sunk to 0.5 m its top is under the post’s: it goes to the ground
      expect(at(setDown(setup, 'slab'), 'slab')[2]).toBeCloseTo(up === 2 ? 1.2 : 0, 4);
    }
  });

  it('a leaning block touches with its lowest edge: 1 m wide, tilted 30°, that is 0.5 m sin 30° under its origin', () => {
    const lean = blockSubject('rock', [1, 1, 1], { position: [0, 8, 5], tiltDegrees: 30 });
    const down = setDown(placeWith(lean), 'rock');
    expect(at(down, 'rock')[2]).toBeCloseTo(0.25, 4);
    expect(down.subjects[0]?.tiltDegrees).toBe(30);
  });

  it('what is hidden holds nothing; strewn stones do not lift it; once down it stays', () => {
    const hidden = placeWith({ ...table, hidden: true }, blockSubject('rock', [1, 1, 1], { position: [0, 8, 2] }));
    expect(at(setDown(hidden, 'rock'), 'rock')[2]).toBe(0);
    const strewn = changed(hidden, {
      ground: { relief: [{ kind: 'stones', count: 2000, heightMetres: [0.1, 0.3], centre: [0, 8], radiusMetres: 3 }] },
    });
    const down = setDown(strewn, 'rock');
    expect(at(down, 'rock')[2]).toBe(0);
    expect(setDown(down, 'rock')).toBe(down);
  });
});

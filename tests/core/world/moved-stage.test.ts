import { describe, expect, it } from 'vitest';
import { anyHit, closestHit } from '../../../core/geometry/cast-ray.ts';
import type { Subject } from '../../../core/setup/schema/setup.ts';
import { mostCostGrowth } from '../../../core/world/lay-out.ts';
import { buildStage, type Stage } from '../../../core/world/stage.ts';
import { pebbleSetup } from '../support/pebble-setup.ts';
import { shots } from '../support/rays.ts';
import { subjectOf } from '../support/scenes.ts';

const seed = 20261130;
const { ground } = pebbleSetup(1000, 'finer');
const ball = (id: string, east: number, extra: object = {}) =>
  subjectOf(id, [{ kind: 'sphere', radiusMetres: 0.7, sides: 12 }], { position: [east, 2, 0], ...extra });
const wall = subjectOf('wall', [{ kind: 'box', widthMetres: 3, heightMetres: 1.5, depthMetres: 0.4 }], {
  position: [0, 4, 0],
});
const subjects: readonly Subject[] = [ball('left', -2), wall, ball('right', 2, { mirrored: true, tiltDegrees: 10 })];
const before = buildStage(ground, subjects);

/** Each triangle with all that belongs to it, in the order in which they went in. */
const described = (stage: Stage): string[] => {
  const { tree, normals } = stage;
  const lines: string[] = [];
  tree.sourceTriangle.forEach((source, t) => {
    lines[source] = JSON.stringify([
      [...tree.corners.subarray(t * 9, t * 9 + 9)],
      [...normals.subarray(t * 9, t * 9 + 9)],
      stage.finishes[stage.finishOfTriangle[t] as number],
      stage.subjectOfTriangle[t],
      stage.isSolidTriangle[t],
    ]);
  });
  return lines;
};

/** Whether two stages are the same to whoever looks at them, whatever their trees look like. */
const expectSame = (ours: Stage, fresh: Stage): void => {
  expect(described(ours)).toEqual(described(fresh));
  expect(ours.subjects).toEqual(fresh.subjects);
  for (const { origin, direction, limit } of shots(seed, 2000)) {
    expect(closestHit(ours.tree, origin, direction)?.t).toBe(closestHit(fresh.tree, origin, direction)?.t);
    expect(anyHit(ours.tree, origin, direction, limit)).toBe(anyHit(fresh.tree, origin, direction, limit));
  }
};

const isRefitted = (stage: Stage, of: Stage) => stage.tree.sourceTriangle === of.tree.sourceTriangle;
const withLeft = (change: Partial<Subject>): Subject[] =>
  subjects.map((subject) => (subject.id === 'left' ? { ...subject, ...change } : subject));

describe(`buildStage with the stage before, seed ${seed}`, () => {
  it.each<[string, Partial<Subject>]>([
    ['moved', { position: [-1, 3, 0.5] }],
    ['turned', { turnDegrees: 30, tiltDegrees: 5, rollDegrees: -20 }],
    ['mirrored', { mirrored: true }],
    ['made larger', { parts: ball('left', -2).parts.map((part) => ({ ...part, radiusMetres: 1 }) as typeof part) }],
    ['renamed', { name: 'Another' }],
    ['painted', { finish: { ...wall.finish, reflectance: 0.9 } }],
  ])('a subject %s: the tree is refitted or kept, and all is as on a stage built anew', (_, change) => {
    const after = withLeft(change);
    const ours = buildStage(ground, after, undefined, before);
    // a new finish of its own changes the order of finishes, so that all is laid out anew
    expect(isRefitted(ours, before)).toBe(!change.finish);
    expectSame(ours, buildStage(ground, after));
    // the stage before is as it was
    expectSame(before, buildStage(ground, subjects));
  });

  it('moved step by step, and back: as on a stage built anew', () => {
    let stage = before;
    for (let step = 1; step <= 20; step++)
      stage = buildStage(
        ground,
        withLeft({ position: [-2 + 0.2 * Math.sin(step), 2 + 0.1 * step, 0] }),
        undefined,
        stage,
      );
    expectSame(stage, buildStage(ground, withLeft({ position: [-2 + 0.2 * Math.sin(20), 4, 0] })));
    expectSame(buildStage(ground, subjects, undefined, stage), before);
  });

  it('places no subject again that is the same object', () => {
    const ours = buildStage(ground, withLeft({ position: [0, 0, 0] }), undefined, before);
    // what others keep by the object, such as outlines from above, holds as long
    for (const s of [1, 2]) expect(ours.subjects[s]).toBe(before.subjects[s]);
    expect(ours.subjects[0]).not.toBe(before.subjects[0]);
    expect(ours.subjects[0]?.points).not.toBe(before.subjects[0]?.points);
  });

  it.each<[string, readonly Subject[]]>([
    ['hidden', withLeft({ hidden: true })],
    ['gone', subjects.slice(1)],
    ['more', [...subjects, ball('third', 3)]],
    ['in another order', [wall, ...subjects.filter((subject) => subject !== wall)]],
    [
      'of more triangles',
      withLeft({ parts: subjectOf('x', [{ kind: 'sphere', radiusMetres: 0.7, sides: 20 }]).parts }),
    ],
  ])('a subject %s: built anew', (_, after) => {
    const ours = buildStage(ground, after, undefined, before);
    expect(isRefitted(ours, before)).toBe(false);
    expectSame(ours, buildStage(ground, after));
  });

  it('whose part went to the next subject, all else alike: built anew', () => {
    const [part] = ball('a', 0).parts as [Subject['parts'][number]];
    const pair = (first: number, second: number) => [
      { ...ball('a', -2), parts: Array<typeof part>(first).fill(part) },
      { ...ball('b', 2), parts: Array<typeof part>(second).fill(part) },
    ];
    const ours = buildStage(ground, pair(1, 2), undefined, buildStage(ground, pair(2, 1)));
    expectSame(ours, buildStage(ground, pair(1, 2)));
  });

  it(`far off, so that rays would take over ${mostCostGrowth} times as long: built anew`, () => {
    const after = withLeft({ position: [4000, 3000, 900] });
    const ours = buildStage(ground, after, undefined, before);
    expect(isRefitted(ours, before)).toBe(false);
    expectSame(ours, buildStage(ground, after));
  });

  it('keeps a count of how its tree has grown worse from step to step', () => {
    let stage = before;
    let rebuilt = 0;
    for (let step = 1; step <= 60; step++) {
      const next = buildStage(ground, withLeft({ position: [-2 - 2 * step, 2, 0] }), undefined, stage);
      if (!isRefitted(next, stage)) rebuilt++;
      stage = next;
    }
    expect(rebuilt).toBeGreaterThan(0);
    expect(rebuilt).toBeLessThan(30);
  });
});

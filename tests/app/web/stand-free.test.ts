import { describe, expect, it, vi } from 'vitest';
import { addKitSubject, addPartSubject, duplicateSubject } from '../../../app/web/state/edits/add-subjects.ts';
import { newPartKinds } from '../../../app/web/state/edits/new-parts.ts';
import type { Position, Setup, Subject } from '../../../core/setup/schema/setup.ts';
import { buildStage } from '../../../core/world/stage.ts';
import { blockSubject, changed, placeWith } from './subject-setups.ts';

vi.mock('../../../core/kits/all-kits.ts', async () => {
  const { postsKit: kit } = await import('./subject-setups.ts');
  return { allKits: [kit], kitNamed: (name: string) => (name === kit.name ? kit : null) };
});

const empty = placeWith();
const subjectIn = (setup: Setup, id: string): Subject => setup.subjects.find((each) => each.id === id) as Subject;

/** Corners of a subject as the stage has them: world x, y, z. */
const pointsOf = (setup: Setup, id: string): readonly (readonly [number, number, number])[] => {
  const { points } = buildStage(setup.ground, [subjectIn(setup, id)], setup.scans).subjects[0] as {
    points: Float64Array;
  };
  return Array.from({ length: points.length / 3 }, (_, i) => [...points.subarray(3 * i, 3 * i + 3)] as never);
};

/** Pinhole by hand, for a level bearing: picture place of a world point, 0 to 1, from the camera’s own numbers. */
const placeInPicture = ({ camera }: Setup, [x, y, z]: readonly [number, number, number]): readonly [number, number] => {
  const [cx, cn, cu] = camera.position;
  const [ax, an, au] = camera.aim;
  const bearing = Math.atan2(ax - cx, an - cn);
  const down = Math.atan2(cu - au, Math.hypot(ax - cx, an - cn));
  const [e, n, u] = [x - cx, -z - cn, y - cu];
  const right = e * Math.cos(bearing) - n * Math.sin(bearing);
  const level = e * Math.sin(bearing) + n * Math.cos(bearing);
  const depth = level * Math.cos(down) - u * Math.sin(down);
  const above = level * Math.sin(down) + u * Math.cos(down);
  const { widthMm, heightMm } = camera.sensor;
  const f = camera.focalLengthMm;
  return [0.5 + (right / depth) * (f / widthMm), 0.5 - (above / depth) * (f / heightMm)];
};

const looking = (position: Position, aim: Position): Setup =>
  changed(empty, { camera: { ...empty.camera, position, aim } });

describe('a new subject', () => {
  it('stands at the camera’s aim where that lies on the ground', () => {
    const { setup, subjectId } = addPartSubject(empty, 'scheme', 'box');
    expect(subjectIn(setup, subjectId)).toMatchObject({
      position: [0, 8, 0],
      turnDegrees: 0,
      name: 'Block',
      id: 'block',
    });
  });

  it.each([
    ['level, from knee height', [0, 0, 0.5], [0, 8, 0.5]],
    ['level to the east', [10, -4, 1.6], [30, -4, 1.6]],
    ['up at the sky', [0, 0, 1], [5, 5, 2.5]],
    ['down at a spot near by', [0, 0, 1.6], [0, 3, 0.2]],
  ] as const)('with the camera %s stands on the ground and whole in the picture', (_, position, aim) => {
    const { setup, subjectId } = addKitSubject(looking([...position], [...aim]), 'scheme', 'posts');
    const points = pointsOf(setup, subjectId);
    expect(Math.min(...points.map(([, y]) => y))).toBeCloseTo(0, 6);
    for (const point of points)
      for (const v of placeInPicture(setup, point)) {
        expect(v).toBeGreaterThanOrEqual(0);
        expect(v).toBeLessThanOrEqual(1);
      }
  });

  it('turns its front to the camera, by whole 15 degrees: a camera that looks east gives a bearing of 90', () => {
    const { setup, subjectId } = addPartSubject(looking([0, 0, 1], [20, 1, 1]), 'scheme', 'wall');
    expect(subjectIn(setup, subjectId).turnDegrees).toBe(90);
  });

  it('six after each other stand clear of each other', () => {
    let setup = empty;
    for (let i = 0; i < 6; i++) setup = addPartSubject(setup, 'scheme', 'box').setup;
    expect(new Set(setup.subjects.map(({ id }) => id)).size).toBe(6);
    expect(setup.subjects.map(({ name }) => name)).toEqual([
      'Block',
      'Block 2',
      'Block 3',
      'Block 4',
      'Block 5',
      'Block 6',
    ]);
    // blocks of a metre, all turned alike
    setup.subjects.forEach((a, i) => {
      for (const b of setup.subjects.slice(i + 1))
        expect(
          Math.max(Math.abs(a.position[0] - b.position[0]), Math.abs(a.position[1] - b.position[1])),
        ).toBeGreaterThanOrEqual(1);
    });
  });

  it('is seen through the camera of its own that a scheme has', () => {
    const own = { ...empty.camera, position: [50, 50, 1], aim: [60, 50, 0] };
    const setup = changed(empty, { schemes: [{ ...empty.schemes[0], camera: own }] });
    const added = addPartSubject(setup, 'scheme', 'sphere');
    expect(subjectIn(added.setup, added.subjectId).position).toEqual([60, 50, 0]);
  });

  it.each(newPartKinds)('of a %s is taken by the document', (kind) => {
    expect(() => changed(addPartSubject(empty, 'scheme', kind).setup, {})).not.toThrow();
  });
});

describe('a duplicate', () => {
  const rock = blockSubject('rock', [2, 1, 1], { name: 'Rock', position: [0, 8, 0.4], group: 'G', locked: true });
  const other = blockSubject('other', [1, 1, 1], { position: [-9, 8, 0], group: 'G' });

  it('stands beside its original along the camera’s right, as high, unlocked and in no group, under a new name', () => {
    const { setup, subjectId } = duplicateSubject(placeWith(rock, other), 'scheme', 'rock');
    expect(subjectIn(setup, subjectId)).toMatchObject({
      id: 'rock-2',
      name: 'Rock 2',
      position: [2.3, 8, 0.4],
      locked: false,
      group: null,
    });
    expect(subjectIn(setup, 'rock')).toEqual(setup.subjects[0]);
    expect(subjectIn(setup, subjectId).parts).toBe(setup.subjects[0]?.parts);
  });

  it('goes left where the right is taken; counts names on', () => {
    const right = blockSubject('right', [2, 2, 1], { position: [2.5, 8, 0] });
    const { setup, subjectId } = duplicateSubject(placeWith(rock, other, right), 'scheme', 'rock');
    expect(subjectIn(setup, subjectId).position[0]).toBe(-2.3);
    const third = duplicateSubject(setup, 'scheme', subjectId);
    expect(subjectIn(third.setup, third.subjectId).name).toBe('Rock 3');
  });

  it('with the camera looking east the right is south', () => {
    const setup = changed(placeWith(rock, other), {
      camera: { ...empty.camera, position: [-20, 8, 1], aim: [0, 8, 1] },
    });
    const copy = duplicateSubject(setup, 'scheme', 'rock');
    expect(subjectIn(copy.setup, copy.subjectId).position).toEqual([0, 8 - 1.3, 0.4]);
  });
});

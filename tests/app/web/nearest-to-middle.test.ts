import { describe, expect, it, vi } from 'vitest';
import { boxOfPoints } from '../../../app/web/inspector/box-of-points.ts';
import { nearestToMiddle } from '../../../app/web/inspector/nearest-to-middle.ts';
import * as cameraView from '../../../core/camera/camera-view.ts';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import { buildWorld } from '../../../core/world/world.ts';
import { blockSubject, placeWith } from './subject-setups.ts';

vi.mock('../../../core/camera/camera-view.ts', async (importOriginal) => {
  const original = await importOriginal<typeof cameraView>();
  return { ...original, projectPoint: vi.fn(original.projectPoint) };
});
const worldOf = (setup: Setup) => buildWorld(setup, setup.schemes[0] as Setup['schemes'][number]);
const block = (id: string, position: readonly number[]) => blockSubject(id, [1, 2, 3], { position });

describe('boxOfPoints', () => {
  it('is as wide, high and deep as the block was typed, round its middle, and measured once', () => {
    const [subject] = worldOf(placeWith(block('a', [4, 8, 0.5]))).stage.subjects;
    if (!subject) throw new Error('no subject');
    const { low, high, middle } = boxOfPoints(subject.points);
    // 1 m wide, 2 m deep, 3 m high, its foot at [4 east, 8 north, 0.5 up]; world axes are x east, y up, z south
    expect([...low, ...high, ...middle]).toEqual([3.5, 0.5, -9, 4.5, 3.5, -7, 4, 2, -8]);
    expect(boxOfPoints(subject.points)).toBe(boxOfPoints(subject.points));
  });
});

describe('nearestToMiddle', () => {
  // the camera stands at the origin and looks north
  it('is the one beside the line of sight by least, not the one that is nearest to the camera', () => {
    const subjects = [block('behind', [0, -8, 0]), block('near', [2, 6, 0]), block('far', [2, 20, 0])];
    const { view, stage } = worldOf(placeWith(...subjects));
    expect(nearestToMiddle(view, stage.subjects)?.id).toBe('far');
  });

  it('is the first where all are behind the camera, and none where there is none', () => {
    const { view, stage } = worldOf(placeWith(block('a', [0, -8, 0]), block('b', [1, -8, 0])));
    expect(nearestToMiddle(view, stage.subjects)?.id).toBe('a');
    expect(nearestToMiddle(view, [])).toBeUndefined();
  });

  it('looks at each of them once', () => {
    const { view, stage } = worldOf(placeWith(...[1, 2, 3, 4, 5, 6].map((n) => block(`b${n}`, [10 - 3 * n, 20, 0]))));
    const projected = vi.mocked(cameraView.projectPoint).mockClear();
    nearestToMiddle(view, stage.subjects);
    expect(projected).toHaveBeenCalledTimes(6);
  });
});

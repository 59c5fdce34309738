import { describe, expect, it } from 'vitest';
import { coarseSize } from '../../../app/web/render/coarse-size.ts';
import { resizedFor } from '../../../app/web/render/resized-for.ts';
import type { Scene } from '../../../app/web/render/scene.ts';

describe('coarseSize', () => {
  it.each([
    ['as large as it is where that is few enough', 640, 360, 640 * 360, [640, 360]],
    ['halved once, a half pixel counted whole', 641, 361, 640 * 360, [321, 181]],
    ['halved three times at most', 1000, 800, 1, [125, 100]],
  ] as const)('%s', (_, width, height, most, expected) => {
    const coarse = coarseSize({ width, height }, most);
    expect([coarse.width, coarse.height]).toEqual(expected);
  });
});

describe('resizedFor', () => {
  const scene = (...sizes: readonly (readonly [string, number, number])[]) =>
    ({
      samples: 4,
      tiles: sizes.map(([screen, width, height]) => ({ screen, width, height, name: `on ${screen}` })),
    }) as unknown as Scene;

  it('is null where every screen is as large as it was, in whatever order', () => {
    expect(resizedFor(scene(['a', 300, 200], ['b', 60, 40]), scene(['b', 60, 40], ['a', 300, 200]))).toBeNull();
  });

  it('has the new size of a screen, and all else as it was; a screen that is gone keeps its own', () => {
    const resized = resizedFor(scene(['a', 300, 200], ['b', 60, 40]), scene(['a', 300, 180]));
    expect(resized).toEqual(scene(['a', 300, 180], ['b', 60, 40]));
  });

  it('is null for screens that are not shown next, and for new ones', () => {
    expect(resizedFor(scene(['a', 300, 200]), scene(['c', 60, 40]))).toBeNull();
  });
});

import { describe, expect, it } from 'vitest';
import { faceLight } from '../../../core/readings/face-light.ts';
import { patchLight } from '../../../core/readings/patch-reading.ts';
import { patchView } from '../../../core/readings/patch-view.ts';
import { percentile } from '../../../core/readings/percentile.ts';
import { Recent } from '../../../core/readings/recent.ts';
import { sightOf } from '../../../core/readings/sight.ts';
import { silhouetteOf } from '../../../core/readings/silhouette.ts';
import { onlyPassOf } from '../support/read-pass.ts';
import { onePassSetup } from '../support/scenes.ts';

describe('Recent', () => {
  it('makes a thing once as long as it is among the last asked for, then anew', () => {
    const recent = new Recent<string>(2);
    const made: string[] = [];
    const ask = (key: string) =>
      recent.get(key, () => {
        made.push(key);
        return key.toUpperCase();
      });
    expect(['a', 'b', 'a', 'c', 'a', 'b'].map(ask)).toEqual(['A', 'B', 'A', 'C', 'A', 'B']);
    expect(made).toEqual(['a', 'b', 'c', 'b']);
  });
});

describe('percentile', () => {
  it('goes from the least to the greatest, straight between neighbours, in whatever order they stand (exact)', () => {
    const values = [5, 1, 4, 2, 3];
    expect([0, 0.25, 0.5, 0.75, 1].map((share) => percentile(values, share))).toEqual([1, 2, 3, 4, 5]);
    expect(percentile(values, 0.125)).toBe(1.5);
    expect(percentile([7], 0.95)).toBe(7);
    expect(values).toEqual([5, 1, 4, 2, 3]);
  });

  it('of no values is an error, not a number', () => {
    expect(() => percentile([], 0.5)).toThrow('no values');
  });
});

describe('Sight', () => {
  const setup = onePassSetup({
    camera: { position: [0, 0, 1.5], aim: [0, 6, 1] },
    subjects: [
      {
        id: 'box',
        name: 'Box',
        parts: [{ kind: 'box', position: [0, 6, 0], widthMetres: 1, depthMetres: 1, heightMetres: 2 }],
      },
    ],
    pass: { waypoints: [{ position: [-3, 3, 1], aim: [0, 6, 1] }] },
  });
  const { world, light } = onlyPassOf(setup);
  const { stage, view } = world;
  const sight = sightOf(stage, view);
  const corners = [
    [-1, 0, -4],
    [1, 0, -4],
    [1, 0, -3],
    [-1, 0, -3],
  ] as const;

  it('gives what the parts give by themselves (exact)', () => {
    const silhouette = silhouetteOf(stage, view, 0);
    const points = patchView(stage, view, corners);
    expect(points.length).toBeGreaterThan(100);
    expect(sight.silhouette(0)).toEqual(silhouette);
    expect(sight.faceLight(0, light.source)).toEqual(faceLight(stage, silhouette.face, light.source));
    expect(sight.patch(corners)).toEqual(points);
    expect(sight.patchLight(corners, light.source)).toEqual(patchLight(stage, points, light.source));
  });

  it('is one and the same for an equal camera, and keeps what it made; another for another camera', () => {
    expect(sightOf(stage, { ...view })).toBe(sight);
    expect(sight.silhouette(0)).toBe(sight.silhouette(0));
    expect(sight.faceLight(0, structuredClone(light.source))).toBe(sight.faceLight(0, light.source));
    expect(sightOf(stage, { ...view, tanHalfWidth: 2 * view.tanHalfWidth })).not.toBe(sight);
  });

  it('a moved lamp or patch is metered anew', () => {
    const moved = structuredClone(light.source) as Extract<typeof light.source, { kind: 'lamp' }>;
    const [at] = moved.path;
    if (!at) throw new Error('no path');
    const source = { ...moved, path: [{ ...at, position: [2, 1, -3] as const }] };
    expect(sight.faceLight(0, source)).not.toEqual(sight.faceLight(0, light.source));
    const shifted = corners.map(([x, y, z]) => [x + 0.5, y, z] as const);
    expect(sight.patch(shifted)).not.toEqual(sight.patch(corners));
  });
});

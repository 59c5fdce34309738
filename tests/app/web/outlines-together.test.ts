import { describe, expect, it } from 'vitest';
import { edgesOfAll } from '../../../app/web/ui/edges-of-all.ts';
import { hatchStrokes, type Stroke } from '../../../app/web/ui/hatch.ts';
import type { GroundPoint } from '../../../core/geometry/hull.ts';

const square = (east: number, north: number, side: number): GroundPoint[] => [
  [east, north],
  [east + side, north],
  [east + side, north + side],
  [east, north + side],
];
const lengthOf = (strokes: readonly Stroke[]): number =>
  strokes.reduce((sum, [from, to]) => sum + Math.hypot(to[0] - from[0], to[1] - from[1]), 0);

// two squares of 2 m that share one of 1 m: 7 square metres, 12 m round; by elementary geometry
const overlapping = [square(0, 0, 2), square(1, 1, 2)];

describe('outlines taken together', () => {
  it('are hatched once where they overlap: length of all lines = area over spacing (1 %)', () => {
    for (const turn of [0, 0.4, 1.3]) {
      const length = lengthOf(hatchStrokes(overlapping, turn, 0.01));
      expect(Math.abs(length * 0.01 - 7) / 7).toBeLessThan(0.01);
    }
  });

  it('keep a gap between them free of lines', () => {
    const strokes = hatchStrokes([square(0, 0, 1), square(3, 0, 1)], 0, 0.1);
    expect(strokes.some(([from, to]) => from[0] < 2 && to[0] > 2)).toBe(false);
    expect(strokes.some(([from]) => from[0] > 2)).toBe(true);
  });

  it('have the edges of the whole, none inside: 12 m (1e-9)', () => {
    expect(lengthOf(edgesOfAll(overlapping))).toBeCloseTo(12, 9);
  });

  it('show nothing of what lies inside another', () => {
    expect(lengthOf(edgesOfAll([square(0, 0, 4), square(1, 1, 1)]))).toBeCloseTo(16, 9);
  });
});

import { describe, expect, it } from 'vitest';
import type { Vec3 } from '../../../core/geometry/vec.ts';
import { cellOf, cells, domeSteps } from '../../../core/sky/dome-cells.ts';
import { spreadByLight } from '../../../core/sky/dome-spread.ts';

/** How many of the directions fall into each cell. */
const countsOf = (luminance: Float32Array): number[] => {
  const directions = spreadByLight(luminance) as Float32Array;
  const counts = Array<number>(cells).fill(0);
  for (let i = 0; i < directions.length; i += 3) {
    const { column, row } = cellOf([...directions.subarray(i, i + 3)] as unknown as Vec3);
    const cell = Math.floor(row) * domeSteps + Math.floor(column);
    counts[cell] = (counts[cell] as number) + 1;
  }
  return counts;
};

describe('spreadByLight', () => {
  it('points to the one lit cell of a dark dome alone', () => {
    const cell = 17 * domeSteps + 40;
    const luminance = new Float32Array(cells);
    luminance[cell] = 3;
    expect(countsOf(luminance)[cell]).toBe(cells);
  });

  it('points to two lit cells of dark rows between, as often as each is bright', () => {
    const [low, high] = [5 * domeSteps + 3, 50 * domeSteps + 60];
    const luminance = new Float32Array(cells);
    luminance[low] = 1;
    luminance[high] = 3;
    const counts = countsOf(luminance);
    expect([counts[low], counts[high]]).toEqual([cells / 4, (3 * cells) / 4]);
  });

  it('finds no direction in the dark', () => {
    expect(spreadByLight(new Float32Array(cells))).toBeNull();
  });
});

import { describe, expect, it } from 'vitest';
import { measuredLength } from '../../../core/units/measured-length.ts';

describe('measuredLength', () => {
  it('gives 3-4-5 over the ground and 5-12-13 with the rise (Pythagoras, 1e-12)', () => {
    const { metres, levelMetres, riseMetres } = measuredLength([1, 2, 0.5], [4, 6, 12.5]);
    expect(levelMetres).toBeCloseTo(5, 12);
    expect(riseMetres).toBe(12);
    expect(metres).toBeCloseTo(13, 12);
  });

  it.each([
    [[0, 1], 0],
    [[1, 1], 45],
    [[1, 0], 90],
    [[0, -1], 180],
    [[-1, 0], 270],
  ] as const)('bears %j at %f degrees, clockwise from north', ([east, north], degrees) => {
    expect(measuredLength([0, 0, 0], [east, north, 3]).bearingDegrees).toBeCloseTo(degrees, 9);
  });

  it('has no bearing straight up, and is as long on the level as the ground it goes over', () => {
    expect(measuredLength([2, 2, 0], [2, 2, 5])).toMatchObject({ bearingDegrees: null, levelMetres: 0 });
    expect(measuredLength([0, 0, 0], [0, 30, 9]).levelMetres).toBeCloseTo(30, 12);
  });
});

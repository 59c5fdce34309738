import { describe, expect, it } from 'vitest';
import { openPath } from '../../../app/web/ui/open-path.ts';
import { spacedPlaces } from '../../../app/web/ui/path-ticks.ts';

describe('spacedPlaces', () => {
  it('keeps the first and the last, and between them what stands clear of both neighbours', () => {
    const row = [0, 5, 12, 14, 30, 41, 44].map((x) => [x, 0] as const);
    expect(spacedPlaces(row, 10)).toEqual([0, 2, 4, 6]);
  });
  it('keeps both ends of a way that comes back to where it began', () => {
    const round = [
      [0, 0],
      [30, 0],
      [0, 0],
    ] as const;
    expect(spacedPlaces(round, 10)).toEqual([0, 1, 2]);
  });
  it('is nothing where all lie on one spot', () => {
    expect(spacedPlaces([[3, 3]], 10)).toEqual([]);
    expect(
      spacedPlaces(
        [
          [3, 3],
          [3, 3.2],
        ],
        10,
      ),
    ).toEqual([]);
  });
});

describe('openPath', () => {
  it('goes through all places and does not close', () => {
    expect(
      openPath([
        [1, 2],
        [3, 4.006],
      ]),
    ).toBe('M1.00 2.00L3.00 4.01');
    expect(openPath([[1, 2]])).toBe('');
  });
});

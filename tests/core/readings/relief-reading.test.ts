import { describe, expect, it } from 'vitest';
import { groundRaking, raking } from '../../../core/readings/relief-reading.ts';

// trade.md 0.3, ground texture: angle in degrees and shadow length in heights; common practice, computed from 1 / tan
const awayMetres = [2, 3, 5, 8, 10];
const table: readonly (readonly [height: number, cells: readonly (readonly [string, string])[]])[] = [
  [
    0.3,
    [
      ['8.5', '6.7'],
      ['5.7', '10'],
      ['3.4', '17'],
      ['2.1', '27'],
      ['1.7', '33'],
    ],
  ],
  [
    0.45,
    [
      ['12.7', '4.4'],
      ['8.5', '6.7'],
      ['5.1', '11'],
      ['3.2', '18'],
      ['2.6', '22'],
    ],
  ],
  [
    0.6,
    [
      ['16.7', '3.3'],
      ['11', '5.0'],
      ['6.8', '8.3'],
      ['4.3', '13'],
      ['3.4', '17'],
    ],
  ],
  [
    1.0,
    [
      ['27', '2.0'],
      ['18', '3.0'],
      ['11', '5.0'],
      ['7.1', '8.0'],
      ['5.7', '10'],
    ],
  ],
  [
    1.5,
    [
      ['37', '1.3'],
      ['27', '2.0'],
      ['17', '3.3'],
      ['11', '5.3'],
      ['8.5', '6.7'],
    ],
  ],
  [
    2.2,
    [
      ['48', '0.9'],
      ['36', '1.4'],
      ['24', '2.3'],
      ['15', '3.6'],
      ['12', '4.5'],
    ],
  ],
];
/** Half of the last printed place, with a hair for the tie. */
const rounding = (printed: string) => (printed.includes('.') ? 0.0501 : 0.501);

describe('groundRaking', () => {
  it.each(table)(
    'a lamp %d m up rakes the ground as the table says, 2 to 10 m away (its rounding)',
    (height, cells) => {
      expect(cells).toHaveLength(5);
      cells.forEach(([angle, ratio], k) => {
        const found = groundRaking([1, 0.7, -4], [1 + (awayMetres[k] as number), height, -4]);
        expect(Math.abs(found.grazingDegrees - Number(angle))).toBeLessThanOrEqual(rounding(angle));
        expect(Math.abs((found.shadowLengthPerHeight as number) - Number(ratio))).toBeLessThanOrEqual(rounding(ratio));
      });
    },
  );

  it('a lamp on the ground or below has no shadow length, and a grazing angle of 0 or less', () => {
    expect(groundRaking([0, 0, 0], [3, 0, 0])).toEqual({ grazingDegrees: 0, shadowLengthPerHeight: null });
    expect(groundRaking([0, 0, 0], [3, -3, 0]).grazingDegrees).toBeCloseTo(-45, 9);
    expect(groundRaking([0, 0, 0], [3, -3, 0]).shadowLengthPerHeight).toBeNull();
  });

  it('straight above there is no shadow (abs 1e-9)', () => {
    const above = groundRaking([2, 0, 2], [2, 3, 2]);
    expect(above.grazingDegrees).toBeCloseTo(90, 6);
    expect(above.shadowLengthPerHeight).toBeCloseTo(0, 9);
  });
});

// trade.md 0.3, walls: lamp 7 m along from the spot; common practice, computed
describe('raking over a wall', () => {
  it.each([
    [0.5, 4, 14],
    [1, 8, 7],
    [2, 16, 3.5],
    [4, 30, 1.8],
  ])(
    'a lamp %d m out from the face: %d degrees, x%d, whatever its height over the spot (its rounding)',
    (out, angle, ratio) => {
      const found = raking([0, 1, 0], [0, 0, 1], [7, 1, out]);
      expect(Math.abs(found.grazingDegrees - angle)).toBeLessThanOrEqual(0.501);
      expect(Math.abs((found.shadowLengthPerHeight as number) - ratio)).toBeLessThanOrEqual(ratio < 4 ? 0.0501 : 0.501);
      const up = raking([0, 1, 0], [0, 0, 1], [0, 8, out]);
      expect(up.grazingDegrees).toBeCloseTo(found.grazingDegrees, 9);
    },
  );
});

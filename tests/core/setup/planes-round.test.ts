import { describe, expect, it } from 'vitest';
import { distributionOf } from '../../../core/photometry/distribution.ts';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import { maxBeamAngles } from '../../../core/setup/schema/measured-beam.ts';
import { planesRound } from '../../../core/setup/schema/planes-round.ts';
import { changed, errorOf, expectError } from './good-setup.ts';

const between = (from: number, to: number, count: number): number[] =>
  Array.from({ length: count }, (_, i) => from + ((to - from) * i) / (count - 1));

/** The good setup with a beam of two vertical angles and so many planes. */
const textWith = (horizontalDegrees: readonly number[]): string =>
  changed((setup) => {
    const candela = horizontalDegrees.map(() => [100, 0]);
    setup.measuredBeams = [{ id: 'file', name: 'File', verticalDegrees: [0, 40], horizontalDegrees, candela }];
    setup.lamps[0].beam = { shape: 'measured', beamId: 'file' };
  });

describe('planesRound', () => {
  it.each([
    ['one plane', [0]],
    ['a quadrant', between(0, 90, 7)],
    ['a half circle', between(0, 180, 7)],
    ['a half circle of two planes', [0, 180]],
    ['the other half, with a plane 180', between(90, 270, 7)],
    ['the other half, without', between(90, 270, 8)],
    ['a circle', between(0, 360, 9)],
    ['a circle without 360', between(0, 300, 6)],
  ])('%s: as many as the unfolded distribution has', (_, horizontalDegrees) => {
    const candela = horizontalDegrees.map(() => [1, 0]);
    const { horizontalRadians } = distributionOf({ verticalDegrees: [0, 40], horizontalDegrees, candela });
    // whose last plane is its first once more
    expect(planesRound(horizontalDegrees)).toBe(horizontalRadians.length - 1);
  });

  it('a quadrant of 501 planes is taken, for it gives 2000; of 502 it is refused', () => {
    expect(maxBeamAngles).toBe(2000);
    expect(parseSetup(textWith(between(0, 90, 501))).measuredBeams).toHaveLength(1);
    expectError(
      errorOf(textWith(between(0, 90, 502))),
      'field',
      'measuredBeams[0].horizontalDegrees',
      'at most 2000 planes once mirrored round the circle, not 2004',
    );
  });

  it('a half circle of 1001 planes is taken, of 1002 refused', () => {
    expect(parseSetup(textWith(between(0, 180, 1001))).measuredBeams).toHaveLength(1);
    expectError(errorOf(textWith(between(0, 180, 1002))), 'field', 'measuredBeams[0].horizontalDegrees', 'not 2002');
  });
});

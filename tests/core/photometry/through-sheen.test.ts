import { describe, expect, it } from 'vitest';
import { throughSheen, throughSheenAt } from '../../../core/photometry/through-sheen.ts';

describe('throughSheen', () => {
  it('of a mirror of index 1.5 lets 0.96 through straight on (Fresnel), and 0.9082 of light from all round (rel 0.2 %)', () => {
    // the mean reflectance, 0.0918: Judd 1942, from memory
    const table = throughSheen(0, 1.5);
    expect(throughSheenAt(table, 1)).toBeCloseTo(0.96, 12);
    expect(Math.abs(table.mean / (1 - 0.0918) - 1)).toBeLessThan(0.002);
  });

  it('is the same when asked again after many others, whose tables took its place', () => {
    const first = throughSheen(0, 1.31);
    expect(throughSheen(0, 1.31)).toBe(first);
    for (let i = 0; i < 150; i++) throughSheen(0, 1.4 + i / 1000);
    const again = throughSheen(0, 1.31);
    expect(again).not.toBe(first);
    expect(again).toEqual(first);
  });
});

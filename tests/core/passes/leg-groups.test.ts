import { describe, expect, it } from 'vitest';
import { legGroups } from '../../../core/passes/leg-groups.ts';

describe('legGroups', () => {
  it('puts the shortest neighbours together first: 1 and 1, then those and 3', () => {
    expect(legGroups([5, 1, 1, 3], 4)).toEqual([0, 1, 2, 3, 4]);
    expect(legGroups([5, 1, 1, 3], 3)).toEqual([0, 1, 3, 4]);
    expect(legGroups([5, 1, 1, 3], 2)).toEqual([0, 1, 4]);
  });

  it('keeps both ends, in order, of as many as a pass may have; equal legs come out within twice as long', () => {
    const ends = legGroups(new Array(255).fill(0.1), 24);
    expect(ends).toHaveLength(25);
    expect([ends[0], ends.at(-1)]).toEqual([0, 255]);
    const sizes = ends.slice(1).map((end, i) => end - (ends[i] as number));
    expect(Math.min(...sizes)).toBeGreaterThan(0);
    expect(Math.max(...sizes)).toBeLessThanOrEqual(2 * Math.min(...sizes));
  });
});

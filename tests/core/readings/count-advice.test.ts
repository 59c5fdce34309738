import { describe, expect, it } from 'vitest';
import { tooBrightAtLowest } from '../../../core/readings/count-advice.ts';

const case_ = {
  stops: 2.3,
  lowestLevelPercent: 5,
  shortestSeconds: 1,
  staysLit: false,
  distanceMetres: 4,
  standBackMetres: 8.9,
  iso: 160,
};

describe('tooBrightAtLowest', () => {
  it('says by how much, and to step back first where that would do', () => {
    const { advice, reachable, missStops } = tooBrightAtLowest(case_);
    expect([reachable, missStops]).toEqual([false, 2.3]);
    expect(advice[0]).toBe(
      'At its lowest level, 5 %, and with a count of 1, it is still 2.3 stops too bright at 4.0 m, level.',
    );
    expect(advice[1]).toBe('Step back to 8.9 m.');
    expect(advice[2]).toBe('Or hang 2.3 stops of cloth or ND over it.');
  });

  it('begins with cloth where no step back does it, and leaves out an ISO that no camera has', () => {
    const { advice } = tooBrightAtLowest({ ...case_, standBackMetres: null, iso: 20 });
    expect(advice[1]).toBe('Hang 2.3 stops of cloth or ND over it.');
    expect(advice.some((line) => line.includes('Step back'))).toBe(false);
    expect(advice.some((line) => line.includes('ISO'))).toBe(false);
  });
});

import { describe, expect, it } from 'vitest';
import { dustPhase, moonFace } from '../../../core/sky/moon-face.ts';
import { fakeSky } from './fake-sky.ts';

describe('dustPhase', () => {
  it('is 1 at full, 0 at new, and 1 - ln(1 + sqrt 2) / sqrt 2 at the quarters (closed form)', () => {
    expect(dustPhase(0)).toBe(1);
    expect(dustPhase(Math.PI)).toBe(0);
    expect(dustPhase(Math.PI / 2)).toBeCloseTo(1 - Math.log(1 + Math.SQRT2) / Math.SQRT2, 12);
    // and runs into both ends
    expect(dustPhase(1e-5)).toBeCloseTo(1, 8);
    expect(dustPhase(Math.PI - 1e-4)).toBeCloseTo(0, 6);
  });
});

describe('moonFace', () => {
  it('at new is lit by the full earth alone, evenly: 0.12 of 14.6 lx over pi', () => {
    const { luminanceAt } = moonFace(fakeSky({ moon: [40, 90], phaseDegrees: 180 }));
    for (const [x, y] of [
      [0, 0],
      [0.7, -0.6],
      [-1, 0],
    ] as const)
      expect(luminanceAt(x, y)).toBeCloseTo((0.12 * 14.6) / Math.PI, 2);
  });
});

import { describe, expect, it } from 'vitest';
import { levelIlluminance } from '../../../core/sky/level-illuminance.ts';

describe('levelIlluminance', () => {
  it('is pi times the luminance of an even sky (rel 1e-12)', () => {
    expect(levelIlluminance(() => 0.002) / (Math.PI * 0.002)).toBeCloseTo(1, 12);
  });

  it('is 7/9 pi times the zenith luminance of the CIE overcast sky, L(1 + 2 sin h)/3 (ISO 15469; rel 0.2 %)', () => {
    // integral of (1 + 2 cos z)/3 cos z over the hemisphere: pi (1/3 + 4/9)
    expect(levelIlluminance(([, y]) => (1 + 2 * y) / 3) / ((7 / 9) * Math.PI)).toBeCloseTo(1, 2.7);
  });

  it('does not turn with a sky that is brighter to one side (rel 0.5 %)', () => {
    const toSide = (bearing: number) =>
      levelIlluminance(([x, , z]) => 1 + Math.max(x * Math.sin(bearing) - z * Math.cos(bearing), 0) ** 4);
    const first = toSide(0);
    for (const bearing of [0.3, 1, 2.5, 4]) expect(toSide(bearing) / first).toBeCloseTo(1, 2.3);
  });
});

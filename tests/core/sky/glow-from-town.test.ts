import { describe, expect, it } from 'vitest';
import { glowFromTown } from '../../../core/sky/glow-from-town.ts';

describe('glowFromTown', () => {
  it('goes on by the last slope to 250 km and back by the first to 8 km, and is held beyond', () => {
    // straight in both logarithms: half the logarithm of the way, half that of the light
    const million = (km: number) => glowFromTown(1e6, km);
    expect(million(Math.sqrt(100 * 250)) ** 2).toBeCloseTo(million(100) * million(250), 12);
    expect(million(100 * (100 / 60)) / million(100)).toBeCloseTo(million(100) / million(60), 9);
    expect(million(15 * (15 / 20)) / million(15)).toBeCloseTo(million(15) / million(20), 9);
    expect(million(900)).toBe(million(250));
    expect(million(1)).toBe(million(8));
  });

  it('is in proportion to people', () => {
    expect(glowFromTown(0, 50)).toBe(0);
    expect(glowFromTown(3e5, 130)).toBeCloseTo(0.3 * glowFromTown(1e6, 130), 15);
  });
});

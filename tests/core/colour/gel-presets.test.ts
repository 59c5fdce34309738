import { describe, expect, it } from 'vitest';
import { correlatedColourTemperature } from '../../../core/colour/cct.ts';
import { lightThroughGels } from '../../../core/colour/gel.ts';
import { type GelPreset, gelPresets } from '../../../core/colour/gel-presets.ts';

const named = (part: string): GelPreset[] => gelPresets.filter(({ name }) => name.includes(part));
const duvThrough = (gel: GelPreset) => {
  const found = correlatedColourTemperature(lightThroughGels(5600, [gel]).chromaticity);
  if (!found) throw new Error(`${gel.name} has no colour temperature`);
  return found.duv;
};

describe('gelPresets', () => {
  it('have names of their own, and each lets some light through but not all', () => {
    expect(new Set(gelPresets.map(({ name }) => name)).size).toBe(gelPresets.length);
    for (const { transmission } of gelPresets) {
      expect(transmission).toBeGreaterThan(0);
      expect(transmission).toBeLessThan(1);
    }
  });

  it.each([
    ['CTO', 5, 1],
    ['CTB', 4, -1],
  ])('%s: %d strengths, the stronger the farther it shifts and the more light it takes', (kind, count, sign) => {
    const gels = named(kind);
    expect(gels.length).toBe(count);
    for (const [i, gel] of gels.entries()) {
      const weaker = gels[i - 1];
      expect(gel.shiftMired * sign).toBeGreaterThan(weaker ? weaker.shiftMired * sign : 0);
      expect(gel.transmission).toBeLessThan(weaker?.transmission ?? 1);
    }
  });

  it.each([
    ['plus green', 1],
    ['minus green', -1],
  ])('%s: four strengths, the stronger the farther off the white locus to its side', (kind, sign) => {
    const gels = named(kind);
    expect(gels.length).toBe(4);
    const white = correlatedColourTemperature(lightThroughGels(5600, []).chromaticity)?.duv ?? Number.NaN;
    let before = 0;
    for (const gel of gels) {
      const moved = (duvThrough(gel) - white) * sign;
      expect(moved).toBeGreaterThan(before);
      before = moved;
    }
  });

  it('minus green undoes plus green of the same strength: only light is lost (abs 1e-12)', () => {
    const plain = lightThroughGels(5600, []);
    const [plus, minus] = [named('plus green'), named('minus green')];
    for (const [i, gel] of plus.entries()) {
      const both = lightThroughGels(5600, [gel, minus[i] as GelPreset]);
      both.tint.forEach((v, c) => {
        expect(Math.abs(v - (plain.tint[c] as number))).toBeLessThanOrEqual(1e-12);
      });
      expect(both.transmission).toBeLessThan(plain.transmission);
    }
  });

  it('ND takes light and leaves the colour alone', () => {
    const gels = named('ND');
    expect(gels.length).toBe(3);
    for (const gel of gels) expect(lightThroughGels(3200, [gel]).tint).toEqual(lightThroughGels(3200, []).tint);
  });
});

import { describe, expect, it } from 'vitest';
import { twilight } from '../../../core/sky/twilight.ts';
import { twilightAloneIlluminance, twilightIlluminance } from '../../../core/sky/twilight-illuminance.ts';
import { twilightZenithLuminance } from '../../../core/sky/twilight-zenith.ts';
import { radiansFromDegrees } from '../../../core/units/angle.ts';
import { directionAt, fakeSky } from './fake-sky.ts';

describe('twilight with the sun straight up', () => {
  it('counts as on the horizon, and is finite and alike to all sides, as the sun has none', () => {
    const add = twilight({ ...fakeSky({ sun: [90, 0] }).sun, toward: [0, 1, 0] });
    const at = (bearing: number): number[] => {
      const sum: [number, number, number] = [0, 0, 0];
      add?.(directionAt(30, bearing), sum);
      return sum;
    };
    expect(at(0)[1]).toBeGreaterThan(0);
    for (const bearing of [77, 180, 300]) expect(at(bearing)).toEqual(at(0).map((v) => expect.closeTo(v, 9)));
  });
});

describe('twilight under the horizon', () => {
  it('leaves night’s own light at -18 degrees and below, 6.4e-4 lx (rel 2 %; Seidelmann 1992)', () => {
    const end = twilightIlluminance(radiansFromDegrees(-18));
    expect(Math.abs(end / 6.4e-4 - 1)).toBeLessThan(0.02);
    for (const degrees of [-18.001, -30, -90]) expect(twilightIlluminance(radiansFromDegrees(degrees))).toBe(end);
  });

  it.each([
    ['on the ground', twilightAloneIlluminance],
    ['straight up', twilightZenithLuminance],
  ])('of its own gives nothing %s from -21 degrees down, and less and less before', (_, lightAt) => {
    for (const degrees of [-21, -25, -90]) expect(lightAt(radiansFromDegrees(degrees))).toBe(0);
    const falling = [-6, -9, -12, -15, -18, -20.9].map((degrees) => lightAt(radiansFromDegrees(degrees)));
    falling.forEach((light, i) => {
      expect(light).toBeGreaterThan(0);
      if (i > 0) expect(light).toBeLessThan((falling[i - 1] as number) / 5);
    });
  });
});

import { describe, expect, it } from 'vitest';
import { unlitLevel } from '../../../core/readings/unlit-level.ts';
import { hourPlace } from '../support/hours.ts';
import { readNight } from '../support/read-night.ts';

describe('unlitLevel', () => {
  it('is H S / 10 with H = 0.65 L t / N^2 of 18 % level ground (ISO 12232), moon and sky together (abs 0.01)', () => {
    const moonlight = { bearingDegrees: 100, altitudeDegrees: 30, illuminanceLux: 0.2 };
    const { worldFrame } = readNight({
      place: { moonlight, skylight: { illuminanceLux: 0.01 } },
      frame: { seconds: 15.5, aperture: 2.8, iso: 1600 },
    });
    const luminance = (0.18 * (0.2 * 0.5 + 0.01)) / Math.PI;
    // marked f/2.8 is exactly 2^1.5
    const ratio = ((0.65 * luminance * 15.5) / 8) * (1600 / 10);
    expect(Math.abs((unlitLevel(worldFrame) ?? Number.NaN) - Math.log2(ratio))).toBeLessThanOrEqual(0.01);
  });

  it('counts the sky of the hour as it lies on level ground: moonlit by 0.021 to 0.026 lx at the worked scene', () => {
    // direct 2.080e-2, Explanatory Supplement direct and sky 2.576e-2 (sky.md 3); the dark sky adds under 0.002
    const { worldFrame } = readNight({
      place: hourPlace('2026-08-20T20:30', { sky: { extinctionMagnitudes: 0.172 } }),
      frame: { seconds: 15.5, aperture: 2.8, iso: 1600 },
    });
    const levelOf = (lux: number) => Math.log2(((0.65 * ((0.18 * lux) / Math.PI) * 15.5) / 8) * 160);
    const level = unlitLevel(worldFrame) ?? Number.NaN;
    expect(level).toBeGreaterThan(levelOf(0.021));
    expect(level).toBeLessThan(levelOf(0.0276));
  });

  it('is null in the dark', () => {
    expect(unlitLevel(readNight({ place: { skylight: { illuminanceLux: 0 } } }).worldFrame)).toBeNull();
  });
});

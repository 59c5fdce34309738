import { describe, expect, it } from 'vitest';
import { moonReading } from '../../../core/readings/moon-reading.ts';
import { degreesApart } from '../../../core/units/angle.ts';
import { boxAt } from '../support/cautions.ts';
import { relativeError } from '../support/errors.ts';
import { cameraToward, hourPlace } from '../support/hours.ts';
import { readNight } from '../support/read-night.ts';

describe('moonReading', () => {
  const place = (northDegrees: number) =>
    hourPlace('2026-08-20T20:30', { northDegrees, sky: { extinctionMagnitudes: 0.172 } });
  it.each([0, 40])(
    'has bearings true and in the scene, and light on level ground by Allen’s law: scene’s north at %d degrees',
    (north) => {
      const { world, setup } = readNight({ place: place(north) });
      const moon = moonReading(world, setup.place);
      expect(Math.abs((moon?.altitudeDegrees ?? 0) - 56.03)).toBeLessThanOrEqual(0.03);
      expect(degreesApart(moon?.bearingDegrees ?? Number.NaN, 272.9)).toBeLessThanOrEqual(0.03);
      expect(degreesApart(moon?.sceneBearingDegrees ?? Number.NaN, 272.9 - north)).toBeLessThanOrEqual(0.03);
      expect(degreesApart(moon?.shadowBearingDegrees ?? Number.NaN, 92.9)).toBeLessThanOrEqual(0.03);
      expect(degreesApart(moon?.shadowSceneBearingDegrees ?? Number.NaN, 92.9 - north)).toBeLessThanOrEqual(0.03);
      // a post's shadow: similar triangles
      expect(moon?.shadowLengthPerHeight).toBeCloseTo(1 / Math.tan((56.03 * Math.PI) / 180), 2);
      // sky.md 3: 2.080e-2 lx on level ground, Allen's phase law and k = 0.172; Kasten and Young's air mass here (rel 2 %)
      expect(relativeError(moon?.levelLux ?? 0, 2.08e-2)).toBeLessThanOrEqual(0.02);
    },
  );

  it('is in the frame up to the picture’s edge, and not behind a wall', () => {
    const frameTo = (altitude: number, subjects: object[] = []) => {
      const { world, setup } = readNight({ place: place(0), camera: cameraToward(272.9, altitude), subjects });
      return moonReading(world, setup.place)?.isInFrame;
    };
    // half the height of the picture is atan(12 / 24) = 26.57 degrees; the moon is seen 56.03 degrees up
    expect(frameTo(56.03 - 26.4)).toBe(true);
    expect(frameTo(56.03 - 26.7)).toBe(false);
    expect(frameTo(40, [boxAt('wall', [-3, 0, 0], [0.5, 8, 12])])).toBe(false);
  });

  it('reads a plain moon too, its bearings from the scene’s north, and none where there is none', () => {
    const moonlight = { bearingDegrees: 100, altitudeDegrees: 30, illuminanceLux: 0.2 };
    const { world, setup } = readNight({ place: { northDegrees: 30, moonlight } });
    const moon = moonReading(world, setup.place);
    expect(moon?.bearingDegrees).toBeCloseTo(130, 9);
    expect(moon?.shadowSceneBearingDegrees).toBeCloseTo(280, 9);
    expect(moon?.shadowLengthPerHeight).toBeCloseTo(Math.sqrt(3), 9);
    expect(moon?.levelLux).toBeCloseTo(0.1, 9);
    expect(moonReading(readNight({ place: {} }).world, setup.place)).toBeNull();
  });
});

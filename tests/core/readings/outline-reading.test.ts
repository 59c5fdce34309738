import { describe, expect, it } from 'vitest';
import { outlineReading } from '../../../core/readings/outline-reading.ts';
import { silhouetteOf } from '../../../core/readings/silhouette.ts';
import type { WorldFrame } from '../../../core/world/world.ts';
import { blackGround, boxAt } from '../support/cautions.ts';
import { hourPlace } from '../support/hours.ts';
import { onlyPassOf } from '../support/read-pass.ts';
import { onePassSetup } from '../support/scenes.ts';

/** A wall 10 m off that stands before the sky but for its foot, lit by a lamp from behind the camera or by none. */
const wallUnder = (place: object, reflectance: number, levelPercent = 0) => {
  const { world, worldFrame } = onlyPassOf(
    onePassSetup({
      camera: { position: [0, -10, 1.5], aim: [0, 0, 2.5] },
      ground: blackGround,
      place,
      subjects: [boxAt('wall', [0, 0.5, 0], [4, 1, 4], reflectance)],
      pass: { waypoints: [{ position: [0, -10, 2], aim: [0, 0, 2] }], levelPercent },
    }),
  );
  return { world, worldFrame, read: (frame: WorldFrame = worldFrame) => outlineReading(world, frame, 0) };
};
const even = { skylight: { illuminanceLux: 0.001 } };

describe('outlineReading', () => {
  it.each([0.18, 0.5, 0.9])(
    'an even sky of E / pi is log2(2 / r) stops over an upright wall, which gets half of it: r = %d (abs 0.1)',
    (reflectance) => {
      const { skyOverUnlitStops } = wallUnder(even, reflectance).read() ?? {};
      expect(Math.abs((skyOverUnlitStops ?? Number.NaN) - Math.log2(2 / reflectance))).toBeLessThanOrEqual(0.1);
    },
  );

  it('a moon square on adds r M / pi (abs 0.1)', () => {
    // from the north side the moon is behind the wall, from the south before it: 1 degree up, cosine 1
    const lit = (bearingDegrees: number) =>
      wallUnder({ ...even, moonlight: { bearingDegrees, altitudeDegrees: 1, illuminanceLux: 0.004 } }, 0.5).read()
        ?.skyOverUnlitStops ?? Number.NaN;
    expect(Math.abs(lit(180) - Math.log2(0.001 / (0.5 * (0.0005 + 0.004))))).toBeLessThanOrEqual(0.1);
    expect(Math.abs(lit(0) - 2)).toBeLessThanOrEqual(0.1);
  });

  it('lamps count in the lit level alone; the sky stays', () => {
    const [dark, lit] = [wallUnder(even, 0.5).read(), wallUnder(even, 0.5, 100).read()];
    expect(lit?.skyStops).toBe(dark?.skyStops);
    expect(lit?.unlitStops).toBe(dark?.unlitStops);
    expect(lit?.skyOverLitStops).toBeLessThan((lit?.skyOverUnlitStops ?? 0) - 3);
    expect(dark?.litStops).toBeCloseTo(dark?.unlitStops ?? Number.NaN, 9);
  });

  it('is as bright as the frame makes it: a stop of ISO is a stop of both, and of no contrast', () => {
    const { worldFrame, read } = wallUnder(even, 0.5);
    const { exposure } = worldFrame;
    const [one, two] = [read(), read({ ...worldFrame, exposure: { ...exposure, iso: 2 * exposure.iso } })];
    expect((two?.skyStops ?? 0) - (one?.skyStops ?? 0)).toBeCloseTo(1, 9);
    expect((two?.unlitStops ?? 0) - (one?.unlitStops ?? 0)).toBeCloseTo(1, 9);
    expect(two?.skyOverUnlitStops).toBeCloseTo(one?.skyOverUnlitStops ?? Number.NaN, 9);
  });

  it('reads the sky of an hour right behind the outline: darker where a town’s glow is not', () => {
    // the camera looks to the scene's north; a town there, or behind the camera
    const town = (bearingDegrees: number) =>
      wallUnder(
        hourPlace('2026-08-11T20:30', {
          glowDomes: [{ bearingDegrees, luminanceAt10DegreesCdM2: 0.02, widthDegrees: 10 }],
        }),
        0.5,
      ).read()?.skyStops ?? Number.NaN;
    expect(town(0) - town(180)).toBeGreaterThan(3);
  });

  it('is null for what stands wholly before land', () => {
    const { world, worldFrame } = onlyPassOf(
      onePassSetup({
        camera: { position: [0, -10, 8], aim: [0, 0, 0] },
        place: even,
        subjects: [boxAt('stone', [0, 0, 0], [1, 1, 1])],
        pass: { waypoints: [{ position: [0, -10, 2], aim: [0, 0, 1] }] },
      }),
    );
    expect(outlineReading(world, worldFrame, 0)).toBeNull();
  });

  it('takes the share of the outline before the sky: all of it but what stands before land', () => {
    const { world, read } = wallUnder(even, 0.5);
    const { edge, sky } = silhouetteOf(world.stage, world.view, 0);
    // ground out to the horizon lies behind the wall's sides up to the eye's height, 1.5 m of 4; the top is 4 m wide
    const before = (4 + 2 * 2.5) / (4 + 2 * 4);
    expect(Math.abs(sky.length / edge.length - before)).toBeLessThanOrEqual(0.05);
    expect(read()?.skyShare).toBeCloseTo(sky.length / edge.length, 12);
  });
});

import { describe, it } from 'vitest';
import { trailPixels } from '../../../core/camera/star-trail.ts';
import { apply } from '../../../core/colour/matrix.ts';
import { apparentDirection } from '../../../core/sky/refraction.ts';
import { skyAt } from '../../../core/sky/sky-at.ts';
import type { SkyState } from '../../../core/sky/sky-state.ts';
import { packStars, unpackStars } from '../../../core/sky/star-catalogue.ts';
import { addMoon } from '../../../core/trace/moon-points.ts';
import { addStars, type SkyWay, skiesFor } from '../../../core/trace/sky-points.ts';
import { accuracySection } from '../support/accuracy.ts';
import { emptyCanvas, lightNear, size, viewToward, worked } from './sky-cameras.ts';

const { check } = accuracySection('Sky in the picture');
const source =
  'E = 2.54e-6 lx x 10^(-0.4 m) (sky.md 4.0, after Allen); extinction 0.172 x air mass of Kasten and Young 1989';
const degrees = 180 / Math.PI;

const kastenYoung = (altitudeDegrees: number): number =>
  1 / (Math.sin(altitudeDegrees / degrees) + 0.50572 * (altitudeDegrees + 6.07995) ** -1.6364);

/** Acrux-like stars at the worked scene: RA and Dec of J2000, degrees. */
const stars = [
  { name: 'in the south', ra: 186.65, dec: -63.1, magnitude: 0.77 },
  { name: 'near the horizon', ra: 213.92, dec: 19.18, magnitude: -0.05 },
  { name: 'faint, high up', ra: 258.0, dec: -40.0, magnitude: 7.5 },
];

const wayOf = (seconds: number, look: { bearing: number; altitude: number }, focal: number): SkyWay => {
  const count = skiesFor(seconds);
  const states = Array.from({ length: count }, (_, i) =>
    skyAt({
      ...worked,
      utcMilliseconds: worked.utcMilliseconds + (count > 1 ? (i / (count - 1)) * seconds * 1000 : 0),
    }),
  );
  return { frame: { view: viewToward(look, focal), ...size }, states, sigma: 0.7 };
};

describe('light of points: luminance times solid angle adds up to their illuminance (2 %)', () => {
  for (const { name, ra, dec, magnitude } of stars)
    for (const [focal, seconds] of [
      [14, 0],
      [14, 25],
      [24, 240],
      [50, 10],
      [50, 1200],
    ] as const)
      it(`a star ${name}, V ${magnitude}, ${focal} mm, ${seconds} s`, () => {
        const one = unpackStars(
          packStars([{ rightAscensionDegrees: ra, declinationDegrees: dec, magnitude, colourIndex: 0.6 }]),
        );
        const way = wayOf(seconds, { bearing: 0, altitude: 0 }, focal);
        // the camera looks at the middle of the trail, a little beside
        const middle = way.states[Math.floor(way.states.length / 2)] as SkyState;
        const [x, y, z] = apparentDirection(apply(middle.worldFromJ2000, [...one.directions] as never));
        const look = {
          bearing: Math.atan2(x, -z) * degrees + 100 / focal,
          altitude: Math.asin(y) * degrees - 60 / focal,
        };
        const turned = { ...way, frame: { view: viewToward(look, focal), ...size } };
        const canvas = emptyCanvas();
        addStars(canvas, turned, one);
        const { lux } = lightNear(canvas, turned.frame.view, [size.width / 2, size.height / 2], 2000);
        // while it trails it climbs or sinks: the mean of what gets through
        const through = way.states.map(({ worldFromJ2000 }) => {
          const [, sine] = apparentDirection(apply(worldFromJ2000, [...one.directions] as never));
          return 10 ** (-0.4 * 0.172 * kastenYoung(Math.asin(sine) * degrees));
        });
        const mean = through.reduce((sum, v) => sum + v, 0) / through.length;
        check({
          id: `light ${name}, ${focal} mm, ${seconds} s`,
          claim: `light of a star of V ${magnitude} ${name}, ${focal} mm, ${seconds} s`,
          source,
          unit: 'lx',
          expected: 2.54e-6 * 10 ** (-0.4 * magnitude) * mean,
          ours: lux,
          tolerance: { relative: 0.02 },
        });
      });

  it('the half moon at 24 and 50 mm is as bright as the law of its phase', () => {
    const input = { ...worked, utcMilliseconds: Date.UTC(2026, 7, 20, 10, 30) };
    const state = skyAt(input);
    const { moon } = state;
    const altitude = Math.asin(moon.towardSeen[1]) * degrees;
    const phase = moon.phaseRadians * degrees;
    const magnitude = -12.73 + 0.026 * phase + 4e-9 * phase ** 4;
    for (const focal of [24, 50]) {
      const look = { bearing: moon.bearingRadians * degrees + 5, altitude: altitude - 4 };
      const way: SkyWay = { frame: { view: viewToward(look, focal), ...size }, states: [state], sigma: 0.7 };
      const canvas = emptyCanvas();
      addMoon(canvas, way);
      const { lux } = lightNear(canvas, way.frame.view, [size.width / 2, size.height / 2], 2000);
      check({
        id: `light moon ${focal} mm`,
        claim: `light of the half moon's disc at ${focal} mm`,
        source: 'Krisciunas and Schaefer 1991 eq. 9 (phase), Kasten and Young 1989, k = 0.172',
        unit: 'lx',
        expected:
          2.54e-6 * 10 ** (-0.4 * (magnitude + 0.172 * kastenYoung(altitude))) * (384_400 / moon.distanceKm) ** 2,
        ours: lux,
        tolerance: { relative: 0.02 },
      });
    }
  });
});

describe('length of trails', () => {
  // sky.md 4.1: 25 s, 14 mm, 6 um: 4.25 px on the equator, 3.72 at the galactic centre, by full projection
  it.each([
    [0, 4.25],
    [-29, 3.72],
  ])('25 s at 14 mm and 6 um pixels, declination %d: %d px (1 %)', (dec, expected) => {
    check({
      id: `trail ${dec}`,
      claim: `trail in 25 s at 14 mm, 6 um, declination ${dec}`,
      source: 'sky.md 4.1 (full projection, computed independently)',
      unit: 'px',
      expected,
      ours: trailPixels(14, 25, 6, dec / degrees),
      tolerance: { relative: 0.01 },
    });
  });
});

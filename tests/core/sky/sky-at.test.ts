import { GeoMoon } from 'astronomy-engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { apply, type Matrix3, multiply } from '../../../core/colour/matrix.ts';
import { angleBetween, dot, length, type Vec3 } from '../../../core/geometry/vec.ts';
import { altitudeOf, directionFromBearing, trueBearing } from '../../../core/sky/frames-body.ts';
import { apparentDirection } from '../../../core/sky/refraction.ts';
import { skyAt } from '../../../core/sky/sky-at.ts';
import { degreesFromRadians, halfTurnRadians, radiansFromDegrees } from '../../../core/units/angle.ts';
import { skyInput } from '../support/sky-inputs.ts';

const anyInput = fc
  .record({
    latitude: fc.double({ min: -90, max: 90, noNaN: true }),
    longitude: fc.double({ min: -180, max: 180, noNaN: true }),
    instant: fc.integer({ min: Date.UTC(1950, 0, 1), max: Date.UTC(2100, 0, 1) }),
    north: fc.double({ min: 0, max: 360, noNaN: true }),
  })
  .map(({ latitude, longitude, instant, north }) => skyInput(latitude, longitude, instant, north));

const transpose = ([a, b, c]: Matrix3): Matrix3 => [
  [a[0], b[0], c[0]],
  [a[1], b[1], c[1]],
  [a[2], b[2], c[2]],
];
const wrongBy = (matrix: Matrix3): number =>
  Math.max(
    ...multiply(matrix, transpose(matrix)).flatMap((line, i) =>
      line.map((value, j) => Math.abs(value - (i === j ? 1 : 0))),
    ),
  );
const determinant = ([a, b, c]: Matrix3): number =>
  a[0] * (b[1] * c[2] - b[2] * c[1]) - a[1] * (b[0] * c[2] - b[2] * c[0]) + a[2] * (b[0] * c[1] - b[1] * c[0]);

describe('skyAt', () => {
  it('has rotations without mirroring for axes, everywhere and always (1e-12)', () => {
    fc.assert(
      fc.property(anyInput, (input) => {
        const { worldFromJ2000, worldFromGalactic, worldFromEcliptic } = skyAt(input);
        for (const matrix of [worldFromJ2000, worldFromGalactic, worldFromEcliptic]) {
          expect(wrongBy(matrix)).toBeLessThan(1e-12);
          expect(determinant(matrix)).toBeCloseTo(1, 11);
        }
      }),
      { numRuns: 60, seed: 8 },
    );
  });

  it('has unit directions that agree with height and true bearing, and seen ones not lower at the same bearing', () => {
    fc.assert(
      fc.property(anyInput, (input) => {
        const { sun, moon, planets } = skyAt(input);
        expect(planets.map(({ name }) => name)).toEqual(['Mercury', 'Venus', 'Mars', 'Jupiter', 'Saturn']);
        for (const body of [sun, moon, ...planets]) {
          expect(length(body.toward)).toBeCloseTo(1, 12);
          expect(length(body.towardSeen)).toBeCloseTo(1, 12);
          const again = directionFromBearing(body.bearingRadians, body.altitudeRadians, input.northRadians);
          expect(angleBetween(body.toward, again)).toBeLessThan(1e-9);
          expect(body.towardSeen[1]).toBeGreaterThanOrEqual(body.toward[1]);
          expect(angleBetween(body.toward, body.towardSeen)).toBeLessThan(radiansFromDegrees(0.66));
          expect(body.bearingRadians).toBeGreaterThanOrEqual(0);
          expect(body.bearingRadians).toBeLessThan(2 * Math.PI);
        }
      }),
      { numRuns: 60, seed: 9 },
    );
  });

  it('has the celestial pole of date at the height of the latitude, to true north (0.2°: precession to 2026)', () => {
    for (const latitude of [-60, -33, 5, 54, 80]) {
      const { worldFromJ2000 } = skyAt(skyInput(latitude, 149, '2026-08-11T10:30:00Z'));
      const pole: Vec3 = [0, Math.sin(radiansFromDegrees(latitude)), -Math.cos(radiansFromDegrees(latitude))];
      expect(degreesFromRadians(angleBetween(apply(worldFromJ2000, [0, 0, 1]), pole))).toBeLessThan(0.2);
    }
  });

  it('has the sun in the south at a northern noon, in the east in the morning, in the north at a southern noon', () => {
    const bearing = (latitude: number, instant: string) =>
      degreesFromRadians(skyAt(skyInput(latitude, 0, instant)).sun.bearingRadians);
    expect(Math.abs(bearing(54, '2026-03-20T12:07:00Z') - 180)).toBeLessThan(1);
    expect(Math.abs(bearing(54, '2026-03-20T06:07:00Z') - 90)).toBeLessThan(2);
    const southern = bearing(-33, '2026-03-20T12:07:00Z');
    expect(Math.min(southern, 360 - southern)).toBeLessThan(1);
  });

  it('turns every direction and no bearing with the scene’s north (1e-9)', () => {
    const [plain, turned] = [0, 70].map((north) => skyAt(skyInput(54, -2, '2026-10-09T21:30:00Z', north)));
    if (!plain || !turned) throw new Error('no sky');
    for (const [a, b] of [
      [plain.sun, turned.sun],
      [plain.moon, turned.moon],
    ] as const) {
      expect(b.bearingRadians).toBeCloseTo(a.bearingRadians, 9);
      expect(b.altitudeRadians).toBeCloseTo(a.altitudeRadians, 9);
      expect(halfTurnRadians(trueBearing(b.toward, 0) - a.bearingRadians)).toBeCloseTo(radiansFromDegrees(-70), 9);
    }
    expect(trueBearing(apply(turned.worldFromGalactic, [1, 0, 0]), radiansFromDegrees(70))).toBeCloseTo(
      trueBearing(apply(plain.worldFromGalactic, [1, 0, 0]), 0),
      9,
    );
  });

  it('has the sun on the ecliptic of J2000 (0.01°) and the way from moon to sun on the moon’s lit side', () => {
    fc.assert(
      fc.property(anyInput, (input) => {
        const { worldFromEcliptic, sun, moon } = skyAt(input);
        const pole = apply(worldFromEcliptic, [0, 0, 1]);
        expect(Math.abs(degreesFromRadians(Math.asin(dot(pole, sun.toward))))).toBeLessThan(0.02);
        // The sun is so far that it stands the same way from the moon as from here: within 0.16 degrees.
        expect(degreesFromRadians(angleBetween(moon.towardSun, sun.toward))).toBeLessThan(0.16);
        expect(moon.litShare).toBeCloseTo((1 - dot(moon.toward, moon.towardSun)) / 2, 9);
        expect(moon.phaseRadians + angleBetween(moon.toward, moon.towardSun)).toBeCloseTo(Math.PI, 9);
      }),
      { numRuns: 60, seed: 10 },
    );
  });

  it('has a moon of 356,000 to 407,000 km from the middle of the earth, and half a disc of 0.245 to 0.285°', () => {
    fc.assert(
      fc.property(anyInput, (input) => {
        const { moon } = skyAt(input);
        expect(moon.distanceKm).toBeGreaterThan(356_000 - 6400);
        expect(moon.distanceKm).toBeLessThan(407_000 + 6400);
        const half = degreesFromRadians(moon.radiusRadians);
        expect(half).toBeGreaterThan(0.24);
        expect(half).toBeLessThan(0.285);
      }),
      { numRuns: 60, seed: 11 },
    );
  });

  it('sees a low moon about a degree under where it stands from the middle of the earth (0.88 to 1.03°), one overhead the same', () => {
    let low = 0;
    for (let hour = 0; hour < 24 * 60; hour++) {
      const input = skyInput(20, 0, Date.UTC(2026, 7, 1, hour));
      const { moon, worldFromJ2000 } = skyAt(input);
      const { x, y, z } = GeoMoon(new Date(input.utcMilliseconds));
      const fromMiddle = altitudeOf(apply(worldFromJ2000, [x, y, z]));
      const height = degreesFromRadians(moon.altitudeRadians);
      const down = degreesFromRadians(fromMiddle) - height;
      if (Math.abs(height) < 10) {
        low++;
        expect(down).toBeGreaterThan(0.88);
        expect(down).toBeLessThan(1.03);
      }
      if (height > 80) expect(down).toBeLessThan(0.2);
    }
    expect(low).toBeGreaterThan(100);
  });
});

describe('apparentDirection', () => {
  it('leaves straight up and straight down as they are', () => {
    expect(apparentDirection([0, 1, 0])).toEqual([0, 1, 0]);
    expect(apparentDirection([0, -1, 0])).toEqual([0, -1, 0]);
  });

  it('keeps the order of heights from nadir to zenith', () => {
    const heights = Array.from({ length: 1801 }, (_, i) => -90 + i / 10);
    const seen = heights.map((height) => {
      const [, y] = apparentDirection(directionFromBearing(1, radiansFromDegrees(height), 0));
      return y;
    });
    for (let i = 1; i < seen.length; i++) expect(seen[i]).toBeGreaterThan(seen[i - 1] ?? Number.NaN);
  });
});

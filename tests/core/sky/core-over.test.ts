import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { coreOver } from '../../../core/sky/core-over.ts';
import { declinationOf, hourAngleOf, sightOf } from '../../../core/sky/hour-angle.ts';
import { hourSpans, type SkyWindow } from '../../../core/sky/hour-spans.ts';
import { nightProbe } from '../../../core/sky/night-probe.ts';
import { degreesFromRadians, halfTurnRadians, radiansFromDegrees } from '../../../core/units/angle.ts';
import { skyInput } from '../support/sky-inputs.ts';

const windowOf = (bearing: number, tolerance: number, lowest: number, highest: number): SkyWindow => ({
  bearingRadians: radiansFromDegrees(bearing),
  toleranceRadians: radiansFromDegrees(tolerance),
  lowestRadians: radiansFromDegrees(lowest),
  highestRadians: radiansFromDegrees(highest),
});
const isIn = (
  window: SkyWindow,
  { altitudeRadians, bearingRadians }: { altitudeRadians: number; bearingRadians: number },
) =>
  altitudeRadians >= window.lowestRadians &&
  altitudeRadians <= window.highestRadians &&
  Math.abs(halfTurnRadians(bearingRadians - window.bearingRadians)) <= window.toleranceRadians;

const degreesBetween = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const anyWindow = fc
  .tuple(degreesBetween(0, 360), degreesBetween(1, 200), degreesBetween(-20, 60), degreesBetween(1, 80))
  .map(([bearing, tolerance, lowest, more]) => windowOf(bearing, tolerance, lowest, lowest + more));

describe('hour angle and declination', () => {
  it('lead to a sight and back (1e-9)', () => {
    fc.assert(
      fc.property(degreesBetween(-179, 179), degreesBetween(-85, 85), degreesBetween(-85, 85), (h, d, l) => {
        const [hour, declination, latitude] = [h, d, l].map(radiansFromDegrees) as [number, number, number];
        const sight = sightOf(hour, declination, latitude);
        expect(Math.abs(halfTurnRadians(hourAngleOf(sight, latitude) - hour))).toBeLessThan(1e-9);
        expect(declinationOf(sight, latitude)).toBeCloseTo(declination, 9);
      }),
      { numRuns: 300, seed: 15 },
    );
  });
});

/** At how many of 1440 hour angles, looked at one by one, the spans say otherwise than the sight does. */
const wrongHours = (latitudeDegrees: number, declinationDegrees: number, window: SkyWindow): number => {
  const [latitude, declination] = [radiansFromDegrees(latitudeDegrees), radiansFromDegrees(declinationDegrees)];
  const spans = hourSpans(latitude, declination, window);
  const steps = 1440;
  let wrong = 0;
  for (let i = 0; i < steps; i++) {
    const hour = -Math.PI + ((i + 0.5) * 2 * Math.PI) / steps;
    const expected = isIn(window, sightOf(hour, declination, latitude));
    const found = spans.some(({ startRadians, lengthRadians }) => {
      const after = (((hour - startRadians) % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI);
      return after <= lengthRadians;
    });
    if (found !== expected) wrong++;
  }
  return wrong;
};

describe('hourSpans', () => {
  it('holds the same as looking at 1440 hour angles one by one', () => {
    const placeAndWindow = fc.tuple(degreesBetween(-90, 90), degreesBetween(-80, 80), anyWindow);
    fc.assert(
      fc.property(placeAndWindow, ([l, d, window]) => {
        expect(wrongHours(l, d, window)).toBe(0);
      }),
      { numRuns: 300, seed: 16 },
    );
  });

  it.each([
    [-80, -70, windowOf(90, 100, 10, 70)],
    [-80, -70, windowOf(120, 70, 50, 110)],
    [-80, -70, windowOf(240, 100, 30, 90)],
  ])('so too round the end of the turn: latitude %d, declination %d', (l, d, window) => {
    const [{ startRadians, lengthRadians } = { startRadians: 0, lengthRadians: 0 }] = hourSpans(
      radiansFromDegrees(l),
      radiansFromDegrees(d),
      window,
    );
    expect(startRadians + lengthRadians).toBeGreaterThan(Math.PI);
    expect(wrongHours(l, d, window)).toBe(0);
  });

  it('is the whole turn for what never leaves the window: a star that does not set, over all bearings', () => {
    const spans = hourSpans(radiansFromDegrees(60), radiansFromDegrees(80), windowOf(0, 180, 40, 80));
    expect(spans).toHaveLength(1);
    expect(spans[0]?.lengthRadians).toBeCloseTo(2 * Math.PI, 12);
    // its lowest is 50 degrees up, its highest 70
    expect(hourSpans(radiansFromDegrees(60), radiansFromDegrees(80), windowOf(0, 180, 71, 80))).toEqual([]);
  });
});

describe('coreOver', () => {
  /** Minutes of the whole time in which everything that is asked for is so, looked at one by one. */
  const slowMinutes = (
    input: ReturnType<typeof skyInput>,
    window: SkyWindow,
    days: number,
    moonDown: boolean,
  ): number => {
    const { core, sun, moonTopRadians } = nightProbe(input);
    let minutes = 0;
    for (let i = 0; i < days * 1440; i++) {
      const at = input.utcMilliseconds + i * 60_000;
      if (!isIn(window, core(at)) || degreesFromRadians(sun(at).altitudeRadians) >= -18) continue;
      if (!moonDown || degreesFromRadians(moonTopRadians(at)) < -34 / 60) minutes++;
    }
    return minutes;
  };

  it.each([
    ['a southern autumn', -33, 149, '2026-03-20T02:00:00Z', windowOf(120, 30, 10, 60), false],
    ['the same, moon down', -33, 149, '2026-03-20T02:00:00Z', windowOf(120, 30, 10, 60), true],
    ['a northern summer over a narrow gap', 40, -110, '2026-07-01T19:30:00Z', windowOf(200, 5, 5, 30), false],
    ['all bearings', 40, -110, '2026-09-01T19:30:00Z', windowOf(0, 180, 10, 90), true],
    ['far north in spring', 54, -2, '2026-04-10T12:00:00Z', windowOf(170, 15, 3, 20), false],
    ['a window over the zenith', -29, 20, '2026-06-10T10:40:00Z', windowOf(90, 90, 80, 90), false],
    ['polar night, over noon', -86, 0, '2026-06-10T12:00:00Z', windowOf(180, 40, 0, 90), false],
  ] as const)(
    '%s: twelve nights hold as many minutes as looking at each (1 minute an edge)',
    (_, latitude, longitude, instant, window, moonDown) => {
      const input = skyInput(latitude, longitude, instant);
      const nights = coreOver(input, { window, nights: 12, moonDown });
      const stands = nights.flatMap((night) => night.stands);
      const first = nights[0]?.noonMilliseconds ?? Number.NaN;
      expect(stands.length).toBeGreaterThan(5);
      const minutes = stands.reduce(
        (sum, { start, end }) => sum + (end.utcMilliseconds - start.utcMilliseconds) / 60_000,
        0,
      );
      const from = { ...input, utcMilliseconds: first };
      const days = (nights.at(-1)?.noonMilliseconds ?? Number.NaN) / 86_400_000 - first / 86_400_000 + 1;
      expect(Math.abs(minutes - slowMinutes(from, window, Math.round(days), moonDown))).toBeLessThan(2 * stands.length);
    },
  );

  it('begins and ends at an edge of the window or of the dark (0.01°), 400 nights', () => {
    const input = skyInput(40, -110, '2026-01-10T00:00:00Z');
    const window = windowOf(200, 10, 5, 40);
    const { sun } = nightProbe(input);
    const nights = coreOver(input, { window, nights: 400, moonDown: false });
    expect(nights.length).toBeGreaterThan(100);
    for (const { start, end } of nights.flatMap(({ stands }) => stands))
      for (const edge of [start, end]) {
        const away = [
          degreesFromRadians(Math.abs(halfTurnRadians(edge.bearingRadians - window.bearingRadians))) - 10,
          degreesFromRadians(edge.altitudeRadians) - 5,
          degreesFromRadians(edge.altitudeRadians) - 40,
          degreesFromRadians(sun(edge.utcMilliseconds).altitudeRadians) + 18,
        ];
        expect(Math.min(...away.map(Math.abs))).toBeLessThan(0.01);
      }
  });

  it('finds nothing where the core stays down, and nothing to the north of a northern place', () => {
    const all = windowOf(0, 180, 0, 90);
    expect(coreOver(skyInput(65, 20, '2026-01-10T00:00:00Z'), { window: all, nights: 400, moonDown: false })).toEqual(
      [],
    );
    const north = windowOf(0, 40, 0, 90);
    expect(coreOver(skyInput(40, 20, '2026-01-10T00:00:00Z'), { window: north, nights: 400, moonDown: false })).toEqual(
      [],
    );
  });
});

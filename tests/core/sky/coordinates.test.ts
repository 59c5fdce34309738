import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseCoordinates } from '../../../core/sky/coordinates.ts';
import { coordinatesText, degreesMinutesText, degreesText } from '../../../core/sky/coordinates-text.ts';

const [latitude, longitude] = [54 + 24.5 / 60, -(2 + 36 / 60)];

describe('parseCoordinates', () => {
  it.each([
    ['54.4, -2.6', 54.4, -2.6],
    ['54.4,-2.6', 54.4, -2.6],
    ['54.4 -2.6', 54.4, -2.6],
    ['+54.4 +2.6', 54.4, 2.6],
    ['54,-2', 54, -2],
    ['54.4\t2.6', 54.4, 2.6],
    ['54 24.5 N 2 36 W', latitude, longitude],
    ['54 24.5N, 2 36W', latitude, longitude],
    ['N54 24.5 W2 36', latitude, longitude],
    ['2 36 W 54 24.5 N', latitude, longitude],
    ["54°24'30\"N, 2°36'W", latitude, longitude],
    ['54°24′30″N 2°36′0″W', latitude, longitude],
    ['54º 24’ 30” N 2º 36’ W', latitude, longitude],
    ["54° 24' 30'' n 2° 36' w", latitude, longitude],
    ['54 24 30 2 36 0', latitude, -longitude],
    ['54 24.5, -2 36', latitude, longitude],
    ['54°24.5′ 2°36′', latitude, -longitude],
    ['S33.5 E149', -33.5, 149],
    ['33.5S149E', -33.5, 149],
    ['−33.5, 149', -33.5, 149],
    ['–33.5; 149', -33.5, 149],
    ['54,4; -2,6', 54.4, -2.6],
    ['54,4 -2,6', 54.4, -2.6],
    ['54,4, -2,6', 54.4, -2.6],
    ['54,4 N 2,6 W', 54.4, -2.6],
    ['(54.4, -2.6)', 54.4, -2.6],
    ['lat 54.4, lon -2.6', 54.4, -2.6],
    ['Latitude: 54.4 Longitude: -2.6', 54.4, -2.6],
    ['54.4 north 2.6 west', 54.4, -2.6],
    ['54 deg 24.5 min N, 2 deg 36 min W', latitude, longitude],
    // A geo URI, RFC 5870.
    ['geo:54.4,-2.6', 54.4, -2.6],
    ['-0.5, -0.25', -0.5, -0.25],
    ['0 30 S 0 15 W', -0.5, -0.25],
    ['90, 180', 90, 180],
    ['-90 -180', -90, -180],
  ])('reads %s (1e-12°)', (text, north, east) => {
    const read = parseCoordinates(text);
    expect(read).toMatchObject({ kind: 'coordinates' });
    if (read.kind !== 'coordinates') return;
    expect(read.latitudeDegrees).toBeCloseTo(north, 12);
    expect(read.longitudeDegrees).toBeCloseTo(east, 12);
  });

  it.each([
    ['', 'empty', 'Expected latitude and longitude'],
    ['   ', 'empty', 'Expected latitude and longitude'],
    ['54.4', 'two-needed', 'Expected latitude and longitude'],
    ['somewhere', 'form', 'Expected latitude and longitude'],
    ['54,4,2,6', 'form', 'by a semicolon'],
    ['54.4, -2.6, 120', 'form', 'Expected latitude and longitude'],
    ['54,44,22,66', 'form', 'by a semicolon'],
    ['5.4,40,3', 'form', 'by a semicolon'],
    ['54 -2 -3', 'form', 'Expected latitude and longitude'],
    ['54 2° 3°', 'form', 'Expected latitude and longitude'],
    ['54.4 - 2.6', 'form', 'Expected latitude and longitude'],
    ['54 24 30', 'form', 'Expected latitude and longitude'],
    ['91, 2', 'latitude', 'Latitude 91 is out of range: −90 to 90'],
    ['-90.5, 2', 'latitude', 'Latitude −90.5 is out of range'],
    ['54, 190', 'longitude', 'Longitude 190 is out of range: −180 to 180'],
    ['149, -33', 'latitude', 'Latitude 149 is out of range'],
    ['54 61, 2 3', 'minutes', '61 is out of range: minutes'],
    ['54 10 60, 2 3', 'minutes', '60 is out of range: seconds'],
    ['54.5 24, 2 3', 'form', 'fraction in the last number only'],
    ['-54 S, 2 E', 'sign', 'not both: -54 S'],
    ['+54 S, 2 E', 'sign', 'not both: +54 S'],
    ['54 N 3 S', 'letters', 'one of N and S, and one of E and W'],
    ['54° 24° N, 2 W', 'form', 'Expected degrees'],
  ])('refuses "%s": %s', (text, about, words) => {
    const fault = parseCoordinates(text);
    expect(fault).toMatchObject({ kind: 'fault', about });
    if (fault.kind === 'fault') expect(fault.words).toContain(words);
  });

  it('never throws, whatever is pasted, and never gives a place off the globe', () => {
    const pieces = fc.array(
      fc.constantFrom('5', '54', '.', ',', ';', ' ', '-', '−', '°', "'", '"', 'N', 'W', 'e', '\n', 'x'),
      { maxLength: 14 },
    );
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          pieces.map((all) => all.join('')),
        ),
        (text) => {
          const read = parseCoordinates(text);
          if (read.kind === 'fault') expect(read.words).toMatch(/\.$/);
          else {
            expect(Math.abs(read.latitudeDegrees)).toBeLessThanOrEqual(90);
            expect(Math.abs(read.longitudeDegrees)).toBeLessThanOrEqual(180);
          }
        },
      ),
      { numRuns: 2000, seed: 13 },
    );
  });
});

describe('coordinatesText', () => {
  it('writes degrees, and degrees and minutes with sixty carried over', () => {
    expect(coordinatesText(latitude, longitude, 'degrees')).toBe('54.40833° N, 2.60000° W');
    expect(coordinatesText(latitude, longitude, 'degrees-minutes')).toBe('54° 24.500′ N, 2° 36.000′ W');
    expect(degreesMinutesText(-33.999999, 'latitude')).toBe('34° 00.000′ S');
    expect(degreesText(-0.000001, 'longitude')).toBe('0.00000° E');
    expect(degreesMinutesText(-0.000001, 'latitude')).toBe('0° 00.000′ N');
  });

  const place = fc.tuple(
    fc.double({ min: -90, max: 90, noNaN: true }),
    fc.double({ min: -180, max: 180, noNaN: true }),
  );
  it.each([
    ['degrees', 5.1e-6],
    ['degrees-minutes', 8.4e-6],
  ] as const)('is read back in %s (half of the last place: %d°)', (form, tolerance) => {
    fc.assert(
      fc.property(place, ([north, east]) => {
        const read = parseCoordinates(coordinatesText(north, east, form));
        if (read.kind === 'fault') throw new Error(read.words);
        expect(Math.abs(read.latitudeDegrees - north)).toBeLessThan(tolerance);
        expect(Math.abs(read.longitudeDegrees - east)).toBeLessThan(tolerance);
      }),
      { numRuns: 500, seed: 14 },
    );
  });
});

import { describe, it } from 'vitest';
import { apply } from '../../../core/colour/matrix.ts';
import { bodyFromWay } from '../../../core/sky/frames-body.ts';
import { directionFromEquatorial, j2000FromGalactic } from '../../../core/sky/galactic.ts';
import { declinationOf, hourAngleOf } from '../../../core/sky/hour-angle.ts';
import { refractedAltitude } from '../../../core/sky/refraction.ts';
import { skyAt } from '../../../core/sky/sky-at.ts';
import type { SkyBody, SkyState } from '../../../core/sky/sky-state.ts';
import { degreesFromRadians, radiansFromDegrees, wrapDegrees } from '../../../core/units/angle.ts';
import { skyInput } from '../../core/support/sky-inputs.ts';
import { accuracySection, type Tolerance } from '../support/accuracy.ts';

const { check } = accuracySection('Sky: where things stand');
const meeus = (part: string) => `Meeus, Astronomical Algorithms, ${part}; from memory`;
const secondOfTime = 360 / 86_400;
const hoursAsDegrees = (h: number, m: number, s: number) => 15 * (h + m / 60 + s / 3600);

/** Right ascension and declination of date as the place sees them, degrees. */
const ofDate = ({ input, siderealRadians }: SkyState, body: SkyBody) => ({
  rightAscension: wrapDegrees(degreesFromRadians(siderealRadians - hourAngleOf(body, input.latitudeRadians))),
  declination: degreesFromRadians(declinationOf(body, input.latitudeRadians)),
});

/**
 * The sky at an instant at the place that has a right ascension and declination of date straight overhead, for there a
 * body stands as seen from the middle of the earth.
 */
const skyUnder = (instant: string, rightAscension: number, declination: number): SkyState => {
  const greenwich = degreesFromRadians(skyAt(skyInput(0, 0, instant)).siderealRadians);
  const flattening = 1 / 298.257;
  const tangent = Math.tan(radiansFromDegrees(declination)) / (1 - flattening) ** 2;
  const longitude = wrapDegrees(rightAscension - greenwich + 180) - 180;
  return skyAt(skyInput(degreesFromRadians(Math.atan(tangent)), longitude, instant));
};

const row = (
  id: string,
  claim: string,
  source: string,
  unit: string,
  expected: number,
  ours: number,
  tolerance: Tolerance,
) => check({ id, claim, source, unit, expected, ours, tolerance });

describe('turn of the earth', () => {
  it.each([
    // Example 12.b gives mean time only; what nutation adds is that of example 12.a, of the same day.
    ['12.a', '1987-04-10T00:00:00Z', hoursAsDegrees(13, 10, 46.1351)],
    ['12.b', '1987-04-10T19:21:00Z', hoursAsDegrees(8, 34, 57.0896 - 0.2317)],
  ] as const)('Meeus %s: apparent sidereal time at Greenwich (0.02 s)', (example, instant, expected) => {
    const ours = degreesFromRadians(skyAt(skyInput(0, 0, instant)).siderealRadians);
    const unit = '°';
    row(`s1 ${example}`, `apparent sidereal time, ${instant}`, meeus(`example ${example}`), unit, expected, ours, {
      absolute: 0.02 * secondOfTime,
    });
  });
});

describe('sun, moon and a planet', () => {
  it('Meeus 13.b: Venus over a place (0.003° in height: the example leaves 6.5″ of parallax out; 0.001° in bearing)', () => {
    const sky = skyAt(skyInput(38 + 55 / 60 + 17 / 3600, -(77 + 3 / 60 + 56 / 3600), '1987-04-10T19:21:00Z'));
    const venus = sky.planets.find(({ name }) => name === 'Venus');
    const [height, bearing] = [venus?.altitudeRadians ?? Number.NaN, venus?.bearingRadians ?? Number.NaN];
    const source = meeus('example 13.b');
    row('s2', 'height of Venus', source, '°', 15.1249, degreesFromRadians(height), { absolute: 0.003 });
    row('s2', 'bearing of Venus', source, '°', 248.0337, degreesFromRadians(bearing), { absolute: 0.001 });
  });

  it('Meeus 47.a and 48.a: the moon of 1992-04-12 (0.002°, 30 km, phase angle 0.01°, lit share 0.0005)', () => {
    const sky = skyUnder('1992-04-11T23:59:01Z', 134.68847, 13.768368);
    const { rightAscension, declination } = ofDate(sky, sky.moon);
    const earthKm = 6378.14 * (0.9983271 + 0.0016764 * Math.cos(2 * sky.input.latitudeRadians));
    const phase = degreesFromRadians(sky.moon.phaseRadians);
    const position = meeus('example 47.a');
    row('s3', 'right ascension of the moon', position, '°', 134.68847, rightAscension, { absolute: 0.002 });
    row('s3', 'declination of the moon', position, '°', 13.768368, declination, { absolute: 0.002 });
    row('s3', 'distance of the moon', position, 'km', 368409.7, sky.moon.distanceKm + earthKm, { absolute: 30 });
    row('s4', 'phase angle of the moon', meeus('example 48.a'), '°', 69.0756, phase, { absolute: 0.01 });
    row('s4', 'lit share of the moon', meeus('example 48.a'), '', 0.6786, sky.moon.litShare, { absolute: 0.0005 });
  });

  it('Meeus 25.b: the sun of 1992-10-13 (1″)', () => {
    const [expectedAscension, expectedDeclination] = [hoursAsDegrees(13, 13, 30.763), -7.783817];
    const sky = skyUnder('1992-10-12T23:59:01Z', expectedAscension, expectedDeclination);
    const { rightAscension, declination } = ofDate(sky, sky.sun);
    const source = meeus('example 25.b');
    row('s5', 'right ascension of the sun', source, '°', expectedAscension, rightAscension, { absolute: 1 / 3600 });
    row('s5', 'declination of the sun', source, '°', expectedDeclination, declination, { absolute: 1 / 3600 });
  });

  it('solar position algorithm, worked example: 2003-10-17 at 39.742476, −105.1786 (0.001°)', () => {
    const { sun } = skyAt(skyInput(39.742476, -105.1786, '2003-10-17T19:30:30Z'));
    const source = 'Reda and Andreas, NREL/TP-560-34302, worked example; from memory';
    const [height, bearing] = [degreesFromRadians(sun.altitudeRadians), degreesFromRadians(sun.bearingRadians)];
    row('s6', 'height of the sun', source, '°', 39.872046, height, { absolute: 0.001 });
    row('s6', 'bearing of the sun', source, '°', 194.340241, bearing, { absolute: 0.001 });
  });
});

describe('axes of the stars', () => {
  it('Meeus 21.b: theta Persei, precessed to 2028-11-13.19, with nutation (0.5″)', () => {
    const sky = skyAt(skyInput(50, 10, Date.UTC(2028, 10, 13) + 0.19 * 86_400_000));
    const star = directionFromEquatorial(41.054063, 49.22775);
    const { rightAscension, declination } = ofDate(sky, bodyFromWay(apply(sky.worldFromJ2000, star), 0));
    const source = `${meeus('example 21.b')}; his nutation added`;
    row('s7', 'right ascension of theta Persei', source, '°', 41.55165, rightAscension, { absolute: 0.5 / 3600 });
    row('s7', 'declination of theta Persei', source, '°', 49.35021, declination, { absolute: 0.5 / 3600 });
  });

  it('galactic axes in J2000 are those of the Hipparcos catalogue (1e-9); the centre is at 266.40500, −28.93617 (1e-5°)', () => {
    const source = 'ESA SP-1200 (1997), volume 1, equation 1.5.11; from memory';
    const published = [
      [-0.0548755604, 0.4941094279, -0.867666149],
      [-0.8734370902, -0.44482963, -0.1980763734],
      [-0.4838350155, 0.7469822445, 0.4559837762],
    ];
    for (const [i, line] of published.entries())
      for (const [j, expected] of line.entries()) {
        const ours = j2000FromGalactic[i]?.[j] ?? Number.NaN;
        row('s8', `galactic axes, element ${i + 1}, ${j + 1}`, source, '', expected, ours, { absolute: 1e-9 });
      }
    const [x, y, z] = apply(j2000FromGalactic, [1, 0, 0]);
    const ascension = wrapDegrees(degreesFromRadians(Math.atan2(y, x)));
    const centre = 'IAU 1958 system at J2000; number computed';
    row('s8', 'right ascension of the galactic centre', centre, '°', 266.405, ascension, { absolute: 1e-5 });
    row('s8', 'declination of the galactic centre', centre, '°', -28.93617, degreesFromRadians(Math.asin(z)), {
      absolute: 1e-5,
    });
  });
});

describe('refraction', () => {
  it('Meeus 16.a: what is seen at 0.5° is 28.754′ lower (0.1′)', () => {
    let height = radiansFromDegrees(0.5);
    for (let pass = 0; pass < 40; pass++) height -= refractedAltitude(height) - radiansFromDegrees(0.5);
    const ours = 30 - degreesFromRadians(height) * 60;
    row('s9', 'refraction at a seen height of 0.5°', meeus('example 16.a'), '′', 28.754, ours, { absolute: 0.1 });
  });

  it('34′ under the horizon is seen on it (0.5′, almanac practice)', () => {
    const ours = degreesFromRadians(refractedAltitude(radiansFromDegrees(-34 / 60))) * 60;
    row(
      's9',
      'seen height of what is 34′ under the horizon',
      'Explanatory Supplement to the Astronomical Almanac: 34′ at the horizon; from memory',
      '′',
      0,
      ours,
      {
        absolute: 0.5,
      },
    );
  });
});

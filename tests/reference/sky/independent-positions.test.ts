import refraction from 'astronomia/refraction';
import { describe, expect, it } from 'vitest';
import { apply } from '../../../core/colour/matrix.ts';
import { seededRandom } from '../../../core/geometry/random.ts';
import { angleBetween } from '../../../core/geometry/vec.ts';
import { bodyFromWay, directionFromBearing } from '../../../core/sky/frames-body.ts';
import { directionFromEquatorial, j2000FromGalactic } from '../../../core/sky/galactic.ts';
import { refractedAltitude } from '../../../core/sky/refraction.ts';
import { skyAt } from '../../../core/sky/sky-at.ts';
import type { Planet, SkyBody } from '../../../core/sky/sky-state.ts';
import { degreesFromRadians, radiansFromDegrees } from '../../../core/units/angle.ts';
import { skyInput } from '../../core/support/sky-inputs.ts';
import { accuracySection } from '../support/accuracy.ts';
import { type OraclePlanetName, oraclePlanet, oraclePlanetNames } from './oracle-planet-positions.ts';
import { type OracleSight, oracleMoon, oracleStar, oracleSun } from './oracle-positions.ts';

const { check } = accuracySection('Sky: an independent library');
const source = 'astronomia 4.2.0 (formulas of Meeus, Astronomical Algorithms), run in the test';
const cases = 200;

/** Places even over the globe, instants even over the years 2000 to 2050. */
const scenes = (() => {
  const random = seededRandom(20261009);
  return Array.from({ length: cases }, () => {
    const latitude = degreesFromRadians(Math.asin(2 * random() - 1));
    const longitude = 360 * random() - 180;
    return { input: skyInput(latitude, longitude, Date.UTC(2000, 0, 1) + random() * 50 * 365.25 * 86_400_000), random };
  });
})();

/** How far our body is from where the oracle has it, degrees. */
const apart = (body: SkyBody, { altitudeRadians, bearingRadians }: OracleSight): number =>
  degreesFromRadians(angleBetween(body.toward, directionFromBearing(bearingRadians, altitudeRadians, 0)));

const planetOf = (name: OraclePlanetName, { input }: (typeof scenes)[number]): Planet => {
  const planet = skyAt(input).planets.find((one) => one.name === name);
  if (!planet) throw new Error(`no ${name}`);
  return planet;
};

const checkWorst = (id: string, claim: string, apartDegrees: readonly number[]): void => {
  expect(apartDegrees).toHaveLength(cases);
  const text = `${claim}: farthest from the oracle in ${cases} places and instants`;
  check({
    id,
    claim: text,
    source,
    unit: '°',
    expected: 0,
    ours: Math.max(...apartDegrees),
    tolerance: { absolute: 0.01 },
  });
};

describe('against an independent library, 200 places and instants from 2000 to 2050, seed 20261009', () => {
  const placeOf = ({ input }: (typeof scenes)[number]) =>
    [new Date(input.utcMilliseconds), input.latitudeRadians, input.longitudeRadians] as const;

  it('the sun stands within 0.01°', () => {
    checkWorst(
      's10',
      'sun',
      scenes.map((scene) => apart(skyAt(scene.input).sun, oracleSun(...placeOf(scene)))),
    );
  });

  it('the moon stands within 0.01°', () => {
    checkWorst(
      's10',
      'moon',
      scenes.map((scene) => apart(skyAt(scene.input).moon, oracleMoon(...placeOf(scene)))),
    );
  });

  it('stars stand within 0.01°', () => {
    const starApart = (scene: (typeof scenes)[number], ascension: number, declination: number) => {
      const way = apply(skyAt(scene.input).worldFromJ2000, directionFromEquatorial(ascension, declination));
      const sight = oracleStar(radiansFromDegrees(ascension), radiansFromDegrees(declination), ...placeOf(scene));
      return apart(bodyFromWay(way, 0), sight);
    };
    checkWorst(
      's10',
      'a star anywhere',
      scenes.map((scene) =>
        starApart(scene, scene.random() * 360, degreesFromRadians(Math.asin(2 * scene.random() - 1))),
      ),
    );
    const [x, y, z] = apply(j2000FromGalactic, [1, 0, 0]);
    const [ascension, declination] = [degreesFromRadians(Math.atan2(y, x)), degreesFromRadians(Math.asin(z))];
    checkWorst(
      's10',
      'centre of the Milky Way',
      scenes.map((scene) => starApart(scene, ascension, declination)),
    );
  });

  it.each(oraclePlanetNames)('%s stands within 0.01°', (name) => {
    const worst = scenes.map((scene) => apart(planetOf(name, scene), oraclePlanet(name, ...placeOf(scene))));
    checkWorst('s10', name, worst);
  });

  it.each(oraclePlanetNames.filter((name) => name !== 'Saturn'))(
    '%s is as bright as the almanac formula of 1984 has it, phase angles up to 120° (0.3 mag)',
    (name) => {
      const errors = scenes.flatMap((scene) => {
        const { magnitude, phaseRadians } = oraclePlanet(name, ...placeOf(scene));
        if (magnitude === null || degreesFromRadians(phaseRadians) > 120) return [];
        return [Math.abs(planetOf(name, scene).magnitude - magnitude)];
      });
      expect(errors.length).toBeGreaterThan(120);
      check({
        id: 's17',
        claim: `magnitude of ${name}: worst of ${errors.length}`,
        source: 'Astronomical Almanac formulas in Meeus, chapter 41 (astronomia 4.2.0), run in the test',
        unit: 'mag',
        expected: 0,
        ours: Math.max(...errors),
        tolerance: { absolute: 0.3 },
      });
    },
  );
});

describe('refraction against an independent library', () => {
  it.each([0, 0.5, 1, 2, 5, 10, 30, 60])('Saemundsson at a true height of %d° (1e-6°)', (height) => {
    const ours = degreesFromRadians(refractedAltitude(radiansFromDegrees(height))) - height;
    const expected = degreesFromRadians(refraction.saemundsson(radiansFromDegrees(height)));
    check({
      id: 's11',
      claim: `refraction at a true height of ${height}°`,
      source,
      unit: '°',
      expected,
      ours,
      tolerance: { absolute: 1e-6 },
    });
  });

  it.each([1, 5, 10, 20, 45])('leads back to Bennett’s formula for the seen height %d° (0.1′)', (height) => {
    const lift = refraction.bennett(radiansFromDegrees(height));
    const ours = degreesFromRadians(refractedAltitude(radiansFromDegrees(height) - lift)) * 60;
    const text = 'Bennett (1982) in the formulas of Meeus, run in the test';
    check({
      id: 's11',
      claim: `seen height of ${height}° by way of the true one`,
      source: text,
      unit: '′',
      expected: height * 60,
      ours,
      tolerance: { absolute: 0.1 },
    });
  });
});

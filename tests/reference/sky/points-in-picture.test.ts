import { Body, DefineStar, Equator, Horizon, MakeTime, Observer } from 'astronomy-engine';
import { describe, expect, it } from 'vitest';
import { packedStars } from '../../../app/build/packed-stars.ts';
import { skyAt } from '../../../core/sky/sky-at.ts';
import type { SkyInput } from '../../../core/sky/sky-input.ts';
import { packStars, type StarCatalogue, unpackStars } from '../../../core/sky/star-catalogue.ts';
import { addMoon } from '../../../core/trace/moon-points.ts';
import { addStars, type SkyWay } from '../../../core/trace/sky-points.ts';
import { accuracySection } from '../support/accuracy.ts';
import { emptyCanvas, gnomonic, type Look, lightNear, size, viewToward, worked } from './sky-cameras.ts';

const { check } = accuracySection('Sky in the picture');
const source = 'library astronomy-engine (of-date equator, aberration, refraction); Snyder 1987, gnomonic projection';
const lenses = [14, 24, 50];
const observer = new Observer(-33, 149, 0);
const catalogue = unpackStars(packedStars());
const degrees = 180 / Math.PI;

/** A star of the catalogue, J2000. */
const starOf = ({ directions, magnitudes }: StarCatalogue, i: number) => {
  const [x, y, z] = [0, 1, 2].map((k) => directions[3 * i + k] as number) as [number, number, number];
  const ra = Math.atan2(y, x) * degrees;
  return { ra: ra < 0 ? ra + 360 : ra, dec: Math.asin(z) * degrees, magnitude: magnitudes[i] as number };
};

/** Where a star is seen, by the library's own way from catalogue to horizon. */
const seenAt = ({ ra, dec }: { ra: number; dec: number }, { utcMilliseconds }: SkyInput): Look => {
  DefineStar(Body.Star1, ra / 15, dec, 1000);
  const time = MakeTime(new Date(utcMilliseconds));
  const equator = Equator(Body.Star1, time, observer, true, true);
  const { azimuth, altitude } = Horizon(time, observer, equator.ra, equator.dec, 'normal');
  return { bearing: azimuth, altitude };
};

const bright = Array.from({ length: 200 }, (_, i) => starOf(catalogue, i))
  .map((star) => ({ star, at: seenAt(star, worked) }))
  .filter(({ at }) => at.altitude > 8 && at.altitude < 75)
  .slice(0, 20);

/** The camera looks beside a star, so that it falls well off the middle. */
const beside = ({ bearing, altitude }: Look, focal: number): Look => ({
  bearing: bearing + 350 / focal / Math.cos(altitude / degrees) / 2,
  altitude: Math.max(altitude - 200 / focal, 1),
});

const still = (input: SkyInput, look: Look, focal: number): SkyWay => ({
  frame: { view: viewToward(look, focal), ...size },
  states: [skyAt(input)],
  sigma: 0.7,
});

const alone = ({ ra, dec, magnitude }: ReturnType<typeof starOf>): StarCatalogue =>
  unpackStars(packStars([{ rightAscensionDegrees: ra, declinationDegrees: dec, magnitude, colourIndex: 0.5 }]));

/** How far the middle of a star's light lies from where the library and the projection put it, pixels. */
const missBy = (star: ReturnType<typeof starOf>, at: Look, focal: number): number => {
  const look = beside(at, focal);
  const way = still(worked, look, focal);
  const canvas = emptyCanvas();
  addStars(canvas, way, alone(star));
  const [x, y] = gnomonic(at, look, focal);
  const found = lightNear(canvas, way.frame.view, [x, y], 8);
  return Math.hypot(found.x - x, found.y - y);
};

describe('points of the sky in a picture 1280 px wide lie within 1 px of where they are', () => {
  it('there are twenty bright stars over the worked scene', () => expect(bright).toHaveLength(20));

  it.each(lenses)('twenty bright stars at %d mm', (focal) => {
    const worst = Math.max(...bright.map(({ star, at }) => missBy(star, at, focal)));
    check({
      id: `stars ${focal} mm`,
      claim: `twenty bright stars at ${focal} mm, the farthest from its place`,
      source,
      unit: 'px',
      expected: 0,
      ours: worst,
      tolerance: { absolute: 1 },
    });
  });

  it.each(lenses)('the middle of the galaxy at %d mm (IAU 1958 in J2000: RA 266.405, Dec -28.936)', (focal) => {
    const centre = { ra: 266.405, dec: -28.93617, magnitude: 1 };
    const at = seenAt(centre, worked);
    // it stands at 86 degrees there and then: two hours later it does not
    const later = { ...worked, utcMilliseconds: worked.utcMilliseconds + 2.5 * 3600_000 };
    const low = seenAt(centre, later);
    expect(at.altitude).toBeGreaterThan(85);
    const look = beside(low, focal);
    const way = still(later, look, focal);
    const canvas = emptyCanvas();
    addStars(canvas, way, alone(centre));
    const [x, y] = gnomonic(low, look, focal);
    const found = lightNear(canvas, way.frame.view, [x, y], 8);
    check({
      id: `core ${focal} mm`,
      claim: `middle of the galaxy at ${focal} mm`,
      source,
      unit: 'px',
      expected: 0,
      ours: Math.hypot(found.x - x, found.y - y),
      tolerance: { absolute: 1 },
    });
  });

  it.each(lenses)('the full moon at %d mm', (focal) => {
    const full = { ...worked, utcMilliseconds: Date.UTC(2026, 7, 28, 12, 0) };
    const time = MakeTime(new Date(full.utcMilliseconds));
    const equator = Equator(Body.Moon, time, observer, true, true);
    const { azimuth, altitude } = Horizon(time, observer, equator.ra, equator.dec, 'normal');
    const at = { bearing: azimuth, altitude };
    const look = beside(at, focal);
    const way = still(full, look, focal);
    expect(way.states[0]?.moon.litShare).toBeGreaterThan(0.99);
    const canvas = emptyCanvas();
    addMoon(canvas, way);
    const [x, y] = gnomonic(at, look, focal);
    const found = lightNear(canvas, way.frame.view, [x, y], 20);
    check({
      id: `moon ${focal} mm`,
      claim: `full moon at ${focal} mm`,
      source,
      unit: 'px',
      expected: 0,
      ours: Math.hypot(found.x - x, found.y - y),
      tolerance: { absolute: 1 },
    });
  });
});

import { describe, expect, it } from 'vitest';
import { packedStars } from '../../../app/build/packed-stars.ts';
import { angleBetween, type Vec3 } from '../../../core/geometry/vec.ts';
import { luxFromMagnitude } from '../../../core/sky/magnitudes.ts';
import { packStars, type StarCatalogue, unpackStars } from '../../../core/sky/star-catalogue.ts';
import { radiansFromDegrees } from '../../../core/units/angle.ts';

const at = ({ directions }: StarCatalogue, i: number): Vec3 => [
  directions[3 * i] as number,
  directions[3 * i + 1] as number,
  directions[3 * i + 2] as number,
];
const equatorial = (raDegrees: number, decDegrees: number): Vec3 => {
  const [a, d] = [radiansFromDegrees(raDegrees), radiansFromDegrees(decDegrees)];
  return [Math.cos(d) * Math.cos(a), Math.cos(d) * Math.sin(a), Math.sin(d)];
};
const arcsecond = radiansFromDegrees(1 / 3600);

describe('packStars and unpackStars', () => {
  it('keep places to 0.1 seconds of arc, magnitudes to 0.02, colours to 0.005; brightest first', () => {
    const stars = Array.from({ length: 200 }, (_, i) => ({
      rightAscensionDegrees: ((i * 137.508) % 360) - (i % 2 ? 180 : 0),
      declinationDegrees: 89.9 * Math.sin(i),
      magnitude: -1.4 + 0.04711 * i,
      colourIndex: -0.35 + 0.0111 * i,
    }));
    const catalogue = unpackStars(packStars([...stars].reverse()));
    expect(catalogue.count).toBe(200);
    stars.forEach((star, i) => {
      const there = equatorial(star.rightAscensionDegrees, star.declinationDegrees);
      expect(angleBetween(at(catalogue, i), there)).toBeLessThan(0.1 * arcsecond);
      expect(Math.abs((catalogue.magnitudes[i] as number) - star.magnitude)).toBeLessThanOrEqual(0.0201);
      expect(Math.abs((catalogue.colourIndices[i] as number) - star.colourIndex)).toBeLessThanOrEqual(0.00501);
    });
  });

  it('hold what lies outside at the ends, and drop half a star at the end of a file', () => {
    const [bright] = unpackStars(
      packStars([{ rightAscensionDegrees: 0, declinationDegrees: 90, magnitude: -9, colourIndex: 9 }]),
    ).magnitudes;
    expect(bright).toBe(-2);
    expect(unpackStars(new Uint8Array(11)).count).toBe(1);
    expect(unpackStars(new Uint8Array(0)).count).toBe(0);
  });
});

describe('packedStars', () => {
  const catalogue = unpackStars(packedStars());

  it('has 41,411 stars to V 8.0 (XHIP as sky.md 1.2 counts it)', () => {
    expect(catalogue.count).toBe(41_411);
    expect(catalogue.magnitudes.at(-1)).toBeLessThanOrEqual(8.02);
  });

  // J2000, ICRS, Hipparcos (ESA 1997), from memory
  it.each([
    ['Sirius', 101.2872, -16.7161, -1.44],
    ['Canopus', 95.9879, -52.6957, -0.62],
    ['Vega', 279.2347, 38.7837, 0.03],
    ['Antares', 247.3519, -26.432, 1.06],
    ['Arcturus', 213.9153, 19.1824, -0.05],
  ])('%s lies at RA %d, Dec %d with V %d (0.01 degrees, 0.05 mag)', (_, ra, dec, magnitude) => {
    const there = equatorial(ra, dec);
    const found = Array.from({ length: 60 }, (__, i) => i).find(
      (i) => angleBetween(at(catalogue, i), there) < radiansFromDegrees(0.01),
    );
    expect(found).toBeDefined();
    expect(Math.abs((catalogue.magnitudes[found as number] as number) - magnitude)).toBeLessThan(0.05);
  });

  it('all stars together are as bright as 133.9 of magnitude 0 (sky.md 4.1; 1 %)', () => {
    const sum = catalogue.magnitudes.reduce((all, m) => all + luxFromMagnitude(m), 0) / luxFromMagnitude(0);
    expect(Math.abs(sum / 133.9 - 1)).toBeLessThan(0.01);
  });
});

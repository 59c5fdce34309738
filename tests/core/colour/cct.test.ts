import { describe, expect, it } from 'vitest';
import { correlatedColourTemperature } from '../../../core/colour/cct.ts';
import { type Chromaticity, chromaticityFromUv, uvFromChromaticity } from '../../../core/colour/chromaticity.ts';
import { kelvinFromMired, miredFromKelvin } from '../../../core/colour/mired.ts';
import { planckChromaticity } from '../../../core/colour/planck-locus.ts';
import { planckGreenNormal } from '../../../core/colour/planck-normal.ts';

/** A colour off the locus by `duv`, square to it. */
const beside = (kelvin: number, duv: number): Chromaticity => {
  const [u, v] = uvFromChromaticity(planckChromaticity(kelvin));
  const [nu, nv] = planckGreenNormal(kelvin);
  return chromaticityFromUv([u + duv * nu, v + duv * nv]);
};

describe('correlatedColourTemperature', () => {
  it('finds the black body again, from 1000 to 100 000 K (abs 1e-6 mired, Duv 1e-12)', () => {
    for (let mired = 10; mired <= 1000; mired += 3) {
      const found = correlatedColourTemperature(planckChromaticity(kelvinFromMired(mired)));
      expect(Math.abs(miredFromKelvin(found?.temperatureKelvin ?? 0) - mired)).toBeLessThanOrEqual(1e-6);
      expect(Math.abs(found?.duv ?? 1)).toBeLessThanOrEqual(1e-12);
    }
  });

  it('finds temperature and Duv of colours beside the locus, up to the limit of 0.05 (abs 1e-4 mired, Duv 1e-9)', () => {
    for (let mired = 12; mired < 1000; mired += 19)
      for (let duv = -0.0499; duv <= 0.05; duv += 0.0083) {
        const found = correlatedColourTemperature(beside(kelvinFromMired(mired), duv));
        expect(Math.abs(miredFromKelvin(found?.temperatureKelvin ?? 0) - mired)).toBeLessThanOrEqual(1e-4);
        expect(Math.abs((found?.duv ?? 1) - duv)).toBeLessThanOrEqual(1e-9);
      }
  });

  it('no point of the locus, 0.1 mired apart, lies nearer than the one found (brute force)', () => {
    const locus = Array.from({ length: 9900 }, (_, i) =>
      uvFromChromaticity(planckChromaticity(kelvinFromMired(10 + i / 10))),
    );
    const colours: readonly Chromaticity[] = [
      [0.32, 0.36],
      [0.42, 0.37],
      [0.55, 0.42],
      [0.27, 0.26],
      [0.3127, 0.329],
    ];
    for (const colour of colours) {
      const found = correlatedColourTemperature(colour);
      const [u, v] = uvFromChromaticity(colour);
      const nearest = Math.min(...locus.map(([pu, pv]) => Math.hypot(u - pu, v - pv)));
      expect(Math.abs(found?.duv ?? 1)).toBeLessThanOrEqual(nearest);
      expect(nearest - Math.abs(found?.duv ?? 1)).toBeLessThanOrEqual(1e-5);
    }
  });

  it('Duv is positive on the green side and negative on the magenta side', () => {
    const [x, y] = planckChromaticity(5000);
    expect(correlatedColourTemperature([x, y + 0.01])?.duv).toBeGreaterThan(0.003);
    expect(correlatedColourTemperature([x, y - 0.01])?.duv).toBeLessThan(-0.003);
  });

  it('is null where it has no meaning: too far off the locus, past both ends, not a number', () => {
    for (const kelvin of [1500, 4000, 9000])
      for (const duv of [-0.0505, 0.0505]) expect(correlatedColourTemperature(beside(kelvin, duv))).toBeNull();
    expect(correlatedColourTemperature([0.3, 0.6])).toBeNull();
    expect(correlatedColourTemperature([0.15, 0.06])).toBeNull();
    expect(correlatedColourTemperature(planckChromaticity(990))).toBeNull();
    expect(correlatedColourTemperature(planckChromaticity(110_000))).toBeNull();
    expect(correlatedColourTemperature([Number.NaN, 0.3])).toBeNull();
  });
});

describe('planckGreenNormal', () => {
  it('is a unit vector, square to the locus on either side (abs 1e-4), and points to greater v', () => {
    for (let mired = 12; mired < 1000; mired += 13) {
      const [nu, nv] = planckGreenNormal(kelvinFromMired(mired));
      const [u0, v0] = uvFromChromaticity(planckChromaticity(kelvinFromMired(mired - 1)));
      const [u1, v1] = uvFromChromaticity(planckChromaticity(kelvinFromMired(mired + 1)));
      expect(Math.abs(Math.hypot(nu, nv) - 1)).toBeLessThanOrEqual(1e-12);
      expect(Math.abs(nu * (u1 - u0) + nv * (v1 - v0)) / Math.hypot(u1 - u0, v1 - v0)).toBeLessThanOrEqual(1e-4);
      expect(nv).toBeGreaterThan(0);
    }
  });
});

import { describe, expect, it } from 'vitest';
import { correlatedColourTemperature } from '../../../core/colour/cct.ts';
import {
  type Chromaticity,
  chromaticityFromUv,
  chromaticityFromXyz,
  uvFromChromaticity,
  xyzFromChromaticity,
} from '../../../core/colour/chromaticity.ts';
import { daylightChromaticity } from '../../../core/colour/daylight-locus.ts';
import { kelvinFromMired, miredFromKelvin, temperatureLimitsKelvin } from '../../../core/colour/mired.ts';
import { planckChromaticity } from '../../../core/colour/planck-locus.ts';
import { luminanceOfLinearSrgb } from '../../../core/colour/srgb.ts';
import { whiteChromaticity, whiteLinearSrgb } from '../../../core/colour/white-locus.ts';

const apart = (a: Chromaticity, b: Chromaticity) => Math.hypot(a[0] - b[0], a[1] - b[1]);

describe('planckChromaticity', () => {
  it('goes from red to blue without turning back: x falls as temperature rises, 1000 to 100 000 K', () => {
    let before = planckChromaticity(1000)[0];
    for (let mired = 999; mired >= 10; mired--) {
      const x = planckChromaticity(kelvinFromMired(mired))[0];
      expect(x).toBeLessThan(before);
      before = x;
    }
  });

  it('ends at the colour of infinite heat, x 0.240, y 0.234 (abs 5e-4, half the last digit)', () => {
    // (0.240, 0.234): the published end of the locus, from memory
    const end = planckChromaticity(1e10);
    expect(Math.abs(end[0] - 0.24)).toBeLessThanOrEqual(5e-4);
    expect(Math.abs(end[1] - 0.234)).toBeLessThanOrEqual(5e-4);
    expect(apart(end, planckChromaticity(1e12))).toBeLessThanOrEqual(1e-6);
  });
});

describe('daylightChromaticity', () => {
  it('is continuous where its pieces meet, at 7000 K (abs 1e-6)', () => {
    expect(apart(daylightChromaticity(7000), daylightChromaticity(7000 + 1e-6))).toBeLessThanOrEqual(1e-6);
  });
});

describe('whiteChromaticity', () => {
  it('is a black body up to 4000 K and daylight from 5000 K', () => {
    for (const kelvin of [1667, 2200, 3200, 4000])
      expect(whiteChromaticity(kelvin)).toEqual(planckChromaticity(kelvin));
    for (const kelvin of [5000, 5600, 6500, 25_000])
      expect(whiteChromaticity(kelvin)).toEqual(daylightChromaticity(kelvin));
  });

  it.each([4000, 5000])('is continuous at %d K (abs 1e-8 over 2e-6 K)', (kelvin) => {
    expect(apart(whiteChromaticity(kelvin - 1e-6), whiteChromaticity(kelvin + 1e-6))).toBeLessThanOrEqual(1e-8);
  });

  it('never jumps: a tenth of a mired moves it by less than 1e-4, where the two loci are 6e-3 apart', () => {
    const { min, max } = temperatureLimitsKelvin;
    expect(apart(planckChromaticity(5000), daylightChromaticity(5000))).toBeGreaterThan(6e-3);
    let before = whiteChromaticity(max);
    for (let mired = miredFromKelvin(max); mired <= miredFromKelvin(min); mired += 0.1) {
      const white = whiteChromaticity(kelvinFromMired(mired));
      expect(apart(white, before)).toBeLessThan(1e-4);
      before = white;
    }
  });

  it('goes over from one locus to the other evenly: Duv rises with temperature between 4000 and 5000 K', () => {
    const duvs = Array.from(
      { length: 21 },
      (_, i) => correlatedColourTemperature(whiteChromaticity(4000 + 50 * i))?.duv,
    );
    expect(Math.abs(duvs[0] ?? 1)).toBeLessThanOrEqual(1e-9);
    for (let i = 1; i < duvs.length; i++) expect(duvs[i]).toBeGreaterThan(duvs[i - 1] ?? 1);
    // Duv of D50 by the CIE's figures (check values 7.1c)
    expect(Math.abs((duvs[20] ?? 1) - 0.0032)).toBeLessThanOrEqual(1e-4);
  });

  it('has the temperature asked for: rel 1.5e-3 up to 12 000 K, 4e-3 up to 25 000 K', () => {
    for (let kelvin = 1667; kelvin <= 25_000; kelvin += 97) {
      const found = correlatedColourTemperature(whiteChromaticity(kelvin))?.temperatureKelvin ?? 0;
      expect(Math.abs(found / kelvin - 1)).toBeLessThanOrEqual(kelvin <= 12_000 ? 1.5e-3 : 4e-3);
    }
  });
});

describe('whiteLinearSrgb', () => {
  it('has luminance 1 at every temperature, and blue below zero only under 1901 K (rel 1e-12)', () => {
    for (let kelvin = 1667; kelvin <= 25_000; kelvin += 61) {
      const rgb = whiteLinearSrgb(kelvin);
      expect(Math.abs(luminanceOfLinearSrgb(rgb) - 1)).toBeLessThanOrEqual(1e-12);
      expect(rgb[2] > 0).toBe(kelvin >= 1901);
    }
  });

  it('is white at the temperature of D65, 6503.6 K (R = G = B, abs 1e-3: the locus misses the white of sRGB by 1.3e-4)', () => {
    for (const channel of whiteLinearSrgb((6500 * 1.4388) / 1.438))
      expect(Math.abs(channel - 1)).toBeLessThanOrEqual(1e-3);
  });
});

describe('chromaticity', () => {
  it('survives the way to XYZ and to uv and back (abs 1e-12)', () => {
    for (const xy of [
      [0.3127, 0.329],
      [0.64, 0.33],
      [0.15, 0.06],
    ] as const) {
      expect(apart(chromaticityFromXyz(xyzFromChromaticity(xy)), xy)).toBeLessThanOrEqual(1e-12);
      expect(apart(chromaticityFromUv(uvFromChromaticity(xy)), xy)).toBeLessThanOrEqual(1e-12);
    }
  });
});

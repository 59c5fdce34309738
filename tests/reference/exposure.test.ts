import { describe, expect, it } from 'vitest';
import {
  lensFactor,
  midGreyExposure,
  saturationExposure,
  saturationStops,
  sensorExposure,
  stopsFromMidGrey,
} from '../../core/camera/exposure.ts';
import { displayFromMidGreyRatio } from '../../core/camera/response.ts';
import { decodeSrgb, encodeSrgb } from '../../core/colour/srgb.ts';
import { exactFNumber } from '../../core/units/third-stops.ts';
import { relativeError } from '../core/support/errors.ts';

// Rows 3 of the check values. Rows on exposure value (3a-3e) have no function in the core.
describe('sensor exposure', () => {
  // H = q L t / N^2, ISO 12232; a meter-correct scene has L t = K N^2 / S with K = 12.5, ISO 2720:1974 (row 3f)
  it.each([
    [1, 100],
    [2.8, 3200],
    [8, 400],
  ])('3f: a scene that a meter calls right at f/%d, ISO %d gives 8.125/S lx s (rel 1e-12)', (n, iso) => {
    expect(relativeError(sensorExposure((12.5 * n ** 2) / iso, n), 8.125 / iso)).toBeLessThanOrEqual(1e-12);
  });

  // q = (pi/4) T v cos^4, ISO 12232, from memory (row 3g)
  it('3g: the lens factor is (pi/4) 0.90 x 0.98 cos^4 10 degrees, rounded to two places', () => {
    const exact = (Math.PI / 4) * 0.9 * 0.98 * Math.cos(Math.PI / 18) ** 4;
    expect(Math.abs(exact - 0.6516)).toBeLessThanOrEqual(5e-5);
    expect(Math.abs(lensFactor - exact)).toBeLessThanOrEqual(0.005);
  });

  // ISO 12232:2006/2019, from memory (row 3h)
  it('3h: at ISO 100 the sensor is full at 0.78 lx s, mid-grey is 0.10 lx s, 2.963 stops apart (abs 5e-4)', () => {
    expect(relativeError(saturationExposure(100), 0.78)).toBeLessThanOrEqual(1e-12);
    expect(relativeError(midGreyExposure(100), 0.1)).toBeLessThanOrEqual(1e-12);
    expect(Math.abs(saturationStops - 2.963)).toBeLessThanOrEqual(5e-4);
  });

  // 78 / (0.65 x 100), printed in several public implementations (row 3i)
  it('3i: at f/1, 1 s, ISO 100 (EV 0) a luminance of 1.2 cd/m2 fills the sensor (rel 1e-12)', () => {
    expect(relativeError(sensorExposure(1.2, 1), saturationExposure(100))).toBeLessThanOrEqual(1e-12);
  });

  // C = 250, ISO 2720; computed (row 3j)
  it('3j: a white surface metered by its incident light lies 0.593 stop below saturation (abs 5e-4)', () => {
    const exposure = sensorExposure(250 / 100 / Math.PI, 1);
    expect(Math.abs(Math.log2(saturationExposure(100) / exposure) - 0.593)).toBeLessThanOrEqual(5e-4);
  });

  // L = rho E / pi and H = q L t / N^2, ISO 12232; computed (row 3k)
  it('3k: 100 lx on 18 %, f/8, 1 s, ISO 100: 0.058191 lx s (rel 1e-5), 3.745 under full, 0.781 under mid-grey', () => {
    const luminance = (0.18 * 100) / Math.PI;
    expect(relativeError(luminance, 5.72958)).toBeLessThanOrEqual(1e-6);
    const exposure = sensorExposure(luminance, 8);
    expect(relativeError(exposure, 0.058191)).toBeLessThanOrEqual(1e-5);
    expect(Math.abs(Math.log2(saturationExposure(100) / exposure) - 3.745)).toBeLessThanOrEqual(5e-4);
    expect(Math.abs(stopsFromMidGrey(luminance, { fNumber: 8, iso: 100 }) + 0.781)).toBeLessThanOrEqual(5e-4);
  });

  // 0.4613561 printed; ISO 12232 puts mid-grey at 118 of 255 (row 3m)
  it('3m: mid-grey is shown as 0.461356, code 118 of 255 (abs 1e-6)', () => {
    const shown = encodeSrgb(displayFromMidGreyRatio(1));
    expect(Math.abs(shown - 0.4613561)).toBeLessThanOrEqual(1e-6);
    expect(Math.round(255 * shown)).toBe(118);
    expect(Math.abs(decodeSrgb(shown) - 0.18)).toBeLessThanOrEqual(1e-12);
  });
});

// Exact third-stop f-numbers 2^(k/6), computed; the labels are from memory (section 3, below the table)
describe('exactFNumber', () => {
  const marked = [
    1, 1.1, 1.2, 1.4, 1.6, 1.8, 2, 2.2, 2.5, 2.8, 3.2, 3.5, 4, 4.5, 5, 5.6, 6.3, 7.1, 8, 9, 10, 11, 13, 14, 16, 18, 20,
    22, 25, 29, 32,
  ];
  const exact = [
    1,
    1.1225,
    1.2599,
    Math.SQRT2,
    1.5874,
    1.7818,
    2,
    2.2449,
    2.5198,
    2.8284,
    3.1748,
    3.5636,
    4,
    4.4898,
    5.0397,
    5.6569,
    6.3496,
    7.1272,
    8,
    8.9797,
    10.0794,
    11.3137,
    12.6992,
    14.2544,
    16,
    17.9594,
    20.1587,
    22.6274,
    25.3984,
    28.5088,
    32,
  ];
  it('gives the printed exact value for all 31 markings from f/1 to f/32 (abs 5e-5, the print’s rounding)', () => {
    expect(marked.length).toBe(31);
    const errors = marked.map((f, k) => Math.abs(exactFNumber(f) - (exact[k] as number)));
    expect(Math.max(...errors)).toBeLessThanOrEqual(5.1e-5);
  });

  // trap T8: nominal against exact, in stops; computed
  it.each([
    [22, -0.081],
    [11, -0.081],
    [13, 0.068],
    [1.2, -0.141],
  ])('f/%d as marked is %d stop off its exact value (abs 5e-4)', (f, stops) => {
    expect(Math.abs(2 * Math.log2(f / exactFNumber(f)) - stops)).toBeLessThanOrEqual(5e-4);
  });
});

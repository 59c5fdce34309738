import { describe, expect, it } from 'vitest';
import {
  doseForMidGrey,
  lensFactor,
  midGreyExposure,
  midGreyRatioPerLuminanceSecond,
  saturationExposure,
  saturationRatio,
  saturationStops,
  sensorExposure,
  stopsFromMidGrey,
} from '../../core/camera/exposure.ts';
import { displayFromMidGreyRatio } from '../../core/camera/response.ts';
import { cosFourth } from '../../core/camera/vignetting.ts';
import { decodeSrgb, encodeSrgb } from '../../core/colour/srgb.ts';
import { stopsFromRatio } from '../../core/units/stops.ts';
import { exactFNumber, exactIso, exactSeconds } from '../../core/units/third-stops.ts';
import { accuracySection } from './support/accuracy.ts';

const { check } = accuracySection('Exposure');

const meterStandard = 'ISO 2720:1974, K = 12.5, C = 250';
const speedStandard = 'ISO 12232, from memory';
const lensStandard = 'ISO 12232, H = q L t / N²; number computed';

/** Sensor exposure that a meter aims at, over mid-grey: q K / 10 with the K of ISO 2720 = 0.8125. */
const meterOverMidGrey = (lensFactor * 12.5) / 10;

/** Luminance that comes out at the meter's mid-point, by the core's exposure. */
const meteredLuminance = (fNumber: number, seconds: number, iso: number): number =>
  meterOverMidGrey / (midGreyRatioPerLuminanceSecond({ fNumber, iso }) * seconds);

/** Exposure value at ISO 100 of a luminance: 1 s at f/1 is EV 0, and each halving of the time is one more. */
const evOfLuminance = (luminance: number): number => stopsFromRatio(luminance / meteredLuminance(1, 1, 100));

/** Incident light in lux that a meter with C = 250 calls right, by the core's dose for its mid-point's grey, pi K / C. */
const meteredIlluminance = (fNumber: number, seconds: number, iso: number): number =>
  (doseForMidGrey({ fNumber, iso }, (Math.PI * 12.5) / 250) * meterOverMidGrey) / seconds;

const evOfIlluminance = (lux: number): number => stopsFromRatio(lux / meteredIlluminance(1, 1, 100));

describe('exposure value', () => {
  const row = { unit: 'EV', source: meterStandard };
  it('3a: f/2.8, 20 s, ISO 3200: -6.3511 as marked, -6.3333 by exact values (abs 5e-5)', () => {
    const tolerance = { absolute: 5.1e-5 };
    const marked = evOfLuminance(meteredLuminance(2.8, 20, 3200));
    const exact = evOfLuminance(meteredLuminance(exactFNumber(2.8), exactSeconds(20), exactIso(3200)));
    check({ ...row, id: '3a', claim: 'f/2.8, 20 s, ISO 3200 as marked', expected: -6.3511, ours: marked, tolerance });
    check({ ...row, id: '3a', claim: 'f/2.8, 20 s, ISO 3200, exact', expected: -6.3333, ours: exact, tolerance });
  });

  it.each([
    [0, 0.125],
    [10, 128],
    [15, 4096],
  ])('3b: EV %d is %d cd/m² (rel 1e-9)', (ev, expected) => {
    const ours = meteredLuminance(1, 2 ** -ev, 100);
    const claim = `luminance that a meter calls EV ${ev}`;
    check({ id: '3b', claim, source: meterStandard, unit: 'cd/m²', expected, ours, tolerance: { relative: 1e-9 } });
  });

  it.each([
    [0, 2.5],
    [10, 2560],
    [15, 81920],
    [-3, 0.3125],
    [-6, 0.0390625],
  ])('3c: EV %d is %d lx (rel 1e-9)', (ev, expected) => {
    const ours = meteredIlluminance(1, 2 ** -ev, 100);
    const claim = `incident light that a meter calls EV ${ev}`;
    check({ id: '3c', claim, source: meterStandard, unit: 'lx', expected, ours, tolerance: { relative: 1e-9 } });
  });

  it.each([
    [0.25, -3.322],
    [0.32, -2.966],
    [0.1, -4.644],
    [0.0243, -6.685],
  ])('%d lx is EV %d (abs 5e-4)', (lux, expected) => {
    const claim = `exposure value of ${lux} lx`;
    check({ ...row, id: '3', claim, expected, ours: evOfIlluminance(lux), tolerance: { absolute: 5.1e-4 } });
  });

  it('3d: f/16, 1/100 s, ISO 100 as marked: EV 14.6439 (abs 5e-5), 3200 cd/m², 64000 lx (rel 1e-9)', () => {
    const [luminance, lux] = [meteredLuminance(16, 0.01, 100), meteredIlluminance(16, 0.01, 100)];
    const more = { id: '3d', source: meterStandard, tolerance: { relative: 1e-9 } };
    const ev = evOfLuminance(luminance);
    check({ ...row, id: '3d', claim: 'full sun rule', expected: 14.6439, ours: ev, tolerance: { absolute: 5e-5 } });
    check({ ...more, claim: 'full sun rule, luminance', unit: 'cd/m²', expected: 3200, ours: luminance });
    check({ ...more, claim: 'full sun rule, incident light', unit: 'lx', expected: 64000, ours: lux });
  });

  it('3e: f/11 at 1/ISO on the moon: EV 13.5627, 1512.5 cd/m² as marked; exact thirds EV 14', () => {
    const luminance = meteredLuminance(11, 0.01, 100);
    const exact = evOfLuminance(meteredLuminance(exactFNumber(11), exactSeconds(1 / 125), exactIso(100)));
    const ev = evOfLuminance(luminance);
    const at = { id: '3e', source: meterStandard };
    check({ ...row, ...at, claim: 'moon rule as marked', expected: 13.5627, ours: ev, tolerance: { absolute: 5e-5 } });
    check({
      ...at,
      claim: 'moon rule, luminance',
      unit: 'cd/m²',
      expected: 1512.5,
      ours: luminance,
      tolerance: { relative: 1e-9 },
    });
    const claim = 'moon rule, f/11 and 1/125 s by exact values';
    check({ ...row, ...at, claim, expected: 14, ours: exact, tolerance: { absolute: 1e-9 } });
  });

  it('the full moon’s disc, 0.267 lx from 6.42e-5 sr, is EV 15 as tabulated (abs 0.1: the table has whole steps)', () => {
    const ours = evOfLuminance(0.267 / 6.42e-5);
    const claim = 'full moon’s disc, 0.267 lx out of 6.42e-5 sr';
    check({ ...row, id: '3', claim, source: 'ANSI PH2.7', expected: 15, ours, tolerance: { absolute: 0.1 } });
  });
});

describe('sensor exposure', () => {
  it.each([
    [1, 100],
    [2.8, 3200],
    [8, 400],
  ])('3f: a scene that a meter calls right at f/%d, ISO %d gives 8.125/S lx s (rel 1e-12)', (n, iso) => {
    const claim = `exposure of a scene that a meter calls right, f/${n}, ISO ${iso}`;
    const ours = sensorExposure((12.5 * n ** 2) / iso, n);
    const tolerance = { relative: 1e-12 };
    check({ id: '3f', claim, source: lensStandard, unit: 'lx s', expected: 8.125 / iso, ours, tolerance });
  });

  it('3g: the lens factor (pi/4) 0.90 x 0.98 cos^4 10° is 0.6516 (abs 5e-5), rounded to two places', () => {
    const tan = Math.tan(Math.PI / 18);
    const exact = (Math.PI / 4) * 0.9 * 0.98 * cosFourth({ tanHalfWidth: tan, tanHalfHeight: tan }, 1, 0.5);
    const row = { id: '3g', source: speedStandard, unit: '', expected: 0.6516 };
    check({ ...row, claim: 'lens factor from its parts, with our cos⁴', ours: exact, tolerance: { absolute: 5e-5 } });
    check({ ...row, claim: 'lens factor, rounded', ours: lensFactor, tolerance: { absolute: 0.005 } });
  });

  it('3h: ISO 100 is full at 0.78 lx s and mid-grey at 0.10 (rel 1e-12), 2.963 stops apart (abs 5e-4)', () => {
    const row = { id: '3h', source: speedStandard, tolerance: { relative: 1e-12 } };
    check({ ...row, claim: 'saturation at ISO 100', unit: 'lx s', expected: 0.78, ours: saturationExposure(100) });
    check({ ...row, claim: 'mid-grey at ISO 100', unit: 'lx s', expected: 0.1, ours: midGreyExposure(100) });
    check({ ...row, claim: 'saturation over mid-grey', unit: '', expected: 7.8, ours: saturationRatio });
    const tolerance = { absolute: 5e-4 };
    check({ ...row, claim: 'the same', unit: 'stops', expected: 2.963, ours: saturationStops, tolerance });
    const share = 100 / saturationRatio;
    check({
      ...row,
      claim: 'mid-grey of saturation',
      unit: '%',
      expected: 12.8,
      ours: share,
      tolerance: { absolute: 0.05 },
    });
  });

  it('3i: at f/1, 1 s, ISO 100 (EV 0) a luminance of 1.2 cd/m² fills the sensor (rel 1e-12)', () => {
    const ours = saturationExposure(100) / sensorExposure(1, 1);
    const source = '78 / (0.65 x 100), printed in several public implementations';
    const claim = 'luminance that fills the sensor at EV 0';
    check({ id: '3i', claim, source, unit: 'cd/m²', expected: 1.2, ours, tolerance: { relative: 1e-12 } });
  });

  it('3j: a white surface metered by its incident light lies 0.593 stop below saturation (abs 5e-4)', () => {
    const exposure = sensorExposure(meteredIlluminance(1, 1, 100) / Math.PI, 1);
    const ours = stopsFromRatio(saturationExposure(100) / exposure);
    const claim = 'metered white below saturation';
    check({
      id: '3j',
      claim,
      source: `${meterStandard}; computed`,
      unit: 'stops',
      expected: 0.593,
      ours,
      tolerance: { absolute: 5e-4 },
    });
  });

  it('3k: 100 lx on 18 %, f/8, 1 s, ISO 100: 0.058191 lx s (rel 1e-5), 3.745 under full, 0.781 under mid-grey', () => {
    const row = { id: '3k', source: lensStandard, unit: 'stops', tolerance: { absolute: 5e-4 } };
    const at = '100 lx on 18 %, f/8, 1 s, ISO 100';
    const luminance = (0.18 * 100) / Math.PI;
    const exposure = sensorExposure(luminance, 8);
    const camera = { fNumber: 8, iso: 100 };
    const tolerance = { relative: 1e-5 };
    check({ ...row, claim: `exposure of ${at}`, unit: 'lx s', expected: 0.058191, ours: exposure, tolerance });
    const full = stopsFromRatio(saturationExposure(100) / exposure);
    check({ ...row, claim: `below saturation, ${at}`, expected: 3.745, ours: full });
    check({ ...row, claim: `from mid-grey, ${at}`, expected: -0.781, ours: stopsFromMidGrey(luminance, camera) });
    const byDose = stopsFromRatio(100 / doseForMidGrey(camera, 0.18));
    check({ ...row, claim: `from mid-grey by dose, ${at}`, expected: -0.781, ours: byDose });
  });

  it('3m: mid-grey is shown as 0.461356 (abs 1e-6), code 118 of 255 (exact), and reads back as 0.18 (abs 1e-12)', () => {
    const shown = encodeSrgb(displayFromMidGreyRatio(1));
    const row = { id: '3m', unit: '' };
    const source = 'ISO 12232 standard output sensitivity; 0.4613561 printed';
    check({
      ...row,
      claim: 'mid-grey in sRGB',
      source,
      expected: 0.4613561,
      ours: shown,
      tolerance: { absolute: 1e-6 },
    });
    const code = Math.round(255 * shown);
    check({ ...row, claim: 'mid-grey in 8 bits', source, expected: 118, ours: code, tolerance: { absolute: 0 } });
    expect(Math.abs(decodeSrgb(shown) - 0.18)).toBeLessThanOrEqual(1e-12);
  });
});

describe('the meter’s mid-point', () => {
  const source = `${meterStandard}; number computed`;
  it.each([
    [12.5, 250, 15.7],
    [14, 250, 17.6],
    [12.5, 330, 11.9],
  ])('T7: K = %d, C = %d expose right a grey of %d % (abs 0.05 %)', (k, c, expected) => {
    // grey whose dose for the meter's exposure is the C of the incident meter
    const camera = { fNumber: 1, iso: 100 };
    const ours = ((100 * doseForMidGrey(camera, 1)) / (c / 100)) * ((lensFactor * k) / 10);
    const claim = `grey at which K = ${k} and C = ${c} agree`;
    check({ id: 'T7', claim, source, unit: '%', expected, ours, tolerance: { absolute: 0.05 } });
  });

  it('T7: lies 0.30 stop below mid-grey and 3.26 below saturation (abs 5e-3)', () => {
    const row = { id: 'T7', source, unit: 'stops', tolerance: { absolute: 5e-3 } };
    const metered = sensorExposure(0.125, 1);
    const toGrey = stopsFromRatio(midGreyExposure(100) / metered);
    const toFull = stopsFromRatio(saturationExposure(100) / metered);
    check({ ...row, claim: 'mid-grey above the meter', expected: 0.3, ours: toGrey });
    check({ ...row, claim: 'saturation above the meter', expected: 3.26, ours: toFull });
  });
});

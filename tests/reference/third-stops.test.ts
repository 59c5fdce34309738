import { describe, it } from 'vitest';
import { doseForMidGrey } from '../../core/camera/exposure.ts';
import { stopsFromRatio } from '../../core/units/stops.ts';
import { exactFNumber, exactIso, exactSeconds } from '../../core/units/third-stops.ts';
import { accuracySection } from './support/accuracy.ts';

const { check } = accuracySection('Third stops');

const series = 'powers of 2^(1/3) of light; labels from memory, number computed';
const trade = 'common practice, no published source';

describe('exact values of marked settings', () => {
  it.each([
    [1, 1],
    [1.1, 1.1225],
    [1.2, 1.2599],
    [1.4, Math.SQRT2],
    [1.6, 1.5874],
    [1.8, 1.7818],
    [2, 2],
    [2.2, 2.2449],
    [2.5, 2.5198],
    [2.8, 2.8284],
    [3.2, 3.1748],
    [3.5, 3.5636],
    [4, 4],
    [4.5, 4.4898],
    [5, 5.0397],
    [5.6, 5.6569],
    [6.3, 6.3496],
    [7.1, 7.1272],
    [8, 8],
    [9, 8.9797],
    [10, 10.0794],
    [11, 11.3137],
    [13, 12.6992],
    [14, 14.2544],
    [16, 16],
    [18, 17.9594],
    [20, 20.1587],
    [22, 22.6274],
    [25, 25.3984],
    [29, 28.5088],
    [32, 32],
  ])('f/%d is %d (abs 5e-5, the print’s rounding)', (marked, expected) => {
    const ours = exactFNumber(marked);
    const claim = `exact f-number of f/${marked}`;
    check({ id: '3 f', claim, source: series, unit: '', expected, ours, tolerance: { absolute: 5.1e-5 } });
  });

  it.each([
    [1, 1],
    [1.3, 1.2599],
    [1.6, 1.5874],
    [2, 2],
    [2.5, 2.5198],
    [3.2, 3.1748],
    [4, 4],
    [5, 5.0397],
    [6, 6.3496],
    [8, 8],
    [10, 10.0794],
    [13, 12.6992],
    [15, 16],
    [20, 20.1587],
    [25, 25.3984],
    [30, 32],
  ])('%d s is %d s (abs 5e-5)', (marked, expected) => {
    const ours = exactSeconds(marked);
    const claim = `exact shutter time of ${marked} s`;
    check({ id: '3 t', claim, source: series, unit: 's', expected, ours, tolerance: { absolute: 5.1e-5 } });
  });

  it.each([
    [60, 64],
    [125, 128],
    [1000, 1024],
  ])('1/%d s is 1/%d s (rel 1e-12)', (marked, expected) => {
    const ours = 1 / exactSeconds(1 / marked);
    const claim = `exact part of a second of 1/${marked} s`;
    const source = 'full-stop series of shutter times, as printed';
    check({ id: '3 t', claim, source, unit: '1/s', expected, ours, tolerance: { relative: 1e-12 } });
  });

  it.each([
    [125, 125.99],
    [160, 158.74],
    [200, 200],
    [250, 251.98],
    [320, 317.48],
    [400, 400],
    [500, 503.97],
    [640, 634.96],
    [800, 800],
    [1000, 1007.94],
    [1250, 1269.92],
    [1600, 1600],
    [2000, 2015.87],
    [2500, 2539.84],
    [3200, 3200],
    [4000, 4031.75],
    [5000, 5079.68],
    [6400, 6400],
  ])('ISO %d is %d (abs 5e-3), within 0.023 stop of its marking', (marked, expected) => {
    const ours = exactIso(marked);
    const row = { id: '3 S', unit: 'ISO', source: series };
    check({ ...row, claim: `exact speed of ISO ${marked}`, expected, ours, tolerance: { absolute: 5.1e-3 } });
    const off = stopsFromRatio(marked / ours);
    const claim = `marking of ISO ${marked} off its exact speed`;
    check({ ...row, claim, unit: 'stops', expected: 0, ours: off, tolerance: { absolute: 0.023 } });
  });

  it.each([
    [1250, 1258.9],
    [1600, 1584.9],
    [2000, 1995.3],
    [3200, 3162.3],
  ])('ISO %d lies by the tenth-decade series of ISO 12232, %d (0.023 stop, 1.6 %)', (marked, expected) => {
    const ours = exactIso(marked);
    const claim = `exact speed of ISO ${marked} against the R10 series`;
    const source = 'ISO 12232, R10 series, from memory';
    check({ id: '3 S', claim, source, unit: 'ISO', expected, ours, tolerance: { relative: 2 ** 0.023 - 1 } });
  });
});

describe('ISO 3200', () => {
  it('T8: lies 0.017 stop above its tenth-decade value, 10^3.5 (abs 5e-4)', () => {
    const ours = stopsFromRatio(exactIso(3200) / 10 ** 3.5);
    const claim = 'exact speed of ISO 3200 above the R10 series';
    const source = 'ISO 12232, R10 series, from memory; number computed';
    check({ id: 'T8', claim, source, unit: 'stops', expected: 0.017, ours, tolerance: { absolute: 5e-4 } });
  });
});

// trap T8; times count once, apertures twice
describe('markings off their exact values', () => {
  const row = { id: 'T8', source: series, unit: 'stops', tolerance: { absolute: 5.1e-4 } };
  it.each([
    [22, -0.081],
    [11, -0.081],
    [13, 0.068],
    [1.2, -0.141],
  ])('f/%d by %d stop (abs 5e-4)', (marked, expected) => {
    const ours = 2 * stopsFromRatio(marked / exactFNumber(marked));
    check({ ...row, claim: `marking f/${marked} off its exact value`, expected, ours });
  });

  it.each([
    [15, -0.093],
    [30, -0.093],
    [6, -0.082],
  ])('%d s by %d stop (abs 5e-4)', (marked, expected) => {
    const ours = stopsFromRatio(marked / exactSeconds(marked));
    check({ ...row, claim: `marking ${marked} s off its exact value`, expected, ours });
  });
});

describe('what the trade tells', () => {
  it('from f/1.8 ISO 10000 to f/2.5 ISO 2000 costs 3.3 stops (abs 0.1)', () => {
    const dose = (marked: number, iso: number) =>
      doseForMidGrey({ fNumber: exactFNumber(marked), iso: exactIso(iso) }, 0.18);
    const ours = stopsFromRatio(dose(2.5, 2000) / dose(1.8, 10000));
    const claim = 'light lost from f/1.8 ISO 10000 to f/2.5 ISO 2000';
    check({ id: 'trade', claim, source: trade, unit: 'stops', expected: 3.3, ours, tolerance: { absolute: 0.1 } });
  });

  // trade notes 0.1, 250 N^2/ISO; ours is 0.10 stop more, for the reason that core/camera/exposure.ts gives
  it.each([
    [2, 5000, 0.2],
    [2.8, 6400, 0.31],
    [2.8, 3200, 0.61],
    [4, 3200, 1.25],
    [5.6, 1600, 4.9],
    [7.1, 1600, 7.9],
    [8, 400, 40],
    [8, 200, 80],
  ])('f/%d ISO %d needs %d lx s for mid-grey (0.14 stop, 10 %)', (marked, iso, expected) => {
    const ours = doseForMidGrey({ fNumber: exactFNumber(marked), iso: exactIso(iso) }, 0.18);
    const claim = `dose for mid-grey, f/${marked} ISO ${iso}`;
    check({
      id: 'trade 0.1',
      claim,
      source: trade,
      unit: 'lx s',
      expected,
      ours,
      tolerance: { relative: 2 ** 0.14 - 1 },
    });
  });

  it('panels left on through f/2.8, 30 s, ISO 6400 give about 0.01 lx, told as 0.008 to 0.02 (abs 0.002)', () => {
    const ours = doseForMidGrey({ fNumber: exactFNumber(2.8), iso: exactIso(6400) }, 0.18) / exactSeconds(30);
    const claim = 'light for mid-grey in 30 s, f/2.8 ISO 6400';
    check({ id: 'trade 0.1', claim, source: trade, unit: 'lx', expected: 0.01, ours, tolerance: { absolute: 0.002 } });
  });
});

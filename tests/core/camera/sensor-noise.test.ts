import { describe, expect, it } from 'vitest';
import { saturationRatio } from '../../../core/camera/exposure.ts';
import { electronsAtMidGrey, gaussian, noiseSdMidGreyRatio } from '../../../core/camera/sensor-noise.ts';
import { seededRandom } from '../../../core/geometry/random.ts';
import { relativeError } from '../support/errors.ts';

const sensor = { fullWellElectrons: 50000, baseIso: 100, readNoiseElectrons: 3 };
const quiet = { ...sensor, readNoiseElectrons: 0 };

const meanAndSd = (values: readonly number[]): readonly [number, number] => {
  const mean = values.reduce((sum, v) => sum + v, 0) / values.length;
  return [mean, Math.sqrt(values.reduce((sum, v) => sum + (v - mean) ** 2, 0) / (values.length - 1))];
};

describe('noiseSdMidGreyRatio', () => {
  it('a full well at base ISO has a signal of sqrt(full well) times its shot noise (rel 1e-12)', () => {
    const sd = noiseSdMidGreyRatio(saturationRatio, quiet, 100, 1);
    expect(relativeError(saturationRatio / sd, Math.sqrt(50000))).toBeLessThanOrEqual(1e-12);
  });

  it('shot noise: four times the light, twice the noise, twice the signal over noise (rel 1e-12)', () => {
    const at = (ratio: number) => noiseSdMidGreyRatio(ratio, quiet, 3200, 1);
    expect(relativeError(at(1) / at(0.25), 2)).toBeLessThanOrEqual(1e-12);
  });

  it('in the dark only reading out is left, in mid-grey ratios: read noise over electrons at mid-grey (rel 1e-12)', () => {
    const dark = noiseSdMidGreyRatio(0, sensor, 6400, 1);
    expect(relativeError(dark, 3 / ((50000 / 7.8) * (100 / 6400)))).toBeLessThanOrEqual(1e-12);
  });

  it('twice the ISO, half the electrons: shot noise up by sqrt 2, read noise by 2 (rel 1e-12)', () => {
    expect(relativeError(electronsAtMidGrey(sensor, 1600) / electronsAtMidGrey(sensor, 3200), 2)).toBeLessThan(1e-12);
    const shot = noiseSdMidGreyRatio(1, quiet, 3200, 1) / noiseSdMidGreyRatio(1, quiet, 1600, 1);
    const read = noiseSdMidGreyRatio(0, sensor, 3200, 1) / noiseSdMidGreyRatio(0, sensor, 1600, 1);
    expect(relativeError(shot, Math.SQRT2)).toBeLessThanOrEqual(1e-12);
    expect(relativeError(read, 2)).toBeLessThanOrEqual(1e-12);
  });

  it('sixteen pixels averaged are four times cleaner (rel 1e-12)', () => {
    const gain = noiseSdMidGreyRatio(0.3, sensor, 6400, 1) / noiseSdMidGreyRatio(0.3, sensor, 6400, 16);
    expect(relativeError(gain, 4)).toBeLessThanOrEqual(1e-12);
  });

  // 40 electrons and a read noise of 3: the standard error of the sample's deviation is 0.5 %
  it('agrees with counted photons plus read noise: 20 000 pixels, mean and spread (rel 2 %, seed 7)', () => {
    const random = seededRandom(7);
    const iso = 6400;
    const scale = electronsAtMidGrey(sensor, iso);
    const electrons = 40;
    // Poisson by counting how many uniform numbers it takes to fall below e^-mean
    const photons = (): number => {
      let [count, product] = [0, random()];
      for (; product > Math.exp(-electrons); count++) product *= random();
      return count;
    };
    const pixels = Array.from(
      { length: 20000 },
      () => (photons() + sensor.readNoiseElectrons * gaussian(random(), random())) / scale,
    );
    const [mean, sd] = meanAndSd(pixels);
    expect(relativeError(mean, electrons / scale)).toBeLessThanOrEqual(0.02);
    expect(relativeError(sd, noiseSdMidGreyRatio(electrons / scale, sensor, iso, 1))).toBeLessThanOrEqual(0.02);
  });
});

describe('gaussian', () => {
  it('has mean 0, deviation 1, and the normal law’s shares within 1 and 2 (200 000 draws, abs 0.005, seed 11)', () => {
    const random = seededRandom(11);
    const draws = Array.from({ length: 200000 }, () => gaussian(random(), random()));
    const [mean, sd] = meanAndSd(draws);
    const within = (limit: number) => draws.filter((v) => Math.abs(v) < limit).length / draws.length;
    expect(Math.abs(mean)).toBeLessThanOrEqual(0.01);
    expect(Math.abs(sd - 1)).toBeLessThanOrEqual(0.005);
    // shares of the standard normal distribution, from tables of statistics
    expect(Math.abs(within(1) - 0.6827)).toBeLessThanOrEqual(0.005);
    expect(Math.abs(within(2) - 0.9545)).toBeLessThanOrEqual(0.005);
  });

  it('stays finite at 0, at most 5.89, and in 32-bit floats the guard is still above 0', () => {
    expect(gaussian(0, 0)).toBeGreaterThan(5.88);
    expect(gaussian(0, 0)).toBeLessThan(5.89);
    expect(gaussian(0, 0.5)).toBe(-gaussian(0, 0));
    expect(gaussian(0, 0)).toBe(gaussian(2 ** -25, 0));
    expect(Math.fround(2 ** -25)).toBe(2 ** -25);
    expect(gaussian(2 ** -24, 0)).toBeLessThan(gaussian(0, 0));
  });
});

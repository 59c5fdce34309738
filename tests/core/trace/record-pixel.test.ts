import { describe, expect, it } from 'vitest';
import { cameraView } from '../../../core/camera/camera-view.ts';
import { whiteBalanceMatrix } from '../../../core/colour/adaptation.ts';
import type { Matrix3, Triple } from '../../../core/colour/matrix.ts';
import { luminanceOfLinearSrgb } from '../../../core/colour/srgb.ts';
import { whiteLinearSrgb } from '../../../core/colour/white-locus.ts';
import { seededRandom } from '../../../core/geometry/random.ts';
import { pixelsBinned, recordPixel } from '../../../core/trace/record-pixel.ts';
import type { Development } from '../../../core/world/development.ts';
import { relativeError, worst } from '../support/errors.ts';

const seed = 31;
const view = cameraView({
  position: [0, 1, 0],
  aim: [0, 1, -5],
  rollRadians: 0,
  sensorWidthMm: 36,
  sensorHeightMm: 24,
  focalLengthMm: 24,
});
const unchanged: Matrix3 = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];
const plain: Development = { whiteBalance: unchanged, response: 'soft', vignetting: false, noise: null };
const sensor = {
  fullWellElectrons: 60_000,
  baseIso: 100,
  readNoiseElectrons: 4,
  iso: 6400,
  pixelsWide: 6000,
  frame: 0,
};
const middle = [0.5, 0.5] as const;
const noNumbers = (): never => {
  throw new Error('no number is needed without noise');
};
const record = (light: Triple, development: Partial<Development>, place: readonly [number, number] = middle) =>
  recordPixel(light, { ...plain, ...development }, view, place, 6000, noNumbers);

/** Mean and standard deviation of many pixels of even grey light, by channel one; the seed is fixed. */
const noisy = (ratio: number, noise: typeof sensor, pictureWidth = 6000) => {
  const random = seededRandom(seed);
  const count = 20_000;
  const values = Array.from({ length: count }, () => {
    const pair = () => [random(), random()] as const;
    return recordPixel([ratio, ratio, ratio], { ...plain, noise }, view, middle, pictureWidth, pair)[1];
  });
  const mean = values.reduce((sum, v) => sum + v, 0) / count;
  const sd = Math.sqrt(values.reduce((sum, v) => sum + (v - mean) ** 2, 0) / (count - 1));
  return { mean, sd, standardError: sd / Math.sqrt(count) };
};
/** sqrt(e + r^2) / (electrons at mid-grey): Poisson's variance is its mean, independent noises add in squares. */
const sdOf = (ratio: number, iso: number, binned = 1): number => {
  const electrons = (60_000 / 7.8) * (100 / iso);
  return Math.sqrt((ratio * electrons + 4 ** 2) / binned) / electrons;
};

describe('recordPixel: fall-off', () => {
  // cos^4 of the angle to the axis (textbook radiometry; ISO 12232's lens factor): tan^2 = 0.75^2 + 0.5^2 in a corner
  it.each([
    ['corner', [0, 0], 0.75 ** 2 + 0.5 ** 2],
    ['other corner', [1, 1], 0.75 ** 2 + 0.5 ** 2],
    ['middle of an edge', [1, 0.5], 0.75 ** 2],
    ['middle', [0.5, 0.5], 0],
  ] as const)('%s: cos^4 (rel 1e-12)', (_, place, tan2) => {
    const [red, green, blue] = record([1, 2, 3], { vignetting: true }, place);
    const shade = Math.cos(Math.atan(Math.sqrt(tan2))) ** 4;
    expect(worst([red / 1, green / 2, blue / 3].map((v) => relativeError(v, shade)))).toBeLessThanOrEqual(1e-12);
  });
  it('without it the corner is as bright as the middle', () => {
    expect(record([1, 2, 3], {}, [0, 0])).toEqual([1, 2, 3]);
  });
});

describe(`recordPixel: noise of 20 000 pixels (seed ${seed})`, () => {
  it.each([
    [0, 6400],
    [0.02, 6400],
    [1, 6400],
    [4, 25_600],
    [1, 400],
  ])(
    '%d times mid-grey at ISO %d: spread by the formula (rel 5 %), mean unbiased (4 standard errors)',
    (ratio, iso) => {
      const { mean, sd, standardError } = noisy(ratio, { ...sensor, iso });
      expect(relativeError(sd, sdOf(ratio, iso))).toBeLessThanOrEqual(0.05);
      expect(Math.abs(mean - ratio)).toBeLessThanOrEqual(4 * standardError);
    },
  );

  it('a picture of a tenth of the pixels each way is ten times cleaner (rel 5 %); a larger one is not noisier', () => {
    expect(relativeError(noisy(1, sensor, 600).sd, sdOf(1, 6400, 100))).toBeLessThanOrEqual(0.05);
    expect(pixelsBinned(sensor, 600)).toBe(100);
    expect(pixelsBinned(sensor, 60_000)).toBe(1);
  });

  it('under the base ISO the well does not grow: the noise of base ISO (rel 5 %)', () => {
    expect(relativeError(noisy(1, { ...sensor, iso: 50 }).sd, sdOf(1, 100))).toBeLessThanOrEqual(0.05);
  });

  it('channels have noises of their own: their correlation is within 4 standard errors of none', () => {
    const random = seededRandom(seed);
    const count = 20_000;
    let sum = 0;
    for (let n = 0; n < count; n++) {
      const pair = () => [random(), random()] as const;
      const [red, green] = recordPixel([1, 1, 1], { ...plain, noise: sensor }, view, middle, 6000, pair);
      sum += ((red - 1) * (green - 1)) / sdOf(1, 6400) ** 2;
    }
    expect(Math.abs(sum / count)).toBeLessThanOrEqual(4 / Math.sqrt(count));
  });
});

describe('recordPixel: white balance and full channels', () => {
  it.each([2000, 2850, 4200, 5600, 9000])(
    'light of %d K comes out neutral at the same luminance (rel 1e-9)',
    (kelvin) => {
      const light = whiteLinearSrgb(kelvin);
      const recorded = record(light, { whiteBalance: whiteBalanceMatrix(kelvin, 0) });
      expect(relativeError(luminanceOfLinearSrgb(recorded), luminanceOfLinearSrgb(light))).toBeLessThanOrEqual(1e-9);
      expect(worst(recorded.map((v) => relativeError(v, 1)))).toBeLessThanOrEqual(1e-9);
    },
  );

  // 78 / 10, ISO 12232: saturation over mid-grey
  it('each channel is cut at 7.8, counted after the white balance', () => {
    expect(record([100, 7, 7.9], {})).toEqual([7.8, 7, 7.8]);
    const doubled: Matrix3 = [
      [2, 0, 0],
      [0, 0.5, 0],
      [0, 0, 1],
    ];
    expect(record([5, 10, 5], { whiteBalance: doubled })).toEqual([7.8, 5, 5]);
  });

  it('what is burnt in all channels stays white under any balance, with noise too', () => {
    for (const kelvin of [2800, 4200, 8000]) {
      const development = { ...plain, whiteBalance: whiteBalanceMatrix(kelvin, 0), noise: sensor };
      const burnt = recordPixel([100, 100, 100], development, view, middle, 6000, () => [0.3, 0.2]);
      expect(burnt).toEqual([7.8, 7.8, 7.8]);
    }
  });

  it('with noise too nothing is over 7.8', () => {
    expect(noisy(7.8, sensor).mean).toBeLessThan(7.8);
    const pair = () => [1e-9, 0] as const;
    expect(recordPixel([50, 50, 50], { ...plain, noise: sensor }, view, middle, 6000, pair)).toEqual([7.8, 7.8, 7.8]);
  });

  it('fall-off comes before the cut: what is full in the middle need not be in the corner', () => {
    const light: Triple = [10, 10, 10];
    expect(record(light, { vignetting: true })[0]).toBe(7.8);
    expect(record(light, { vignetting: true }, [0, 0])[0]).toBeLessThan(7.8);
  });
});

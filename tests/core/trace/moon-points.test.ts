import { describe, expect, it } from 'vitest';
import { openLens } from '../../../core/camera/camera-view.ts';
import type { Vec3 } from '../../../core/geometry/vec.ts';
import { inputAfter } from '../../../core/sky/mid-exposure.ts';
import { skyAt } from '../../../core/sky/sky-at.ts';
import type { SkyInput } from '../../../core/sky/sky-input.ts';
import { skyPicture } from '../../../core/trace/sky-picture.ts';
import { skyInput } from '../support/sky-inputs.ts';
import { luminanceAt, luxOf, type MoonPicture, meanMoonLux, moonCanvas, placeOfMoon, viewOf } from './moon-pictures.ts';

const towardMoon = (input: SkyInput): Vec3 => skyAt(input).moon.towardSeen;
/** A full moon as it rises, a half moon high up, a full one and a crescent. */
const rising = (() => {
  let input = skyInput(-33, 149, Date.UTC(2026, 7, 28, 6, 30));
  while (towardMoon(input)[1] < -0.018) input = inputAfter(input, 10);
  return input;
})();
const half = skyInput(-33, 149, Date.UTC(2026, 7, 20, 9, 0));
const full = skyInput(-33, 149, Date.UTC(2026, 7, 28, 12, 0));
const crescent = skyInput(-33, 149, Date.UTC(2026, 7, 15, 8, 15));

const pictureOf = (input: SkyInput, seconds: number, focalLengthMm: number, width: number): MoonPicture => ({
  input,
  seconds,
  focalLengthMm,
  width,
  toward: towardMoon(inputAfter(input, seconds / 2)),
});

describe('light of the moon in a picture is the mean of moonlight while the shutter is open (2 %)', () => {
  it.each([
    ['rising for 10 minutes', 600, 14, 640, rising],
    ['rising for 10 minutes', 600, 200, 640, rising],
    ['rising for 10 minutes', 600, 500, 1280, rising],
    ['rising for 25 minutes', 1500, 100, 640, rising],
    ['half', 0, 300, 640, half],
    ['half, a trail of 4 minutes', 240, 600, 1280, half],
    ['crescent', 0, 14, 640, crescent],
    ['crescent', 0, 135, 1280, crescent],
    ['crescent, 2 minutes', 120, 600, 1280, crescent],
    ['full', 0, 1200, 1440, full],
    ['full', 0, 2000, 1440, full],
    ['full, 20 s', 20, 1200, 1440, full],
  ] as const)('%s: %d s at %d mm, %d px', (_, seconds, focalLengthMm, width, input) => {
    const picture = pictureOf(input, seconds, focalLengthMm, width);
    const ours = luxOf(moonCanvas(picture), viewOf(picture));
    expect(Math.abs(ours / meanMoonLux(input, seconds) - 1)).toBeLessThan(0.02);
  });
});

describe('a wide moon', () => {
  it.each([
    [1200, 1440],
    [2000, 1440],
    [600, 2880],
  ])('has no dots: full, %d mm at %d px, neighbours within 2 % inside nine tenths of its disc', (focal, width) => {
    const picture = pictureOf(full, 0, focal, width);
    const canvas = moonCanvas(picture);
    const [mx, my] = placeOfMoon(picture, full);
    const radius = ((0.9 * skyAt(full).moon.radiusRadians * width) / 2) * (focal / 18);
    let worst = 0;
    let looked = 0;
    for (let y = 0; y < canvas.height; y++)
      for (let x = 1; x < width; x++) {
        if (Math.hypot(x - mx, y + 0.5 - my) > Math.min(radius, canvas.height / 2)) continue;
        worst = Math.max(worst, Math.abs(luminanceAt(canvas, x, y) / luminanceAt(canvas, x - 1, y) - 1));
        looked++;
      }
    expect(looked).toBeGreaterThan(50_000);
    expect(worst).toBeLessThan(0.02);
  });

  it('trails as many standing moons one after the other do (half, 40 s at 800 mm, 720 px: 1.5 % of its light)', () => {
    const picture = pictureOf(half, 40, 800, 720);
    const trail = moonCanvas(picture);
    const instants = 160;
    const sum = new Float64Array(trail.values.length);
    for (let i = 0; i < instants; i++) {
      const still = moonCanvas({ ...picture, input: inputAfter(half, (40 * (i + 0.5)) / instants), seconds: 0 });
      for (let k = 0; k < sum.length; k++) sum[k] = (sum[k] as number) + (still.values[k] as number) / instants;
    }
    const brightest = sum.reduce((most, value) => Math.max(most, value), 0);
    let [worst, apart, all] = [0, 0, 0];
    for (const [k, value] of sum.entries()) {
      const off = Math.abs((trail.values[k] as number) - value);
      worst = Math.max(worst, off / brightest);
      apart += off;
      all += value;
    }
    expect(apart / all).toBeLessThan(0.015);
    // on the rim, which falls to nothing within three pixels: standing and going moons are softened in two ways
    expect(worst).toBeLessThan(0.13);
  });
});

describe('a moon out of the picture', () => {
  it.each([
    ['behind the camera', -1],
    ['beside it', 0],
  ] as const)('%s, wide as it would be: adds nothing', (_, along) => {
    const [x, y, z] = towardMoon(full);
    const toward: Vec3 = along < 0 ? [-x, -y, -z] : [-z, 0, x];
    const canvas = moonCanvas({ ...pictureOf(full, 0, 1200, 1440), toward });
    expect(canvas.values.every((v) => v === 0)).toBe(true);
  });

  it('a few degrees past its edge: adds nothing', () => {
    const [x, y, z] = towardMoon(full);
    const canvas = moonCanvas({ ...pictureOf(full, 0, 1200, 1440), toward: [x - 0.1 * z, y, z + 0.1 * x] });
    expect(canvas.values.every((v) => v === 0)).toBe(true);
  });
});

describe('a moon out of focus', () => {
  // 26 s before points were no more than the blur shows
  it('400 mm at f/4 focused at 20 m, 960 x 640: drawn within 3 s, its light right (2 %)', () => {
    const picture = pictureOf(half, 0, 400, 960);
    const view = openLens(viewOf(picture), 400, 4, 20);
    const frame = { view, width: 960, height: 640 };
    const seen = (input: SkyInput) => skyPicture(frame, { input, domes: [], seconds: 0, haze: null }, null);
    const start = performance.now();
    const values = seen(half);
    expect(performance.now() - start).toBeLessThan(3000);
    // the same sky with the moon's disc behind the camera is what the moon is seen against
    const away = skyPicture(
      { ...frame, view: openLens(viewOf(picture), 400, 4, 1e9) },
      { input: half, domes: [], seconds: 0, haze: null },
      null,
    );
    const lux = (each: Float32Array) => luxOf({ width: 960, height: 640, values: each }, view);
    const moonless = lux(away) - meanMoonLux(half, 0, 1);
    expect(Math.abs((lux(values) - moonless) / meanMoonLux(half, 0, 1) - 1)).toBeLessThan(0.02);
  });
});

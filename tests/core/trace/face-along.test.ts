import { describe, expect, it } from 'vitest';
import type { MoonFace } from '../../../core/sky/moon-face.ts';
import { faceAlong } from '../../../core/trace/face-along.ts';

const radius = 0.0045;
/** A disc that is brighter to the right; its light is that of an even one of 1 cd/m2. */
const face: MoonFace = {
  luminanceAt: (x) => 1 + 0.5 * Math.min(Math.max(x, -1), 1),
  chord: radius,
  steradians: Math.PI * radius ** 2,
  lux: Math.PI * radius ** 2,
};
const [soft, radiusPixels] = [0.05, 20];

describe('faceAlong', () => {
  const standing = faceAlong(face, [0, 0], soft, radiusPixels);

  it.each([
    [0.03, 0.02],
    [0.15, -0.1],
    [-0.25, 0.2],
    [0, 0.39],
  ])('on a way of %f, %f radii, under eight pixels, is the mean of what stands along it (abs 0.02)', (across, up) => {
    const mean = faceAlong(face, [across, up], soft, radiusPixels);
    const shares = Array.from({ length: 400 }, (_, i) => (i + 0.5) / 400);
    for (let x = -1.5; x <= 1.5; x += 0.21)
      for (let y = -1.5; y <= 1.5; y += 0.19) {
        const fine = shares.reduce((sum, t) => sum + standing(x - t * across, y - t * up), 0) / shares.length;
        expect(Math.abs(mean(x, y) - fine)).toBeLessThanOrEqual(0.02);
      }
  });

  it.each([0, 0.1, 0.3, 0.6, 2])('has the light of the disc on a way of %f radii (rel 0.5 %)', (across) => {
    const mean = faceAlong(face, [across, 0], soft, radiusPixels);
    const step = 0.01;
    let sum = 0;
    for (let x = -1.5; x < 1.5 + across; x += step)
      for (let y = -1.5; y < 1.5; y += step) sum += mean(x, y) * step ** 2;
    expect(Math.abs(sum / Math.PI - 1)).toBeLessThan(0.005);
  });
});

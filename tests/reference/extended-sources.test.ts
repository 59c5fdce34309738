import { describe, expect, it } from 'vitest';
import { add, scale, type Vec3 } from '../../core/geometry/vec.ts';
import { lambertianBeam } from '../../core/photometry/beam.ts';
import { discFactorOnAxis, rectangleFactorUnderCorner } from '../../core/photometry/closed-forms.ts';
import type { Emitter } from '../../core/photometry/emitter.ts';
import { meter } from '../../core/trace/meter.ts';
import { relativeError } from '../core/support/errors.ts';
import { discEmitter, halfSpaceBeam, stageWith, standing } from '../core/support/scenes.ts';

const stage = stageWith();
const samples = 8192;
const up: Vec3 = [0, 1, 0];
const north: Vec3 = [0, 0, -1];
const south: Vec3 = [0, 0, 1];
/** High over the ground, so that the ground can't get in the way. */
const element: Vec3 = [0, 10, 0];

const rectangleEmitter = (width: number, height: number): Emitter => ({
  shape: 'rectangle',
  halfWidthMetres: width / 2,
  halfHeightMetres: height / 2,
  beam: lambertianBeam,
});

/** Factor F = E / (pi L) of a lamp of one lumen, L = 1 / (pi area), by sampling. */
const sampledFactor = (emitter: Emitter, area: number, lamp: Vec3, aim: Vec3, normal: Vec3): number =>
  meter(stage, standing(lamp, aim, emitter), element, normal, samples) * area;

const above = (offset: Vec3): Vec3 => add(element, offset);

// Row 1.2a: F = R2 / (R2 + d2), I. Martinez (UPM), problem m13_p27; numbers computed
describe('Lambertian disc over its axis', () => {
  it.each([
    [1, 0.5],
    [0.5, 0.2],
    [0.25, 0.0588235],
    [0.2, 0.0384615],
    [0.1, 0.00990099],
  ])('1.2a: R/d = %d gives F = %d: closed form (rel 2e-6, the table’s rounding) and sampled (1 %)', (ratio, factor) => {
    expect(relativeError(discFactorOnAxis(ratio, 1), factor)).toBeLessThanOrEqual(2e-6);
    const sampled = sampledFactor(
      discEmitter(ratio, lambertianBeam),
      Math.PI * ratio ** 2,
      above([0, 1, 0]),
      element,
      up,
    );
    expect(relativeError(sampled, factor)).toBeLessThanOrEqual(0.01);
  });

  // Row 1.2b: plate-element-to-disc derivation; holds while the whole disc stands before the element
  it.each([20, 45, 70])('1.2b: an element tilted by %d degrees gets F cos (1 %)', (degrees) => {
    const w = (degrees * Math.PI) / 180;
    const normal: Vec3 = [Math.sin(w), Math.cos(w), 0];
    const sampled = sampledFactor(discEmitter(0.2, lambertianBeam), Math.PI * 0.04, above([0, 1, 0]), element, normal);
    expect(relativeError(sampled, 0.0384615 * Math.cos(w))).toBeLessThanOrEqual(0.01);
  });
});

// Row 1.2c: F = (R/d)^2 cos, from memory
describe('Lambertian sphere', () => {
  it.each([0, 40, 70])('1.2c: R = 0.05 m at 1 m, element tilted by %d degrees: F = 0.0025 cos (1 %)', (degrees) => {
    const w = (degrees * Math.PI) / 180;
    const globe: Emitter = { shape: 'sphere', halfWidthMetres: 0.05, halfHeightMetres: 0, beam: lambertianBeam };
    const sampled = sampledFactor(globe, 4 * Math.PI * 0.05 ** 2, above([0, 1, 0]), element, [
      Math.sin(w),
      Math.cos(w),
      0,
    ]);
    expect(relativeError(sampled, 0.0025 * Math.cos(w))).toBeLessThanOrEqual(0.01);
  });
});

// Rows 1.2d-f: Howell B-4 (catalogue number from memory); numbers computed three ways: formula, polygon, Monte Carlo
describe('Lambertian rectangle', () => {
  it.each([
    [1, 1, 0.138532],
    [1, 2, 0.167375],
    [2, 2, 0.207757],
    [0.5, 0.5, 0.059864],
    [0.3, 0.3, 0.025593],
    [0.5, 0.25, 0.033091],
  ])('1.2d, e: X = %d, Y = %d under a corner: F = %d: closed form (abs 1e-6) and sampled (1 %)', (x, y, factor) => {
    expect(Math.abs(rectangleFactorUnderCorner(x, y, 1) - factor)).toBeLessThanOrEqual(1e-6);
    // the lamp stands to the north and faces south, so its width runs level and its height upright
    const middle = above([x / 2, y / 2, -1]);
    const sampled = sampledFactor(rectangleEmitter(x, y), x * y, middle, add(middle, south), north);
    expect(relativeError(sampled, factor)).toBeLessThanOrEqual(0.01);
  });

  it('1.2f: a square 2 x 2 centred over the element at 1 m: F = 0.554126: closed form (abs 2e-6) and sampled (1 %)', () => {
    expect(Math.abs(4 * rectangleFactorUnderCorner(1, 1, 1) - 0.554126)).toBeLessThanOrEqual(2e-6);
    const sampled = sampledFactor(rectangleEmitter(2, 2), 4, above([0, 1, 0]), element, up);
    expect(relativeError(sampled, 0.554126)).toBeLessThanOrEqual(0.01);
  });

  // Howell B-3 (catalogue number from memory); Tregenza and Sharples algorithm 3.15, citing Siegel and Howell (row 1.2g)
  it.each([
    [1, 1, 1, 0.055734],
    [1, 2, 1, 0.068697],
    [2, 2, 1, 0.124269],
  ])(
    '1.2g: standing on the element’s plane, height %d, width %d, %d away: F = %d, sampled (1 %)',
    (a, b, c, factor) => {
      const lamp = above([b / 2, a / 2, -c]);
      const sampled = sampledFactor(rectangleEmitter(b, a), a * b, lamp, add(lamp, south), up);
      expect(relativeError(sampled, factor)).toBeLessThanOrEqual(0.01);
    },
  );

  // four corner factors (row 1.2k)
  it.each([
    [1, 284.366],
    [3, 34.9027],
  ])(
    '1.2k: a soft panel 0.6 x 0.6 m of 1000 lm gives, %d m off, %d lx: closed form (rel 1e-5) and sampled (1 %)',
    (d, lux) => {
      const luminance = 1000 / (Math.PI * 0.36);
      expect(relativeError(Math.PI * luminance * 4 * rectangleFactorUnderCorner(0.3, 0.3, d), lux)).toBeLessThanOrEqual(
        1e-5,
      );
      const panel = standing(above([0, d, 0]), element, rectangleEmitter(0.6, 0.6));
      expect(relativeError(1000 * meter(stage, panel, element, up, samples), lux)).toBeLessThanOrEqual(0.01);
    },
  );

  // Howell C-11, Siegel and Howell, 4th edition, p. 843, worked number 0.4756 (row 1.3a)
  it('1.3a: parallel rectangles 1 x 1.5 with a gap of 0.5: F12 = 0.4756 as the mean over a grid of elements (1 %)', () => {
    const lamp = standing(above([0, 0, -0.5]), element, rectangleEmitter(1, 1.5));
    const [columns, rows] = [10, 15];
    let sum = 0;
    for (let i = 0; i < columns; i++)
      for (let j = 0; j < rows; j++) {
        const point = above([(i + 0.5) / columns - 0.5, 1.5 * ((j + 0.5) / rows - 0.5), 0]);
        sum += meter(stage, lamp, point, north, 512) * 1.5;
      }
    expect(relativeError(sum / (columns * rows), 0.4756)).toBeLessThanOrEqual(0.01);
  });
});

// Rows 1.4: own derivations of the check values, computed from the inverse square and cosine laws
describe('moving lamp', () => {
  const [candela, metresPerSecond, away] = [1000, 0.5, 2];
  const walked = (reachMetres: number): number => {
    const seconds = (2 * reachMetres) / metresPerSecond;
    const at = (x: number): { position: Vec3; aim: Vec3 } => ({ position: [x, 10, away], aim: [x, 10, 0] });
    const path = [
      { seconds: 0, ...at(-reachMetres) },
      { seconds, ...at(reachMetres) },
    ];
    const source = { ...standing(element, up, discEmitter(0, halfSpaceBeam)), path, onOff: [0, seconds] as const };
    return 2 * Math.PI * candela * seconds * meter(stage, source, element, [0, 0, 1], samples);
  };

  it('1.4b: 1000 cd carried at 0.5 m/s from 1 m left to 1 m right, 2 m off: 894.427 lx s (0.1 %)', () => {
    expect(relativeError(walked(1), 894.427)).toBeLessThanOrEqual(0.001);
  });
  it('1.4a: the same over a very long track: 2000 lx s (1 %)', () => {
    expect(relativeError(walked(40), 2000 * (40 / Math.hypot(40, 2)))).toBeLessThanOrEqual(0.01);
    expect(relativeError(walked(40), 2000)).toBeLessThanOrEqual(0.01);
  });
  it('an element that looks away from the lamp gets nothing', () => {
    const lamp = standing(above([0, 1, 0]), element, discEmitter(0.2));
    expect(meter(stage, lamp, element, scale(up, -1), 64)).toBe(0);
    expect(meter(stage, lamp, element, up, 64)).toBeGreaterThan(0);
  });
});

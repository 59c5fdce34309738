import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { blurDiameterMm, depthLimits, hyperfocalMm } from '../../../core/camera/depth-of-field.ts';
import { relativeError } from '../support/errors.ts';

const seed = 20260;
const lens = fc.record({
  f: fc.double({ min: 8, max: 400, noNaN: true }),
  n: fc.double({ min: 1, max: 22, noNaN: true }),
  c: fc.double({ min: 0.004, max: 0.05, noNaN: true }),
});
/** Focused distance in focal lengths. */
const turns = fc.double({ min: 2, max: 5000, noNaN: true });

describe('depthLimits', () => {
  it(`a point at either limit blurs to the circle of confusion (rel 1e-7, seed ${seed})`, () => {
    fc.assert(
      fc.property(lens, turns, ({ f, n, c }, k) => {
        const { nearMm, farMm } = depthLimits(f, n, c, k * f);
        expect(relativeError(blurDiameterMm(f, n, k * f, nearMm), c)).toBeLessThanOrEqual(1e-7);
        // past the hyperfocal distance even infinity is sharper than the circle
        if (Number.isFinite(farMm)) expect(relativeError(blurDiameterMm(f, n, k * f, farMm), c)).toBeLessThan(1e-7);
        else expect(blurDiameterMm(f, n, k * f, farMm)).toBeLessThanOrEqual(c * (1 + 1e-9));
      }),
      { seed },
    );
  });

  it(`lies round the focus, and a smaller opening or a larger circle is deeper (seed ${seed})`, () => {
    fc.assert(
      fc.property(lens, turns, ({ f, n, c }, k) => {
        const one = depthLimits(f, n, c, k * f);
        expect(one.nearMm).toBeLessThan(k * f);
        expect(one.farMm).toBeGreaterThan(k * f);
        for (const deeper of [depthLimits(f, n * 1.4, c, k * f), depthLimits(f, n, c * 1.4, k * f)]) {
          expect(deeper.nearMm).toBeLessThan(one.nearMm);
          expect(deeper.farMm).toBeGreaterThanOrEqual(one.farMm);
        }
      }),
      { seed },
    );
  });

  it('focused at the hyperfocal distance reaches from half of it to infinity; just short of it, not (rel 1e-12)', () => {
    const h = hyperfocalMm(24, 4, 0.03);
    const { nearMm, farMm } = depthLimits(24, 4, 0.03, h);
    expect(relativeError(nearMm, h / 2)).toBeLessThanOrEqual(1e-12);
    expect(farMm).toBe(Number.POSITIVE_INFINITY);
    expect(depthLimits(24, 4, 0.03, h * 0.999).farMm).toBeLessThan(Number.POSITIVE_INFINITY);
  });

  it('focused at infinity starts at H - f (rel 1e-12)', () => {
    const { nearMm, farMm } = depthLimits(24, 4, 0.03, Number.POSITIVE_INFINITY);
    expect(relativeError(nearMm, hyperfocalMm(24, 4, 0.03) - 24)).toBeLessThanOrEqual(1e-12);
    expect(farMm).toBe(Number.POSITIVE_INFINITY);
  });

  it('refuses a focus within the focal length', () => {
    for (const focus of [50, 3, Number.NaN]) {
      expect(() => depthLimits(50, 8, 0.03, focus)).toThrow(RangeError);
      expect(() => blurDiameterMm(50, 8, focus, 2000)).toThrow('beyond the focal length of 50 mm');
    }
  });
});

describe('blurDiameterMm', () => {
  /** The cone of light behind the lens, cut where the sensor stands: 1/f = 1/d + 1/v. */
  const coneOnSensor = (f: number, n: number, s: number, d: number): number => {
    const sensor = 1 / (1 / f - 1 / s);
    const tip = 1 / (1 / f - 1 / d);
    return ((f / n) * Math.abs(sensor - tip)) / tip;
  };

  it(`agrees with the cone of the thin-lens equation (rel 1e-7, seed ${seed})`, () => {
    const far = fc.double({ min: 1.01, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(lens, turns, far, ({ f, n }, k, m) => {
        fc.pre(Math.abs(m / k - 1) > 1e-3);
        const ours = blurDiameterMm(f, n, k * f, m * f);
        expect(relativeError(ours, coneOnSensor(f, n, k * f, m * f))).toBeLessThanOrEqual(1e-7);
      }),
      { seed },
    );
  });

  it('is 0 in focus; a star is f^2 / (N (s - f)), and sharp when focused at infinity (rel 1e-12)', () => {
    const infinity = Number.POSITIVE_INFINITY;
    expect(blurDiameterMm(50, 2, 3000, 3000)).toBe(0);
    expect(relativeError(blurDiameterMm(50, 2, 3000, infinity), 2500 / (2 * 2950))).toBeLessThanOrEqual(1e-12);
    expect(blurDiameterMm(50, 2, infinity, infinity)).toBe(0);
    expect(relativeError(blurDiameterMm(50, 2, infinity, 1000), 2500 / 2 / 1000)).toBeLessThanOrEqual(1e-12);
  });
});

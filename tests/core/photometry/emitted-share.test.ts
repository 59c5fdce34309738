import { describe, expect, it } from 'vitest';
import { exponentFromHalfPeak } from '../../../core/photometry/beam.ts';
import { distributionOf } from '../../../core/photometry/distribution.ts';
import { fluxExact, fluxWithin } from '../../../core/photometry/distribution-flux.ts';
import { emittedShare } from '../../../core/photometry/emitted-share.ts';
import type { Emitter } from '../../../core/photometry/emitter.ts';
import { radiansFromDegrees } from '../../../core/units/angle.ts';
import { emitterOf } from '../../../core/world/lamp-light.ts';
import { relativeError, worst } from '../support/errors.ts';
import { lampOf, measuredField } from './lamps.ts';

const cosHalf = (fullDegrees: number): number => Math.cos(radiansFromDegrees(fullDegrees / 2));
const snooted = (emitter: Emitter, fullDegrees: number, spreadShare = 0): number =>
  emittedShare({ ...emitter, front: { spreadShare, cosSnoot: cosHalf(fullDegrees) } });
const torch = (beam: object): Emitter => emitterOf(lampOf({ kind: 'torch', beam }));
const snoots = [2, 10, 35, 60, 70, 100, 150, 179];
/** Worst relative error over snoots of a lamp against a closed form of the snoot's full angle. */
const apart = (emitter: Emitter, expected: (fullDegrees: number) => number): number =>
  worst(snoots.map((degrees) => relativeError(snooted(emitter, degrees), expected(degrees))));

// flux of a cone over flux of all: integrals of first principles
describe('emittedShare behind a snoot (rel 1e-9)', () => {
  it('even cone: the solid angles’ ratio, and all of it when the snoot is wider', () => {
    for (const degrees of [20, 60, 120])
      expect(
        apart(torch({ shape: 'flood', degrees }), (snoot) =>
          Math.min((1 - cosHalf(snoot)) / (1 - cosHalf(degrees)), 1),
        ),
      ).toBeLessThanOrEqual(1e-9);
  });

  it('lobe cos^n: 1 - cos^(n+1) of the half angle', () => {
    for (const degrees of [8, 40, 120]) {
      const exponent = exponentFromHalfPeak(radiansFromDegrees(degrees / 2));
      const expected = (snoot: number) => 1 - cosHalf(snoot) ** (exponent + 1);
      expect(apart(torch({ shape: 'lobe', degrees }), expected)).toBeLessThanOrEqual(1e-9);
    }
  });

  it('Lambertian: the square of the sine', () => {
    expect(apart(torch({ shape: 'open' }), (snoot) => 1 - cosHalf(snoot) ** 2)).toBeLessThanOrEqual(1e-9);
  });

  it('even point and globe: (1 - cos) / 2', () => {
    const expected = (snoot: number) => (1 - cosHalf(snoot)) / 2;
    expect(apart(emitterOf(lampOf({ kind: 'point' })), expected)).toBeLessThanOrEqual(1e-9);
    expect(apart(emitterOf(lampOf({ kind: 'lantern' })), expected)).toBeLessThanOrEqual(1e-9);
  });

  it('spot: lobe and spill by their shares, the spill’s straight edge as a trapezium over the cosine', () => {
    const [beamDegrees, spillDegrees, spillShare] = [15, 80, 0.35];
    const exponent = exponentFromHalfPeak(radiansFromDegrees(beamDegrees / 2));
    // even up to three quarters of the half angle, our own choice
    const [even, outer] = [cosHalf(spillDegrees * 0.75), cosHalf(spillDegrees)];
    const trapezium = (from: number): number => {
      const level = (cos: number) => Math.min(Math.max((cos - outer) / (even - outer), 0), 1);
      const edge = Math.min(Math.max(from, outer), even);
      return 1 - Math.max(from, even) + ((level(edge) + 1) / 2) * (even - edge);
    };
    const expected = (snoot: number) =>
      (1 - spillShare) * (1 - cosHalf(snoot) ** (exponent + 1)) +
      (spillShare * trapezium(cosHalf(snoot))) / trapezium(-1);
    const spot = torch({ shape: 'spot', beamDegrees, spillDegrees, spillShare });
    expect(apart(spot, expected)).toBeLessThanOrEqual(1e-9);
  });

  it('measured, even within 40 degrees of the axis: the solid angles’ ratio; in general what fluxWithin says', () => {
    const measured = (value: (v: number) => number) => {
      const field = measuredField([0, 10, 25, 40], [0], value);
      const lamp = lampOf({ kind: 'torch', beam: { shape: 'measured', beamId: 'file' } });
      return { emitter: emitterOf(lamp, [field]), distribution: distributionOf(field) };
    };
    const flat = measured(() => 700);
    const cone = (snoot: number) => Math.min((1 - cosHalf(snoot)) / (1 - cosHalf(80)), 1);
    expect(apart(flat.emitter, cone)).toBeLessThanOrEqual(1e-9);
    const peaked = measured((v) => 1000 - 20 * v);
    const within = (snoot: number) =>
      fluxWithin(peaked.distribution, radiansFromDegrees(snoot / 2)) / fluxExact(peaked.distribution);
    expect(apart(peaked.emitter, within)).toBeLessThanOrEqual(1e-9);
  });

  it('cloth that spreads all makes any beam Lambertian, and a share of it mixes the two', () => {
    for (const beam of [{ shape: 'flood', degrees: 20 }, { shape: 'lobe', degrees: 30 }, { shape: 'open' }])
      for (const degrees of snoots) {
        const [bare, spread] = [snooted(torch(beam), degrees), 1 - cosHalf(degrees) ** 2];
        expect(relativeError(snooted(torch(beam), degrees, 1), spread)).toBeLessThanOrEqual(1e-9);
        expect(relativeError(snooted(torch(beam), degrees, 0.3), 0.7 * bare + 0.3 * spread)).toBeLessThanOrEqual(1e-9);
      }
  });

  it('is 1 for a bare lamp and for one with cloth alone', () => {
    expect(emittedShare(torch({ shape: 'open' }))).toBe(1);
    expect(emittedShare({ ...torch({ shape: 'open' }), front: { spreadShare: 0.6, cosSnoot: -1 } })).toBe(1);
  });
});

describe('emittedShare of a snooted tube', () => {
  const tube = emitterOf(lampOf({ kind: 'tube', lengthMm: 900 }));
  it('a half space has half of it, by symmetry (rel 1e-3)', () => {
    expect(relativeError(snooted(tube, 180), 0.5)).toBeLessThanOrEqual(1e-3);
  });
  it('a narrow cone has its solid angle times the peak of 1 / pi^2 (rel 2e-3)', () => {
    const solidAngle = 2 * Math.PI * (1 - cosHalf(6));
    expect(relativeError(snooted(tube, 6), solidAngle / Math.PI ** 2)).toBeLessThanOrEqual(2e-3);
  });
  it('a cone of 90 degrees has the sine summed over it, the tube’s sine as a series (rel 2e-3)', () => {
    // sqrt(1 - x) by the binomial series, x = sin^2 t cos^2 p; the mean of cos^2k p is (2k)! / (4^k k!^2)
    const top = Math.sin(Math.PI / 4) ** 2;
    let sum = 0;
    const steps = 20_000;
    for (let i = 0; i < steps; i++) {
      const cos = 1 - ((i + 0.5) / steps) * (1 - Math.SQRT1_2);
      const x = 1 - cos * cos;
      let [term, mean, value] = [1, 1, 1];
      for (let k = 1; k < 40; k++) {
        term *= ((k - 1.5) / k) * x;
        mean *= (2 * k - 1) / (2 * k);
        value += term * mean;
      }
      sum += value;
    }
    expect(top).toBeCloseTo(0.5, 12);
    const expected = ((sum / steps) * 2 * Math.PI * (1 - Math.SQRT1_2)) / Math.PI ** 2;
    expect(relativeError(snooted(tube, 90), expected)).toBeLessThanOrEqual(2e-3);
  });
});

import { describe, expect, it } from 'vitest';
import {
  candelaAt,
  type Distribution,
  distributionOf,
  type MeasuredPlanes,
  peakCandela,
} from '../../../core/photometry/distribution.ts';
import { fluxExact, fluxWithin, fluxZonal } from '../../../core/photometry/distribution-flux.ts';
import { radiansFromDegrees } from '../../../core/units/angle.ts';
import { relativeError, worst } from '../support/errors.ts';
import { stepped } from './lm63/lm63-text.ts';

const measured = (
  verticalDegrees: readonly number[],
  horizontalDegrees: readonly number[],
  value: (v: number, h: number) => number,
): MeasuredPlanes => ({
  verticalDegrees,
  horizontalDegrees,
  candela: horizontalDegrees.map((h) => verticalDegrees.map((v) => value(v, h))),
});
const built = (...planes: Parameters<typeof measured>): Distribution => distributionOf(measured(...planes));
/** The same with angles in degrees. */
const at = (distribution: Distribution, v: number, h: number): number =>
  candelaAt(distribution, radiansFromDegrees(v), radiansFromDegrees(h));
/** Worst relative difference of two distributions, the second one turned, over directions all round. */
const apart = (a: Distribution, b: Distribution, turnDegrees = 0): number => {
  const errors: number[] = [];
  for (let v = 0; v <= 90; v += 7.3)
    for (let h = -400; h < 800; h += 11.7) errors.push(relativeError(at(b, v, h + turnDegrees), at(a, v, h)));
  return worst(errors);
};
const cos = (degrees: number): number => Math.cos(radiansFromDegrees(degrees));
const sin = (degrees: number): number => Math.sin(radiansFromDegrees(degrees));
const verticals = stepped(0, 90, 15);
const circle = stepped(0, 360, 15);
/** Patterns with the symmetry of each kind of file, by formula over the full circle; none is 0 anywhere. */
const rotational = (v: number): number => 200 + v;
const quadrant = (v: number, h: number): number => 300 + v * cos(2 * h);
const along = (v: number, h: number): number => 300 + v * cos(2 * h) + v * cos(h);
const across = (v: number, h: number): number => 300 + v * cos(2 * h) + v * sin(h);
const none = (v: number, h: number): number => 300 + v * cos(h) + v * sin(2 * h - 20);

describe('distributionOf unfolds the symmetry of a file (rel 1e-12 of the pattern measured all round)', () => {
  it.each([
    ['a single plane', [0], rotational],
    ['0 to 90', stepped(0, 90, 15), quadrant],
    ['0 to 180', stepped(0, 180, 15), along],
    ['90 to 270', stepped(90, 270, 15), across],
    ['0 to 360', circle, none],
    ['0 to 345 without 360', stepped(0, 345, 15), none],
  ] as const)('%s', (_, horizontals, pattern) => {
    const distribution = built(verticals, horizontals, pattern);
    expect(apart(built(verticals, circle, pattern), distribution)).toBeLessThanOrEqual(1e-12);
    const { horizontalRadians: h, verticalRadians: v, candela } = distribution;
    expect([h[0], h.at(-1)]).toEqual([0, 2 * Math.PI]);
    expect(h.every((angle, k) => k === 0 || angle > (h[k - 1] as number))).toBe(true);
    expect(candela.slice(0, v.length)).toEqual(candela.slice(-v.length));
  });

  it('a single plane becomes two, at 0 and 2 pi', () => {
    const { horizontalRadians, candela } = built([0, 90], [0], rotational);
    expect([...horizontalRadians]).toEqual([0, 2 * Math.PI]);
    expect([...candela]).toEqual([200, 290, 200, 290]);
  });

  it('90 to 270 without a plane at 180 is closed by what lies between its neighbours (rel 1e-12)', () => {
    const distribution = built([0, 90], [90, 135, 225, 270], (_, h) => h);
    expect(relativeError(at(distribution, 30, 0), 180)).toBeLessThanOrEqual(1e-12);
    expect(relativeError(at(distribution, 30, 180), 180)).toBeLessThanOrEqual(1e-12);
    expect(relativeError(at(distribution, 30, 45), 135)).toBeLessThanOrEqual(1e-12);
    expect(relativeError(at(distribution, 30, -45), 225)).toBeLessThanOrEqual(1e-12);
    // unevenly spaced planes: 0 lies 90 degrees from one neighbour and 80 from the other
    expect(
      relativeError(
        at(
          built([0, 90], [90, 100, 270], (_, h) => h),
          30,
          0,
        ),
        180,
      ),
    ).toBeLessThanOrEqual(1e-12);
  });

  it('between 345 and the plane 0 that a file leaves out 360 for lies their mean (rel 1e-12)', () => {
    const distribution = built([0, 90], stepped(0, 345, 15), (_, h) => 100 + h);
    expect(relativeError(at(distribution, 30, 352.5), (445 + 100) / 2)).toBeLessThanOrEqual(1e-12);
  });

  it('the plane 360 is the plane 0 also where a file says otherwise', () => {
    expect(
      at(
        built([0, 90], [0, 180, 360], (_, h) => 100 + h),
        30,
        359.9999999,
      ),
    ).toBeLessThan(100.001);
  });

  it('a file measured a turn further on gives the same light turned (rel 1e-12)', () => {
    const turned = built(verticals, circle, (v, h) => none(v, h - 45));
    expect(apart(built(verticals, circle, none), turned, 45)).toBeLessThanOrEqual(1e-12);
  });
});

describe('candelaAt', () => {
  const distribution = built([0, 10, 30, 90], [0, 30, 90, 180, 270, 360], none);
  it('is the measured value at measured angles, and straight between them (rel 1e-12)', () => {
    expect(relativeError(at(distribution, 30, 90), none(30, 90))).toBeLessThanOrEqual(1e-12);
    expect(relativeError(at(distribution, 90, 0), none(90, 0))).toBeLessThanOrEqual(1e-12);
    const mean = (none(10, 30) + none(10, 90) + none(30, 30) + none(30, 90)) / 4;
    expect(relativeError(at(distribution, 20, 60), mean)).toBeLessThanOrEqual(1e-12);
    const quarter = none(0, 180) * 0.75 + none(10, 180) * 0.25;
    expect(relativeError(at(distribution, 2.5, 180), quarter)).toBeLessThanOrEqual(1e-12);
  });
  it('wraps round the axis (rel 1e-9)', () => {
    for (const h of [0, 12, 200, 359])
      for (const turns of [-1000, -2, -1, 1, 7])
        expect(relativeError(at(distribution, 40, h + 360 * turns), at(distribution, 40, h))).toBeLessThanOrEqual(1e-9);
    expect(relativeError(candelaAt(distribution, 1, -1e-20), candelaAt(distribution, 1, 0))).toBeLessThanOrEqual(1e-12);
  });
  it('is dark outside the vertical range and not at its ends', () => {
    const spot = built([0, 60], [0], () => 5);
    const upward = built([90, 180], [0], () => 5);
    expect([at(spot, 0, 0), at(spot, 60, 0), at(spot, 60.001, 0), at(spot, 180, 0)]).toEqual([5, 5, 0, 0]);
    expect([at(upward, 89.999, 0), at(upward, 90, 0), candelaAt(upward, Math.PI, 0)]).toEqual([0, 5, 5]);
  });
  it('stays finite where two angles are the same number', () => {
    const step = built([0, 30, 30 + 1e-15, 90], [0, 1e-15, 360], () => 7);
    for (const v of [29, 30, 31, 90]) expect(at(step, v, 0)).toBeCloseTo(7, 12);
    const last = built([0, 30, 30 + 1e-15], [0], () => 7);
    for (const v of [0, 29, 30]) expect(at(last, v, 0)).toBeCloseTo(7, 12);
    expect(Number.isFinite(fluxExact(step))).toBe(true);
  });
  it('is nowhere above the peak', () => expect(peakCandela(distribution)).toBe(Math.max(...distribution.candela)));
});

describe('flux', () => {
  // 4 pi I, and 2 pi I (1 - cos) of a cone: solid angles, first principles
  it('of 10 cd all round is 40 pi lm, within 25 degrees its cone’s share, by both rules (rel 1e-12)', () => {
    for (const horizontals of [[0], [0, 90], [0, 100, 300]]) {
      const even = built([0, 20, 95, 180], horizontals, () => 10);
      for (const flux of [fluxZonal(even), fluxExact(even)])
        expect(relativeError(flux, 40 * Math.PI)).toBeLessThanOrEqual(1e-12);
      const cone = fluxWithin(even, radiansFromDegrees(25));
      expect(relativeError(cone, 20 * Math.PI * (1 - cos(25)))).toBeLessThanOrEqual(1e-12);
    }
  });

  it('within a cone is the integral of candelaAt over it, by the midpoint rule in 800 x 400 parts (rel 2e-5)', () => {
    const distribution = built([0, 8, 20, 50, 75], [0, 40, 90, 200, 310], none);
    for (const half of [radiansFromDegrees(33), radiansFromDegrees(75), Math.PI]) {
      const top = Math.min(half, radiansFromDegrees(75));
      let sum = 0;
      for (let i = 0; i < 800; i++) {
        const v = (top * (i + 0.5)) / 800;
        for (let j = 0; j < 400; j++) sum += candelaAt(distribution, v, (2 * Math.PI * (j + 0.5)) / 400) * Math.sin(v);
      }
      const sampled = (sum * top * 2 * Math.PI) / (800 * 400);
      expect(relativeError(fluxWithin(distribution, half), sampled)).toBeLessThanOrEqual(2e-5);
    }
  });

  it('does not change when the planes are turned, nor when nothing is cut into more zones (rel 1e-12)', () => {
    const plain = fluxExact(built(verticals, circle, none));
    const turned = fluxExact(built(verticals, circle, (v, h) => none(v, h - 45)));
    expect(relativeError(turned, plain)).toBeLessThanOrEqual(1e-12);
    const [coarse, fine] = [[0, 90], stepped(0, 90, 1e-2)].map((v) => fluxExact(built(v, [0], (t) => 900 - 9 * t)));
    expect(relativeError(fine as number, coarse as number)).toBeLessThanOrEqual(1e-12);
  });

  it('within 0 is 0, grows with the cone, and is all of it at pi', () => {
    const distribution = built(verticals, circle, none);
    const cones = stepped(0, 180, 4).map((degrees) => fluxWithin(distribution, radiansFromDegrees(degrees)));
    expect(cones[0]).toBe(0);
    expect(cones.every((flux, k) => k === 0 || flux >= (cones[k - 1] as number))).toBe(true);
    expect(fluxWithin(distribution, Math.PI)).toBe(fluxExact(distribution));
    expect(
      fluxWithin(
        built([90, 180], [0], () => 5),
        radiansFromDegrees(80),
      ),
    ).toBe(0);
  });
});

import { describe, expect, it } from 'vitest';
import type { Vec3 } from '../../core/geometry/vec.ts';
import { relativeError } from '../core/support/errors.ts';
import {
  discFactorOnAxis,
  pointIlluminance,
  rectangleFactorUnderCorner,
  rectangleFactorUpright,
  sphereFactor,
  tubeIlluminanceUnderEnd,
} from './support/closed-forms.ts';
import { polygonFactor } from './support/polygon-factor.ts';

const origin: Vec3 = [0, 0, 0];
const up: Vec3 = [0, 1, 0];
const sizes = [0.02, 0.7, 3, 40];
const triples = sizes.flatMap((a) => sizes.flatMap((b) => sizes.map((c) => [a, b, c] as const)));

const ring = (count: number, radius: number, height: number): Vec3[] =>
  Array.from({ length: count }, (_, i) => {
    const turn = (2 * Math.PI * i) / count;
    return [radius * Math.cos(turn), height, radius * Math.sin(turn)];
  });

describe('point', () => {
  it('falls to a quarter at twice the distance and to a half at 60 degrees (rel 1e-15)', () => {
    expect(relativeError(pointIlluminance(800, 1, 6), pointIlluminance(800, 1, 3) / 4)).toBeLessThanOrEqual(1e-15);
    expect(relativeError(pointIlluminance(800, 0.5, 3), pointIlluminance(800, 1, 3) / 2)).toBeLessThanOrEqual(1e-15);
  });
});

describe('disc and sphere', () => {
  it.each(sizes)(
    'radius %d: a disc that fills the sky has the factor 1, one far away that of a point (rel 1e-6)',
    (r) => {
      expect(relativeError(discFactorOnAxis(r, r * 1e-4), 1)).toBeLessThanOrEqual(1e-6);
      const [d, luminance] = [r * 1e4, 7];
      const point = pointIlluminance(luminance * Math.PI * r * r, 1, d);
      expect(relativeError(Math.PI * luminance * discFactorOnAxis(r, d), point)).toBeLessThanOrEqual(1e-6);
    },
  );

  it.each([1.01, 1.5, 20])('a sphere %d radii away covers as much as the disc of its outline (rel 1e-12)', (d) => {
    // the rays that touch it touch along a circle of radius sqrt(1 - 1/d^2), d - 1/d away
    const outline = discFactorOnAxis(Math.sqrt(1 - 1 / d ** 2), d - 1 / d);
    expect(relativeError(sphereFactor(1, d, 1), outline)).toBeLessThanOrEqual(1e-12);
  });
});

describe('rectangles', () => {
  it.each(triples)('%d x %d at %d under a corner is the same as a polygon (rel 1e-9)', (a, b, c) => {
    const corners: Vec3[] = [
      [0, c, 0],
      [a, c, 0],
      [a, c, b],
      [0, c, b],
    ];
    expect(relativeError(rectangleFactorUnderCorner(a, b, c), polygonFactor(corners, origin, up))).toBeLessThan(1e-9);
  });

  it.each(triples)('%d high, %d wide, upright at %d is the same as a polygon (abs 1e-15, rel 1e-9)', (a, b, c) => {
    const corners: Vec3[] = [
      [c, 0, 0],
      [c, 0, b],
      [c, a, b],
      [c, a, 0],
    ];
    const polygon = polygonFactor(corners, origin, up);
    expect(Math.abs(rectangleFactorUpright(a, b, c) - polygon)).toBeLessThanOrEqual(1e-15 + 1e-9 * polygon);
  });

  it('an endless ceiling over a corner is a quarter of the sky, an endless wall on one side too, near by (abs 1e-6)', () => {
    expect(Math.abs(rectangleFactorUnderCorner(1e7, 1e7, 1) - 0.25)).toBeLessThanOrEqual(1e-6);
    expect(Math.abs(rectangleFactorUpright(1e7, 1e7, 1) - 0.25)).toBeLessThanOrEqual(1e-6);
  });
});

describe('polygon', () => {
  const panel: Vec3[] = [
    [-1, 0.8, -2],
    [1.5, 0.8, -2],
    [1.5, 2, -1],
    [-1, 2, -1],
  ];
  const factor = polygonFactor(panel, origin, up);

  it('is the same whichever way its corners run, from whichever one they start (rel 1e-12)', () => {
    expect(factor).toBeGreaterThan(0.05);
    expect(relativeError(polygonFactor([...panel].reverse(), origin, up), factor)).toBeLessThanOrEqual(1e-12);
    const started = [...panel.slice(2), ...panel.slice(0, 2)];
    expect(relativeError(polygonFactor(started, origin, up), factor)).toBeLessThanOrEqual(1e-12);
  });

  it('is the sum of the triangles it is cut into (rel 1e-12)', () => {
    const [a, b, c, d] = panel as [Vec3, Vec3, Vec3, Vec3];
    const parts = polygonFactor([a, b, c], origin, up) + polygonFactor([a, c, d], origin, up);
    expect(relativeError(parts, factor)).toBeLessThanOrEqual(1e-12);
  });

  it('does not change when everything moves together (rel 1e-12)', () => {
    const by: Vec3 = [30, -7, 4];
    const moved = panel.map(([x, y, z]): Vec3 => [x + by[0], y + by[1], z + by[2]]);
    expect(relativeError(polygonFactor(moved, by, up), factor)).toBeLessThanOrEqual(1e-12);
  });

  it('counts only what stands over the horizon: a wall sunk half way counts as its upper half (rel 1e-12)', () => {
    const wall = (foot: number): Vec3[] => [
      [2, foot, -1],
      [2, foot, 3],
      [2, 1.5, 3],
      [2, 1.5, -1],
    ];
    expect(relativeError(polygonFactor(wall(-1.5), origin, up), polygonFactor(wall(0), origin, up))).toBeLessThan(
      1e-12,
    );
    const sunk = ring(5, 3, -0.2);
    expect(polygonFactor(sunk, origin, up)).toBe(0);
    expect(polygonFactor(sunk, origin, [0, -1, 0])).toBeGreaterThan(0.9);
  });

  it('with 2000 corners is a disc (rel 1e-5)', () => {
    expect(relativeError(polygonFactor(ring(2000, 0.5, 1), origin, up), discFactorOnAxis(0.5, 1))).toBeLessThan(1e-5);
  });
});

describe('thin tube', () => {
  it('without end gives pi I / 2d from both sides, and sends pi^2 I a metre through a cylinder round it (rel 1e-12)', () => {
    const [candelaPerMetre, d] = [40, 0.7];
    const lux = 2 * tubeIlluminanceUnderEnd(candelaPerMetre, Number.POSITIVE_INFINITY, d);
    expect(relativeError(lux, (Math.PI * candelaPerMetre) / (2 * d))).toBeLessThanOrEqual(1e-12);
    expect(relativeError(lux * 2 * Math.PI * d, Math.PI ** 2 * candelaPerMetre)).toBeLessThanOrEqual(1e-12);
    expect(relativeError(2 * tubeIlluminanceUnderEnd(candelaPerMetre, 1e9, d), lux)).toBeLessThanOrEqual(1e-12);
  });

  it.each(sizes)('%d m long, seen from 1000 lengths, is a point (rel 1e-6)', (l) => {
    const point = pointIlluminance(40 * l, 1, l * 1000);
    expect(relativeError(tubeIlluminanceUnderEnd(40, l, l * 1000), point)).toBeLessThanOrEqual(1e-6);
  });

  it.each([0.1, 1, 12])(
    '%d m long is its pieces summed: sin for what it sends, cos for what is taken (rel 1e-6)',
    (l) => {
      const [d, pieces] = [0.6, 4000];
      let sum = 0;
      for (let i = 0; i < pieces; i++) {
        const r = Math.hypot(d, ((i + 0.5) * l) / pieces);
        sum += pointIlluminance((40 * l * (d / r)) / pieces, d / r, r);
      }
      expect(relativeError(tubeIlluminanceUnderEnd(40, l, d), sum)).toBeLessThanOrEqual(1e-6);
    },
  );
});

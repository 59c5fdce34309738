import { describe, expect, it } from 'vitest';
import { luminanceOfLinearSrgb } from '../../../core/colour/srgb.ts';
import type { Sum } from '../../../core/sky/altitude-table.ts';
import { catalogueMeanS10 } from '../../../core/sky/catalogue-mean.ts';
import { darkClouds } from '../../../core/sky/dark-clouds.ts';
import { starlight } from '../../../core/sky/milky-way.ts';
import { wrapDegrees } from '../../../core/units/angle.ts';

/** Light of all stars, S10, at galactic degrees. */
const s10 = (l: number, b: number, without = false): number => {
  const out: Sum = [0, 0, 0];
  starlight(without)(wrapDegrees(l), b, out);
  return luminanceOfLinearSrgb(out);
};

/** Mean over a round spot, degrees. */
const spot = (l: number, b: number, radius: number): number => {
  let [sum, count] = [0, 0];
  for (let i = -4; i <= 4; i++)
    for (let j = -4; j <= 4; j++) {
      if (i * i + j * j > 16) continue;
      sum += s10(l + (i / 4) * radius, b + (j / 4) * radius);
      count++;
    }
  return sum / count;
};

describe('starlight', () => {
  it('shows the Coalsack: under half of the band on either side of it', () => {
    const hole = spot(302.4, -0.3, 1.5);
    expect(hole).toBeLessThan(0.5 * spot(295.5, -1, 1.5));
    expect(hole).toBeLessThan(0.6 * spot(310, -2, 1.5));
  });

  it('shows the great rift: darker along the Eagle and the Swan than the band beside it', () => {
    for (const [l, b, beside] of [
      [46, 1.2, -4.5],
      [34, 3.4, -3.5],
      [70, -0.6, 4],
      [58, 0.9, 5.5],
    ] as const)
      expect(spot(l, b, 1.2)).toBeLessThan(0.65 * spot(l, beside, 1.2));
  });

  it('shows the clouds of the Pipe, of Antares and of the Bull, darker than what is around', () => {
    for (const [l, b, nearL, nearB] of [
      [358.9, 5.9, 357.5, 3.9],
      [353.2, 16.6, 348, 16.6],
      [171, -15.5, 186, -18],
    ] as const)
      expect(spot(l, b, 0.6)).toBeLessThan(0.7 * spot(nearL, nearB, 0.6));
  });

  it('is brightest below the plane toward the middle, and dim at the poles', () => {
    const core = spot(1, -5, 3);
    expect(core).toBeGreaterThan(400);
    expect(spot(180, -5, 3)).toBeLessThan(0.5 * core);
    // light of stars at high latitude, some 40 to 60 S10 (Benn and Ellison 1998; Leinert et al. 1998; from memory)
    for (const b of [90, -90]) {
      expect(s10(0, b)).toBeGreaterThan(35);
      expect(s10(0, b)).toBeLessThan(60);
    }
  });

  it('has the light of 390 to 560 stars of V 0 over the whole sky: the smooth model has 468', () => {
    // 1 S10 is 1e-4 stars of V 0 in each square degree
    let sum = 0;
    const rings = 90;
    for (let i = 0; i < rings; i++) {
      const b = Math.asin(((i + 0.5) / rings) * 2 - 1) * (180 / Math.PI);
      for (let j = 0; j < 180; j++) sum += s10(2 * j + 1, b) / (rings * 180);
    }
    const stars = sum * 1e-4 * 41252.96;
    expect(stars).toBeGreaterThan(390);
    expect(stars).toBeLessThan(560);
  });

  it('joins at longitude 0, and is a function of place alone', () => {
    for (const b of [-20, -4, 0, 3, 15]) {
      expect(s10(359.9999, b) / s10(0.0001, b)).toBeCloseTo(1, 2);
      expect(s10(-10, b)).toBeCloseTo(s10(350, b), 9);
    }
    expect(s10(123.4, 5.6)).toBe(s10(123.4, 5.6));
  });

  it('leaves out the catalogue’s mean where that is less than the band, and never all', () => {
    for (const [l, b] of [
      [5, -5],
      [40, 10],
      [200, 40],
      [90, -70],
    ] as const)
      expect(s10(l, b) - s10(l, b, true)).toBeCloseTo(Math.min(catalogueMeanS10(b), 0.7 * s10(l, b)), 6);
    for (let l = 0; l < 360; l += 3) expect(s10(l, 0, true)).toBeGreaterThanOrEqual(0.299 * s10(l, 0));
  });

  it('shows both clouds of Magellan at their places', () => {
    expect(s10(280.5, -32.9)).toBeGreaterThan(430);
    expect(s10(302.8, -44.3)).toBeGreaterThan(259);
    expect(s10(302.8, -32)).toBeLessThan(120);
  });
});

describe('colour of starlight', () => {
  it('is warmer near the middle than toward the edge', () => {
    const ratio = (l: number, b: number): number => {
      const out: [number, number, number] = [0, 0, 0];
      starlight(false)(l, b, out);
      expect(luminanceOfLinearSrgb(out)).toBeGreaterThan(0);
      return out[0] / out[2];
    };
    expect(ratio(1, -5)).toBeGreaterThan(1.15 * ratio(180, -8));
  });
});

describe('catalogueMeanS10', () => {
  // middles of the bands that were counted
  it.each([
    [1.5, 56],
    [-4.5, 52],
    [12.5, 39],
    [25, 33],
    [60, 22],
    [90, 22],
  ])('has at latitude %d the %d S10 that were counted (rel 3 %)', (b, expected) => {
    expect(Math.abs(catalogueMeanS10(b) / expected - 1)).toBeLessThan(0.03);
  });
});

describe('darkClouds', () => {
  it('are 40 or more, each with its own label, on the sky', () => {
    expect(darkClouds.length).toBeGreaterThanOrEqual(40);
    expect(new Set(darkClouds.map(({ label }) => label)).size).toBe(darkClouds.length);
    for (const { longitude, latitude, halfLength, halfWidth } of darkClouds) {
      expect(longitude).toBeGreaterThanOrEqual(0);
      expect(longitude).toBeLessThan(360);
      expect(Math.abs(latitude) + halfWidth).toBeLessThan(32);
      expect(halfLength).toBeGreaterThanOrEqual(halfWidth);
    }
  });
});

import type { Distribution } from './distribution.ts';

/**
 * Flux of one zone of a plane, per radian of turn: the integral of I(t) sin t dt from vertical angle `from` to `to`,
 * I being `a` and `b` at its ends.
 */
type ZoneRule = (from: number, to: number, a: number, b: number) => number;

/** Mean of both ends times the difference of the cosines, written as a product so that thin zones lose no digits. */
const zonal: ZoneRule = (from, to, a, b) => (a + b) * Math.sin((from + to) / 2) * Math.sin((to - from) / 2);

/**
 * Exact for an intensity that runs in a straight line from a to b. Own derivation: by parts, the integral is the zonal
 * one plus (b - a) cos m (sin u / u - cos u), with m the middle of the zone and u half its width.
 */
const linear: ZoneRule = (from, to, a, b) => {
  const u = (to - from) / 2;
  const bend = u > 0 ? Math.sin(u) / u - Math.cos(u) : 0;
  return zonal(from, to, a, b) + (b - a) * Math.cos((from + to) / 2) * bend;
};

/** Sums planes by the trapezoid rule, which is exact for intensities that run straight between planes. */
const fluxBy = (rule: ZoneRule, { verticalRadians: v, horizontalRadians: h, candela }: Distribution, limit: number) => {
  let flux = 0;
  for (let plane = 0; plane < h.length; plane++) {
    const turn = ((h[plane + 1] ?? 2 * Math.PI) - (h[plane - 1] ?? 0)) / 2;
    for (let k = 0; k + 1 < v.length && (v[k] as number) < limit; k++) {
      const [from, to] = [v[k] as number, v[k + 1] as number];
      const [a, b] = [candela[plane * v.length + k] as number, candela[plane * v.length + k + 1] as number];
      const end = Math.min(to, limit);
      flux += turn * rule(from, end, a, end < to ? a + ((b - a) * (end - from)) / (to - from) : b);
    }
  }
  return flux;
};

/**
 * Flux in lumens by zones: mean of the two bounding candelas times 2 pi times the difference of the cosines, planes
 * weighted by the trapezoid rule. This is how photometric reports count; it is high for narrow beams in wide steps
 * (checkvalues.md 2.2d, 2.2e).
 */
export const fluxZonal = (distribution: Distribution): number => fluxBy(zonal, distribution, Math.PI);

/** Flux in lumens of the intensity that `candelaAt` gives, without error of integration. */
export const fluxExact = (distribution: Distribution): number => fluxWithin(distribution, Math.PI);

/**
 * The same within a cone about the axis.
 *
 * @param halfAngleRadians half angle of the cone, 0 to pi; 0 gives 0, pi all
 */
export const fluxWithin = (distribution: Distribution, halfAngleRadians: number): number =>
  fluxBy(linear, distribution, halfAngleRadians);

import { DataUtils, FloatType, HalfFloatType } from 'three';
import { IESLoader } from 'three/examples/jsm/loaders/IESLoader.js';
import { describe, it } from 'vitest';
import { candelaAt, type Distribution, distributionOf, peakCandela } from '../../core/photometry/distribution.ts';
import { fluxExact, fluxZonal } from '../../core/photometry/distribution-flux.ts';
import { parseLm63 } from '../../core/photometry/lm63/parse-lm63.ts';
import { radiansFromDegrees } from '../../core/units/angle.ts';
import { fixture, stepped, textOf } from '../core/photometry/lm63/lm63-text.ts';
import { accuracySection } from './support/accuracy.ts';

const { check } = accuracySection('Photometric files');
const cos = (degrees: number): number => Math.cos(radiansFromDegrees(degrees));

/** Half a unit of the last printed place. */
const printed = (places: number) => ({ absolute: 0.5 * 10 ** -places });
/** One zone of even intensity, all round. */
const zone = (from: number, to: number, candela: number): Distribution =>
  distributionOf({ verticalDegrees: [from, to], horizontalDegrees: [0], candela: [[candela, candela]] });
/** 1000 cd cos^n off the axis, over the front half, read at equal steps. */
const lobe = (exponent: number, stepDegrees: number): Distribution => {
  const angles = stepped(0, 90, stepDegrees);
  // cos 90 degrees is a rounding error in floating point
  const candela = angles.map((angle) => (angle < 90 ? 1000 * cos(angle) ** exponent : 0));
  return distributionOf({ verticalDegrees: angles, horizontalDegrees: [0], candela: [candela] });
};

const handbook = 'zonal constants of the IES Lighting Handbook, from memory';
const zonalSum = 'zonal sum 2 pi (cos t1 - cos t2) I (IES Lighting Handbook, from memory), worked out by hand';
const linearIntegral = 'integral of a lobe straight in angle, worked out by hand';

// 2.2a
describe('zonal constants of ten degrees', () => {
  const constants = [0.0955, 0.2835, 0.4629, 0.6282, 0.7744, 0.8972, 0.9926, 1.0579, 1.0911];
  it.each(constants.map((constant, k) => [10 * k, 10 * k + 10, constant] as const))(
    '2.2a: %d to %d degrees: %d (its rounding)',
    (from, to, expected) => {
      const ours = fluxZonal(zone(from, to, 1));
      const claim = `zonal constant, ${from} to ${to} degrees`;
      check({ id: '2.2a', claim, source: handbook, unit: 'sr', expected, ours, tolerance: printed(4) });
    },
  );
  it('2.2a: their sum (its rounding)', () => {
    const ours = stepped(0, 80, 10).reduce((sum, from) => sum + fluxZonal(zone(from, from + 10, 1)), 0);
    const claim = 'sum of the zonal constants to 90 degrees';
    check({ id: '2.2a', claim, source: handbook, unit: 'sr', expected: 6.283185, ours, tolerance: printed(6) });
  });
});

// 2.2b
describe('1000 cd cos t, read in the middle of ten-degree zones', () => {
  const lumens = [95.1, 273.8, 419.5, 514.6, 547.6, 514.6, 419.5, 273.8, 95.1];
  const fluxOfZone = (k: number): number => fluxZonal(zone(10 * k, 10 * k + 10, 1000 * cos(10 * k + 5)));
  it.each(lumens.map((expected, k) => [k, expected] as const))('2.2b: zone %d: %d lm (its rounding)', (k, expected) => {
    const claim = `flux of ${10 * k} to ${10 * k + 10} degrees, 1000 cd cos t read at the middle`;
    check({ id: '2.2b', claim, source: zonalSum, unit: 'lm', expected, ours: fluxOfZone(k), tolerance: printed(1) });
  });
  it('2.2b: total (its rounding)', () => {
    const ours = lumens.reduce((sum, _, k) => sum + fluxOfZone(k), 0);
    const claim = 'flux of nine ten-degree zones, 1000 cd cos t read at the middle';
    check({ id: '2.2b', claim, source: zonalSum, unit: 'lm', expected: 3153.59, ours, tolerance: printed(2) });
  });
});

// 2.2c
describe('file of 0, 45, 90 degrees with 100, 50, 0 and multiplier 2', () => {
  const distribution = distributionOf(parseLm63(fixture('three-angles')));
  it.each([
    ['zonal', fluxZonal, 498.1895, zonalSum],
    ['exact', fluxExact, 456.6371, linearIntegral],
  ] as const)('2.2c: %s (its rounding)', (rule, flux, expected, source) => {
    const claim = `${rule} flux of a file with three vertical angles and multiplier 2`;
    const ours = flux(distribution);
    check({ id: '2.2c', claim, source, unit: 'lm', expected, ours, tolerance: printed(4) });
  });
});

// 2.2d, 2.2e: exponent, step, zonal, exact. The last number is what the exact flux may be off by: the
// table's rounding, but 0.001 where it prints 2118.017; Simpson's rule (20,000 parts a zone) gives 2118.01649.
describe('1000 cd cos^n over the front half', () => {
  it.each([
    ['2.2d', 2, 15, 2141.833, 2118.017, 0.001],
    ['2.2d', 2, 5, 2099.707, 2097.05, 0.0005],
    ['2.2d', 2, 2.5, 2095.724, 2095.059, 0.0005],
    ['2.2d', 2, 1, 2094.608, 2094.501, 0.0005],
    ['2.2e', 20, 5, 306.761, 302.965, 0.0005],
    ['2.2e', 20, 2.5, 301.096, 300.147, 0.0005],
    ['2.2e', 20, 1, 299.503, 299.351, 0.0005],
  ])(
    '%s: n = %d in steps of %d degrees: zonal %d lm (its rounding), exact %d lm (abs %d)',
    (id, n, step, byZones, exact, absolute) => {
      const shape = `flux of 1000 cd cos^${n} in steps of ${step} degrees`;
      const given = { id, unit: 'lm' };
      const distribution = lobe(n, step);
      const [ours, oursExact] = [fluxZonal(distribution), fluxExact(distribution)];
      check({ ...given, claim: `zonal ${shape}`, source: zonalSum, expected: byZones, ours, tolerance: printed(3) });
      check({
        ...given,
        claim: `exact ${shape}`,
        source: linearIntegral,
        expected: exact,
        ours: oursExact,
        tolerance: { absolute },
      });
    },
  );
  it.each([
    ['2.2d', 2, 2094.395],
    ['2.2e', 20, 299.199],
  ])('%s: n = %d in steps of 0.01 degrees is the true %d lm (its rounding)', (id, n, expected) => {
    const claim = `flux of 1000 cd cos^${n} in steps of 0.01 degrees`;
    const source = 'closed form 2000 pi / (n + 1)';
    const given = { id, source, unit: 'lm', expected, tolerance: printed(3) };
    check({ ...given, claim: `zonal ${claim}`, ours: fluxZonal(lobe(n, 0.01)) });
    check({ ...given, claim: `exact ${claim}`, ours: fluxExact(lobe(n, 0.01)) });
  });
});

// 2.2g: 360 must not count twice: a plain mean of the five planes would give 180 cd
describe('planes 0, 90, 180, 270, 360 of 100, 200, 300, 200, 100 cd', () => {
  const distribution = distributionOf(parseLm63(fixture('five-planes')));
  it.each([
    ['zonal', fluxZonal],
    ['exact', fluxExact],
  ] as const)('2.2g: %s flux (its rounding)', (rule, flux) => {
    const claim = `${rule} flux of five planes of which the last repeats the first`;
    const source = 'half space times the mean of the four planes, 2 pi 200';
    const ours = flux(distribution);
    check({ id: '2.2g', claim, source, unit: 'lm', expected: 1256.637, ours, tolerance: printed(3) });
  });
});

/**
 * three's loader gives intensities as a share of the peak, 180 vertical angles evenly from 0 to 180 (so steps of 180/179
 * degrees) by 360 whole horizontal degrees, or one row for a single plane; as half floats, or as floats if asked. It
 * differs from us in this: it turns planes 90 to 270 so that they start at 0; beyond the last vertical angle it carries the
 * last slope on, where we are dark; and it multiplies by the third factor of the ballast line, which the peak takes out.
 */
const farthest = (text: string, type: typeof HalfFloatType | typeof FloatType, turnDegrees: number): number => {
  const loader = new IESLoader() as IESLoader & { type: number };
  loader.type = type;
  const data = loader.parse(text).image.data as unknown as Uint16Array | Float32Array;
  const file = parseLm63(text);
  const distribution = distributionOf(file);
  const last = file.verticalDegrees.at(-1) as number;
  const peak = peakCandela(distribution);
  let most = data.length === 180 || data.length === 180 * 360 ? 0 : Number.POSITIVE_INFINITY;
  for (let k = 0; k < data.length; k++) {
    const vertical = ((k % 180) * 180) / 179;
    if (vertical > last) continue;
    const horizontal = radiansFromDegrees(Math.floor(k / 180) + turnDegrees);
    const stored = data[k] as number;
    const theirs = type === HalfFloatType ? DataUtils.fromHalfFloat(stored) : stored;
    most = Math.max(most, Math.abs(candelaAt(distribution, radiansFromDegrees(vertical), horizontal) / peak - theirs));
  }
  return most;
};

describe('candelaAt against three’s IESLoader', () => {
  const value = (v: number, h: number): number => Math.round(500 + 300 * cos(3 * v + 0.9 * h) + h);
  const verticals = stepped(0, 180, 7.5);
  it.each([
    ['one plane, 0 to 90 degrees', fixture('round-torch'), 0],
    ['planes 0 to 360', fixture('lantern-circle'), 0],
    ['planes 0 to 345, not closed', textOf(verticals, stepped(0, 345, 15), value), 0],
    ['planes 0 to 180', textOf(verticals, stepped(0, 180, 22.5), value), 0],
    ['planes 0 to 90', textOf(verticals, stepped(0, 90, 22.5), value), 0],
    ['planes 90 to 270', textOf(verticals, stepped(90, 270, 22.5), value), 90],
  ])('%s: within half-float (2^-11) and float (2^-24) steps below 1', (name, text, turn) => {
    const given = { id: 'three', source: 'three.js r187, IESLoader', unit: 'of the peak', expected: 0 };
    const claim = `largest difference from three’s loader, ${name}`;
    const [half, float] = [farthest(text, HalfFloatType, turn), farthest(text, FloatType, turn)];
    check({ ...given, claim: `${claim}, half floats`, ours: half, tolerance: { absolute: 2 ** -11 } });
    check({ ...given, claim: `${claim}, floats`, ours: float, tolerance: { absolute: 2 ** -24 } });
  });
});

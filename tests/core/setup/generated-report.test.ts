import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { reportScheme, type SchemeReport } from '../../../core/cautions/setup-report.ts';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import type { Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import { SetupError } from '../../../core/setup/setup-error.ts';
import { mutatedText } from './mutate.ts';
import { nonFinite } from './non-finite.ts';
import { richSetup } from './rich-setup.ts';

const seed = 20_311;
const wantedGood = 20;
const stones = readFileSync(resolve(import.meta.dirname, '../../../assets/setups/three-stones.json'), 'utf8');
const samples = [JSON.stringify(richSetup()), stones, JSON.stringify(richSetup())];

const goodOrNull = (text: string): Setup | null => {
  try {
    return parseSetup(text);
  } catch (error) {
    if (error instanceof SetupError) return null;
    throw error;
  }
};

/** Less of the same, so that hundreds of reports can be made: few strewn things, few parts, one scheme. */
const shrunk = ({ ground, subjects, ...rest }: Setup): Setup => ({
  ...rest,
  ground: {
    ...ground,
    relief: ground.relief
      .slice(0, 1)
      .map((relief) => ('count' in relief ? { ...relief, count: Math.min(relief.count, 3) } : relief)),
  },
  subjects: subjects.slice(0, 2).map((subject) => ({
    ...subject,
    parts: subject.parts
      .slice(0, 4)
      .map((part) => (part.kind === 'box' ? { ...part, roundMetres: 0, dimples: null } : part)),
  })),
});

const isShare = (value: number): boolean => value >= 0 && value <= 1;

type Pass = SchemeReport['frames'][number]['passes'][number];

/** Shares lie between 0 and 1, angles between ways of shadows between 0 and 180, stops between best and worst over 0. */
const expectSharesAndAngles = (
  reading: Pick<Pass, 'relief' | 'agreement' | 'evennessStops' | 'fallOffStops' | 'faceLitShare'>,
): void => {
  const { relief, agreement, evennessStops, fallOffStops, faceLitShare } = reading;
  const shares = [faceLitShare, relief.patch?.shadowedShare ?? null].filter((share) => share !== null);
  expect(shares.every(isShare)).toBe(true);
  const angles = [agreement.moonDegrees, agreement.glowDegrees].filter((angle) => angle !== null);
  expect(angles.every((angle) => angle >= 0 && angle <= 180)).toBe(true);
  expect(Math.min(evennessStops ?? 0, fallOffStops ?? 0, relief.patch?.rmsContrast ?? 0)).toBeGreaterThanOrEqual(0);
  // what has no face cannot be lit evenly
  if (faceLitShare === null) expect([evennessStops, fallOffStops]).toEqual([null, null]);
};

/** Promises of a report that need no outside value. */
const expectSense = ({ frames }: SchemeReport, setup: Setup, scheme: Scheme): void => {
  frames.forEach(({ passes, clipped, stars, depth, patch, keyPassId, fillPassId, keyToFillStops }, f) => {
    if (patch) expect(setup.patch).not.toBeNull();
    if (patch) expect(patch.rmsContrast).toBeGreaterThanOrEqual(0);
    if (fillPassId !== null) expect(keyToFillStops).toBeGreaterThanOrEqual(0);
    if (keyToFillStops !== null) expect(passes.map(({ passId }) => passId)).toContain(keyPassId);
    expect([clipped.red, clipped.green, clipped.blue].every(isShare)).toBe(true);
    expect(stars.trailPixels).toBeGreaterThan(0);
    if (depth?.complete) expect(depth.steps.length === 0).toBe(depth.nearestMetres === null);
    for (const { count, beam, paint, colour, target, relief, agreement, ...reading } of passes) {
      expectSharesAndAngles({ relief, agreement, ...reading });
      const seconds = scheme.frames[f]?.seconds as number;
      expect(count.wantedStops).toBe(setup.nightLevelStops);
      if (count.spoken !== null) expect(count.spoken).toBeLessThanOrEqual(seconds);
      if (count.seconds === null) expect(target?.stops ?? null).toBeNull();
      else expect(count.advice.length > 0 || count.reachable).toBe(true);
      expect(count.advice.join(' ')).not.toMatch(/NaN|Infinity|undefined|null/);
      expect(Math.min(beam.lumens, beam.peakCandela)).toBeGreaterThanOrEqual(0);
      if (beam.beamDegrees !== null) expect(beam.beamDegrees).toBeGreaterThan(0);
      expect(Math.min(...colour.linearSrgb)).toBeGreaterThanOrEqual(0);
      if (paint) expect(Math.min(paint.seconds, paint.areaSquareMetres, paint.lumensOnSubject)).toBeGreaterThan(0);
    }
  });
};

describe(`reports of ${wantedGood} mutated setups (seed ${seed})`, () => {
  it('are made without a fault, of finite numbers and nulls, and keep their promises', () => {
    let [good, passes] = [0, 0];
    fc.assert(
      fc.property(mutatedText(samples), (text) => {
        const setup = good < wantedGood ? goodOrNull(text) : null;
        if (!setup) return;
        good++;
        const small = shrunk(setup);
        // the last scheme of the rich setup has a pass of every lamp
        const scheme = small.schemes.at(-1) as Scheme;
        const report = reportScheme(small, scheme);
        passes += report.frames.reduce((sum, frame) => sum + frame.passes.length, 0);
        expect(nonFinite(report)).toEqual([]);
        expectSense(report, small, scheme);
      }),
      { seed, numRuns: 1200 },
    );
    console.info(`seed ${seed}: ${good} reports of ${passes} passes`);
    expect(good).toBe(wantedGood);
    expect(passes).toBeGreaterThan(2.5 * wantedGood);
  }, 240_000);
});

import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { isDeepStrictEqual } from 'node:util';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatSetup } from '../../../core/setup/format-setup.ts';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import { SetupError } from '../../../core/setup/setup-error.ts';
import { buildWorld } from '../../../core/world/world.ts';
import { mutatedText } from './mutate.ts';
import { nonFinite } from './non-finite.ts';
import { richSetup } from './rich-setup.ts';

const seed = 54_026;
const numRuns = 2000;
const longestMs = 2000;
const read = (name: string) =>
  readFileSync(resolve(import.meta.dirname, `../../../assets/setups/${name}.json`), 'utf8');
/** Both sample files, and a made-up setup with every kind of part, lamp and light. */
const samples = [read('three-stones'), read('drystone-wall'), JSON.stringify(richSetup(), null, 2)];

/** A setup or the error; anything else that is thrown goes on. */
const attempt = (text: string): Setup | SetupError => {
  try {
    return parseSetup(text);
  } catch (error) {
    if (error instanceof SetupError) return error;
    throw error;
  }
};

/**
 * Less of the same, so that hundreds of stages can be built: three strewn things a relief, twelve parts a subject, two
 * hollows a part, and sharp boxes in all subjects but the last.
 */
const shrunk = ({ ground, subjects, ...rest }: Setup): Setup => ({
  ...rest,
  ground: {
    ...ground,
    relief: ground.relief.map((relief) =>
      'count' in relief ? { ...relief, count: Math.min(relief.count, 3) } : relief,
    ),
  },
  subjects: subjects.map((subject, s) => ({
    ...subject,
    parts: subject.parts.slice(0, 12).map((part) => {
      if (part.kind !== 'box') return part;
      if (s < subjects.length - 1) return { ...part, roundMetres: 0, dimples: null };
      return { ...part, dimples: part.dimples && { ...part.dimples, count: Math.min(part.dimples.count, 2) } };
    }),
  })),
});

describe(`parseSetup on ${numRuns} mutated samples (seed ${seed})`, () => {
  it('gives a SetupError of one line, or a setup that survives writing and reading unchanged and builds a finite world', () => {
    let [good, bad, slowest, worlds] = [0, 0, 0, 0];
    const paths = new Set<string>();
    fc.assert(
      fc.property(mutatedText(samples), (text) => {
        const start = performance.now();
        const result = attempt(text);
        const took = performance.now() - start;
        slowest = Math.max(slowest, took);
        expect(took).toBeLessThan(longestMs);
        if (result instanceof SetupError) {
          bad++;
          paths.add(result.path.replace(/\d+/g, '0'));
          expect(result.message.length).toBeLessThanOrEqual(200);
          expect(result.message).not.toMatch(/[\p{Cc}\p{Cs}\p{Zl}\p{Zp}]/u);
          expect(result.expected.length).toBeGreaterThan(5);
          return;
        }
        good++;
        expect(isDeepStrictEqual(parseSetup(formatSetup(result)), result)).toBe(true);
        const small = shrunk(result);
        for (const scheme of small.schemes) {
          const world = buildWorld(small, scheme);
          worlds++;
          expect(nonFinite(world)).toEqual([]);
          expect(world.frames.length).toBe(scheme.frames.length);
        }
      }),
      { seed, numRuns },
    );
    console.info(
      `seed ${seed}: ${good} good with ${worlds} worlds, ${bad} refused at ${paths.size} kinds of place; slowest parse ${slowest.toFixed(0)} ms`,
    );
    expect(good).toBeGreaterThan(400);
    expect(bad).toBeGreaterThan(800);
    expect(paths.size).toBeGreaterThan(60);
  }, 240_000);

  it('has a check for finite numbers that finds them', () => {
    const value = { a: [1, Number.NaN], b: { c: new Float32Array([0, Number.POSITIVE_INFINITY]) }, d: 'x', e: null };
    expect(nonFinite(value)).toEqual(['.a.1 = NaN', '.b.c[1] = Infinity']);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { candelaAt, distributionOf, peakCandela } from '../../../../core/photometry/distribution.ts';
import { fluxExact, fluxZonal } from '../../../../core/photometry/distribution-flux.ts';
import { Lm63Error } from '../../../../core/photometry/lm63/lm63-error.ts';
import { parseLm63 } from '../../../../core/photometry/lm63/parse-lm63.ts';
import type { PhotometricFile } from '../../../../core/photometry/lm63/photometric-file.ts';
import { fixture, goodLines, goodWithTilt } from './lm63-text.ts';

const seed = 63_002;
const numRuns = 3000;
const longestMs = 1000;
const samples = [
  goodLines.join('\n'),
  goodWithTilt('1', '3', '0 30 90', '1 .9 .6').replaceAll('\n', '\r\n'),
  ...['three-angles', 'five-planes', 'round-torch', 'lantern-circle'].map(fixture),
];
const oddNumbers = '-1 0 1 2 3 90 180 270 360 1e-9 1e12 1e15 1e308 -1e308 1e999 5e-324 4000 1000000 2147483648'.split(
  ' ',
);
const oddWords = ['NaN', 'Infinity', '0x10', '1e', '.', '', 'TILT=NONE', '[', '[MORE]', ',', '\ud800', '\u0000'];
const oddCharacters = ['', ' ', '\n', '\r', '\t', '\f', ',', '.', '-', 'e', '0', '9', '[', '=', 'x', '\u001a', 'é'];

/** One change: what to do, where (a share of the whole), and what with. */
const edit = fc.record({
  act: fc.constantFrom(
    'number',
    'number',
    'scale',
    'word',
    'replace',
    'insert',
    'delete',
    'copy line',
    'drop line',
    'cut',
  ),
  at: fc.nat(999_999).map((n) => n / 1e6),
  pick: fc.nat(1_000_000),
});
type Edit = typeof edit extends fc.Arbitrary<infer T> ? T : never;
const of = (list: readonly string[], pick: number): string => list[pick % list.length] as string;

/** The text with its number at a share of all numbers put otherwise. */
const otherNumber = (text: string, at: number, change: (number: string) => string): string => {
  const found = [...text.matchAll(/[\d.]+/g)];
  const { 0: number, index } = found[Math.floor(at * found.length)] ?? { 0: '', index: 0 };
  return text.slice(0, index) + change(number) + text.slice(index + number.length);
};

const mutated = (text: string, { act, at, pick }: Edit): string => {
  const place = Math.floor(at * text.length);
  if (act === 'number') return otherNumber(text, at, () => of(oddNumbers, pick));
  if (act === 'scale') return otherNumber(text, at, (n) => String(Number(n) * ((pick % 300) / 100)));
  if (act === 'word') return otherNumber(text, at, () => of(oddWords, pick));
  if (act === 'cut') return text.slice(0, place);
  if (act === 'copy line' || act === 'drop line') {
    const lines = text.split('\n');
    const line = Math.floor(at * lines.length);
    lines.splice(line, 1, ...(act === 'drop line' ? [] : [lines[line] as string, lines[line] as string]));
    return lines.join('\n');
  }
  const put = act === 'delete' ? '' : of(oddCharacters, pick);
  return text.slice(0, place) + put + text.slice(act === 'insert' ? place : place + 1);
};

const mutatedText = fc
  .tuple(fc.nat(samples.length - 1), fc.array(edit, { minLength: 1, maxLength: 3 }))
  .map(([sample, edits]) => edits.reduce(mutated, samples[sample] as string));

/** The file or the error; anything else that is thrown goes on. */
const attempt = (text: string): PhotometricFile | Lm63Error => {
  try {
    return parseLm63(text);
  } catch (error) {
    if (error instanceof Lm63Error) return error;
    throw error;
  }
};

const isLight = (value: number): boolean => Number.isFinite(value) && value >= 0;

/** Whether all of a file can be used: sizes, values, flux, and intensity in directions all round. */
const expectUsable = (file: PhotometricFile): void => {
  expect([...file.verticalDegrees, ...file.horizontalDegrees].every(isLight)).toBe(true);
  const { widthMetres, lengthMetres, heightMetres } = file.opening;
  expect([widthMetres, lengthMetres, heightMetres, file.watts, file.lampCount].every(isLight)).toBe(true);
  expect(file.name).toMatch(/^[^\p{C}]{1,80}$/u);
  expect(file.candela.length).toBe(file.horizontalDegrees.length);
  expect(file.candela.every((row) => row.length === file.verticalDegrees.length && row.every(isLight))).toBe(true);
  const distribution = distributionOf(file);
  expect(distribution.candela.every(isLight)).toBe(true);
  expect([fluxZonal(distribution), fluxExact(distribution)].every(isLight)).toBe(true);
  const most = peakCandela(distribution) * (1 + 1e-12);
  for (let k = 0; k < 40; k++) {
    const value = candelaAt(distribution, (Math.PI * k) / 39, k * 1.7 - 30);
    expect(isLight(value) && value <= most).toBe(true);
  }
};

describe(`parseLm63 on ${numRuns} mutated files (seed ${seed})`, () => {
  it(`gives a Lm63Error of one line, or a file that can be used, within ${longestMs} ms each`, () => {
    let [good, bad, slowest] = [0, 0, 0];
    const reasons = new Set<string>();
    fc.assert(
      fc.property(mutatedText, (text) => {
        const start = performance.now();
        const result = attempt(text);
        const took = performance.now() - start;
        slowest = Math.max(slowest, took);
        expect(took).toBeLessThan(longestMs);
        if (result instanceof Lm63Error) {
          bad++;
          reasons.add(result.expected.replace(/; found.*|[\d.]+/g, ''));
          expect(result.line).toBeGreaterThanOrEqual(1);
          expect(result.line).toBeLessThanOrEqual(text.split(/\r\n|\r|\n/).length);
          expect(result.message.length).toBeLessThanOrEqual(200);
          expect(result.message).not.toMatch(/[\p{Cc}\p{Cs}\p{Zl}\p{Zp}]/u);
          return;
        }
        good++;
        expectUsable(result);
      }),
      { seed, numRuns },
    );
    console.info(
      `seed ${seed}: ${good} good, ${bad} refused for ${reasons.size} reasons; slowest parse ${slowest.toFixed(0)} ms`,
    );
    expect(good).toBeGreaterThan(400);
    expect(bad).toBeGreaterThan(400);
    expect(reasons.size).toBeGreaterThan(20);
  });
});

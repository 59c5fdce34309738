import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';

/** A small made-up file of two planes, true candela 1.8 times what is written. One line each, so that lines can be named. */
export const goodLines: readonly string[] = [
  'IESNA:LM-63-2002',
  '[TEST] 17-A',
  '[LUMINAIRE] Barn torch',
  '[MORE] with a wide glass',
  'TILT=NONE',
  '1 1000 2 3 2 1 2 0.1 0.2 0',
  '0.9 1 12',
  '0 45 90',
  '0 90',
  '100 50 0',
  '80 40 10',
];

/** The good file with some lines (counted from 1) put otherwise; null leaves a line out. */
export const goodWith = (changes: Readonly<Record<number, string | null>>): string =>
  goodLines.flatMap((line, k) => changes[k + 1] ?? (changes[k + 1] === null ? [] : line)).join('\n');

/** The good file with TILT=INCLUDE and these lines after it. */
export const goodWithTilt = (...lines: string[]): string => goodWith({ 5: ['TILT=INCLUDE', ...lines].join('\n') });

/** A file with these angles, and values by a function of both in degrees. */
export const textOf = (
  verticalDegrees: readonly number[],
  horizontalDegrees: readonly number[],
  value: (vertical: number, horizontal: number) => number,
): string =>
  [
    'IESNA:LM-63-2002',
    'TILT=NONE',
    `1 -1 1 ${verticalDegrees.length} ${horizontalDegrees.length} 1 2 0 0 0`,
    '1 1 10',
    verticalDegrees.join(' '),
    horizontalDegrees.join(' '),
    ...horizontalDegrees.map((h) => verticalDegrees.map((v) => value(v, h)).join(' ')),
  ].join('\n');

/** From first to last in equal steps. */
export const stepped = (first: number, last: number, step: number): number[] =>
  Array.from({ length: Math.round((last - first) / step) + 1 }, (_, k) => first + k * step);

/** One of the made-up files in tests/reference/fixtures. */
export const fixture = (name: string): string =>
  readFileSync(resolve(import.meta.dirname, `../../../reference/fixtures/${name}.ies`), 'utf8');

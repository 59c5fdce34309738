import { describe, expect, it } from 'vitest';
import { parseSetup, validateSetup } from '../../../core/setup/parse-setup.ts';
import { setupVersion } from '../../../core/setup/schema/setup.ts';
import { SetupError } from '../../../core/setup/setup-error.ts';
import { maxFileBytes, maxSetupBytes } from '../../../core/setup/setup-size.ts';
import { changed, errorOf, expectError, goodSetup, type MalformedCase } from './good-setup.ts';

const text = () => JSON.stringify(goodSetup());
/** The good text with a raw piece put in for the camera's position, aim or whatever `from` is. */
const swapped = (from: string, to: string) => () => {
  const whole = text();
  if (!whole.includes(from)) throw new Error(`${from} is not in the text`);
  return whole.replace(from, to);
};
const nested = (levels: number, open: string, core: string, close: string) =>
  open.repeat(levels) + core + close.repeat(levels);
const camera = '"camera":{"position":[0,0,1.5],"aim":[0,8,1]}';
const syntax = 'breaks off or has a stray character here';

const cases: readonly MalformedCase[] = [
  ['nothing', () => '', 'syntax', 'line 1', syntax],
  ['white space', () => ' \n\n ', 'syntax', 'line 3', syntax],
  ['a byte order mark alone', () => '\ufeff', 'syntax', 'line 1', syntax],
  ['two byte order marks', () => `\ufeff\ufeff${text()}`, 'syntax', 'line 1', syntax],
  ['plain words', () => 'two lamps, left and right', 'syntax', 'line 1', syntax],
  ['text cut in the middle', () => '{\n"format": "lampfall-setup",\n"version": 1,', 'syntax', 'line 3', syntax],
  ['a word on the second line', () => '{\n"name": barn\n}', 'syntax', 'line 2', syntax],
  ['a comment', () => '{\n\n// barn\n}', 'syntax', 'line 3', syntax],
  ['a comma too many', swapped('"version":3,', '"version":3,,'), 'syntax', 'line 1', syntax],
  ['single quotes', () => "{'format':'lampfall-setup'}", 'syntax', 'line 1', syntax],
  ['NaN', swapped('[0,0,1.5]', '[NaN,0,1.5]'), 'syntax', 'line 1', syntax],
  ['Infinity', swapped('[0,0,1.5]', '[-Infinity,0,1.5]'), 'syntax', 'line 1', syntax],
  ['a raw line end in a text', swapped('Barn', 'Ba\nrn'), 'syntax', 'line 1', syntax],
  ['a number after the end', () => `${text()} 1`, 'syntax', 'line 1', syntax],
  ['1e999', swapped('[0,0,1.5]', '[1e999,0,1.5]'), 'field', 'camera.position[0]', 'must be a number in metres'],
  ['-1e999', swapped('[0,0,1.5]', '[0,0,-1e999]'), 'field', 'camera.position[2]', 'must be a number in metres'],
  ['a list', () => '[]', 'field', '', 'one setup: a JSON object'],
  ['null', () => 'null', 'field', '', 'one setup: a JSON object'],
  ['a number', () => '5', 'field', '', 'one setup: a JSON object'],
  ['an empty object', () => '{}', 'field', 'format', 'expected "lampfall-setup"'],
  ['the key __proto__ at the top', swapped('{', '{"__proto__":{"version":1},'), 'field', '__proto__', 'is not a field'],
  [
    'the key __proto__ in the camera',
    swapped('"camera":{', '"camera":{"__proto__":{"rollDegrees":9},'),
    'field',
    'camera.__proto__',
    'is not a field',
  ],
  ['lists 100 000 deep', () => nested(100_000, '[', '', ']'), 'field', '', 'one setup'],
  ['objects 100 000 deep', () => nested(100_000, '{"a":', '1', '}'), 'field', 'format', 'expected "lampfall-setup"'],
  [
    'a camera 100 000 lists deep',
    swapped(camera, `"camera":${nested(100_000, '[', '', ']')}`),
    'field',
    'camera',
    'must be an object',
  ],
  [
    'a position 100 000 objects deep',
    swapped('[0,0,1.5]', nested(100_000, '{"a":', '1', '}')),
    'field',
    'camera.position',
    'three numbers',
  ],
  ['100 000 open lists', () => '['.repeat(100_000), 'syntax', 'line 1', syntax],
  [
    '2.4 million subjects',
    () =>
      changed((s) => {
        s.subjects = Array(2_400_000).fill(0);
      }),
    'field',
    'subjects',
    'at most 500',
  ],
  [
    '1.5 million empty waypoints',
    () =>
      changed((s) => {
        s.schemes[0].frames[1].passes[0].waypoints = Array(1_500_000).fill({});
      }),
    'field',
    'schemes[0].frames[1].passes[0].waypoints',
    'at most 256',
  ],
  [
    'a position of 2.4 million numbers',
    () =>
      changed((s) => {
        s.camera.position = Array(2_400_000).fill(0);
      }),
    'field',
    'camera.position',
    'three numbers',
  ],
  [
    '300 000 unknown fields',
    () =>
      changed((s) => {
        for (let i = 0; i < 300_000; i++) s[`k${i}`] = 0;
      }),
    'field',
    'k0',
    'is not a field',
  ],
  [
    'a name of 4 million letters',
    () =>
      changed((s) => {
        s.name = 'a'.repeat(4_000_000);
      }),
    'field',
    'name',
    'at most 80',
  ],
  ['one byte more than 12 MB', () => text().padEnd(maxSetupBytes + 1), 'size', '', 'has 12.0 MB; at most 12 MB'],
  [
    'one byte more than 40 MB of data',
    () => `"data": "${'A'.repeat(maxFileBytes - 9)}"`,
    'size',
    '',
    'has 40.0 MB; at most 40 MB',
  ],
  [
    'a scan’s data and 12 MB besides',
    () => `"data": "${'A'.repeat(1000)}"`.padEnd(maxSetupBytes + 1012),
    'size',
    '',
    'has 12.0 MB without its scans; at most 12 MB',
  ],
  [
    '12 MB in letters of two bytes',
    () =>
      changed((s) => {
        s.note = 'é'.repeat(6_100_000);
      }),
    'size',
    '',
    'has 12.2 MB; at most 12 MB',
  ],
  ['12 MB that break off in the last field', () => `{${'"a":1,'.repeat(1_990_000)}`, 'syntax', 'line 1', syntax],
  [
    '12 MB of parts without a kind',
    () => text().replace(/"parts":\[/, (found) => found + '{},'.repeat(3_900_000)),
    'field',
    'subjects[0].parts',
    'must be at most 2000 parts',
  ],
  ['50 MB', () => ' '.repeat(50_000_000), 'size', '', 'has 50.0 MB'],
  [
    'no version',
    () =>
      changed((s) => {
        delete s.version;
      }),
    'version',
    'version',
    `whole number from 1 to ${setupVersion}`,
  ],
  [
    'version 0',
    () =>
      changed((s) => {
        s.version = 0;
      }),
    'version',
    'version',
    'whole number from 1',
  ],
  [
    'version 1.5',
    () =>
      changed((s) => {
        s.version = 1.5;
      }),
    'version',
    'version',
    'whole number from 1',
  ],
  [
    'version "1"',
    () =>
      changed((s) => {
        s.version = '1';
      }),
    'version',
    'version',
    'whole number from 1',
  ],
  [
    'the version after ours',
    () =>
      changed((s) => {
        s.version = setupVersion + 1;
      }),
    'version',
    'version',
    `is ${setupVersion + 1}; this program reads up to ${setupVersion}`,
  ],
  [
    'version 1e300',
    () =>
      changed((s) => {
        s.version = 1e300;
      }),
    'version',
    'version',
    `reads up to ${setupVersion}`,
  ],
];

describe('parseSetup on broken text', () => {
  it.each(cases)('%s: a typed error without hanging (10 s)', (_, make, kind, path, words) => {
    const given = make();
    const start = performance.now();
    const error = errorOf(given);
    expect(performance.now() - start).toBeLessThan(10_000);
    expectError(error, kind, path, words);
  });

  it('leaves Object.prototype alone when a file names __proto__', () => {
    errorOf(swapped('{', '{"__proto__":{"polluted":1},')());
    expect('polluted' in {}).toBe(false);
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY, undefined, () => 1, Symbol('x'), 1n])(
    'validateSetup refuses %s where a number should be, and as the whole',
    (value) => {
      const setup = goodSetup();
      setup.camera.focalLengthMm = value;
      if (value !== undefined) expect(() => validateSetup(setup)).toThrow(SetupError);
      expect(() => validateSetup(value)).toThrow(SetupError);
    },
  );

  it('takes exactly 12 MB, and a byte order mark at the start', () => {
    expect(parseSetup(text().padEnd(maxSetupBytes)).id).toBe('barn');
    expect(parseSetup(`\ufeff${text()}`)).toEqual(parseSetup(text()));
  });
});

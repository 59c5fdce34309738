import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { CommandError, oneLine } from '../../../app/cli/command.ts';
import { loadSetup } from '../../../app/cli/load-setup.ts';
import { checkWritable, writeOutput } from '../../../app/cli/write-output.ts';
import { runLampfall, sample } from './run-command.ts';

const folder = mkdtempSync(join(tmpdir(), 'lampfall-faults-'));
afterAll(() => rmSync(folder, { recursive: true }));

const file = (name: string, content: string | Uint8Array): string => {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
};
const good = readFileSync(sample('three-stones'), 'utf8');
const late = file('late.json', good.replace('"on": 1,', '"on": 9.5,'));
const cut = file('cut.json', good.slice(0, 3000));
const png = join(folder, 'x.png');

/** Words after `lampfall`, and what the one line on stderr must say. */
const faults: readonly (readonly [name: string, words: readonly string[], expected: RegExp])[] = [
  ['no command', [], /^lampfall: a command is missing; usage: lampfall check\|readings\|sweep\|picture\|card FILE/],
  [
    'an unknown command',
    ['light', late],
    /there is no command "light"; usage: lampfall check\|readings\|sweep\|picture\|card FILE/,
  ],
  ['no file', ['check'], /a setup file is missing; usage: lampfall check FILE$/],
  ['a file that is not there', ['check', 'nowhere.json'], /nowhere\.json: there is no such file or folder$/],
  [
    'a pass that ends before it begins',
    ['check', late],
    /late\.json: schemes\[0\]\.frames\[1\]\.passes\[0\]\.on: must be before off$/,
  ],
  ['a file cut off', ['readings', cut, '--json'], /cut\.json: line \d+: the text breaks off/],
  [
    'an unknown option',
    ['readings', late, '--yaml'],
    /Unknown option '--yaml'; usage: lampfall readings FILE \[--json\]$/,
  ],
  ['no --out', ['picture', late], /--out is missing; usage: lampfall picture FILE --out/],
  [
    'a width of 15',
    ['picture', sample('three-stones'), '--out', png, '--width', '15'],
    /--width must be a whole number from 16 to 4096, not "15"; usage/,
  ],
  [
    'half a sample',
    ['picture', sample('three-stones'), '--out', png, '--samples', '1.5'],
    /--samples must be a whole number from 1 to 4096, not "1\.5"; usage/,
  ],
  [
    'an unknown scheme',
    ['picture', sample('three-stones'), '--out', png, '--scheme', 'top'],
    /--scheme: there is no scheme "top"; known: side, front, three-quarter-back, back$/,
  ],
  [
    'an unknown frame',
    ['picture', sample('three-stones'), '--out', png, '--frame', 'dusk'],
    /--frame: there is no frame "dusk"; known: sky, painted$/,
  ],
  [
    'a folder that is not there',
    ['picture', sample('three-stones'), '--out', join(folder, 'no', 'x.png')],
    /x\.png: can't be written: there is no such file or folder$/,
  ],
  [
    'a picture over the setup',
    ['picture', sample('three-stones'), '--out', late],
    /--out must end in \.png, not ".*late\.json"; usage/,
  ],
];

describe('lampfall on faults', () => {
  it.each(faults)('%s: exit 1, one line on stderr, nothing on stdout, no stack', async (_, words, expected) => {
    const { exitCode, stdout, stderr } = await runLampfall(...words);
    expect({ exitCode, stdout }).toEqual({ exitCode: 1, stdout: '' });
    expect(stderr).toMatch(/^lampfall: [^\n]+\n$/);
    expect(stderr.trimEnd()).toMatch(expected);
    expect(stderr).not.toMatch(/\bat .*:\d+:\d+|Error:/);
  });

  it('leaves no picture and no draft behind', () => {
    expect(readdirSync(folder).filter((name) => name.includes('png'))).toEqual([]);
  });
});

const loadError = (path: string): string => {
  try {
    loadSetup(path);
  } catch (error) {
    if (error instanceof CommandError) return error.message;
    throw error;
  }
  throw new Error(`${path} was taken`);
};

describe('loadSetup', () => {
  it.each([
    ['a folder', () => folder, 'is a folder; a setup file is needed'],
    ['a device', () => '/dev/null', 'is not a plain file'],
    ['an empty file', () => file('empty.json', ''), 'line 1: the text breaks off'],
    ['13 MB', () => file('large.json', ' '.repeat(13_000_000)), 'the file has 13.0 MB; at most 12 MB are read'],
    ['text in UTF-16', () => file('utf16.json', Buffer.from(`\ufeff${good}`, 'utf16le')), 'must be UTF-8 text'],
    ['a picture', () => file('p.json', new Uint8Array([137, 80, 78, 71, 13, 10, 26, 10])), 'must be UTF-8 text'],
    ['a list', () => file('list.json', '[1]'), 'the file must hold one setup: a JSON object'],
    ['a bad field', () => file('field.json', good.replace('"iso": 400', '"iso": "400"')), 'iso: must be a number'],
    ['a name with a null', () => join(folder, 'a\u0000b'), 'is not a file name'],
  ])('%s: says which file and what was expected', (_, make, words) => {
    const path = make();
    const message = loadError(path);
    expect(message.startsWith(`${path}: `)).toBe(true);
    expect(message).toContain(words);
  });

  it('takes a byte order mark at the start', () => {
    expect(loadSetup(file('bom.json', `\ufeff${good}`)).id).toBe('three-stones');
  });
});

describe('writeOutput and checkWritable', () => {
  it('say in one line why a file cannot be written, and leave no draft', () => {
    const taken = join(folder, 'taken.png');
    mkdirSync(taken);
    expect(() => checkWritable(taken)).toThrow(`${taken}: can't be written: is a folder`);
    expect(() => writeOutput(taken, 'x')).toThrow(CommandError);
    expect(() => writeOutput(join(folder, 'none', 'x.png'), 'x')).toThrow('there is no such file or folder');
    expect(readdirSync(folder).filter((name) => name.endsWith('.part'))).toEqual([]);
  });

  it('put the whole file in place of the old one', () => {
    const path = file('old.txt', 'a long old text');
    writeOutput(path, 'new');
    expect(readFileSync(path, 'utf8')).toBe('new');
  });
});

describe('oneLine', () => {
  it('makes one line of anything, without escapes for the terminal', () => {
    expect(oneLine('a\nb\r\n\u001b[31mc\u2028d\ud800')).toBe('a b [31mc d');
  });
});

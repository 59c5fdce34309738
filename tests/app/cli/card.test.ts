import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { card } from '../../../app/cli/card.ts';
import { CommandError } from '../../../app/cli/command.ts';
import { findPoppler, pixelsOfPdf, poppler } from '../card/find-poppler.ts';
import { nobody, runLampfall, sample } from './run-command.ts';

const folder = mkdtempSync(join(tmpdir(), 'lampfall-card-'));
afterAll(() => rmSync(folder, { recursive: true }));
const out = (name: string) => join(folder, name);

describe('lampfall card', () => {
  beforeAll(findPoppler);

  it('prints the card as text without an option, of the first scheme or of one that is named', async () => {
    const first = await runLampfall('card', sample('three-stones'));
    expect(first).toMatchObject({ exitCode: 0, stderr: '' });
    expect(first.stdout).toMatch(/^Three standing stones · Side\nFri 9 Oct 2026, 22:10 Europe\/London/);
    expect(first.stdout).toContain('3:00 (right 90°), 8 paces (6.0 m)');
    const back = await runLampfall('card', sample('three-stones'), '--scheme', 'back', '--lengths', 'feet');
    expect(back.stdout).toMatch(/^Three standing stones · Back\n/);
    // the lamp stands 3 m behind the stone that it is aimed past
    expect(back.stdout).toMatch(/12:\d\d \([^)]*\), 4 paces \(9\.8 ft\)/);
  });

  it('writes a PDF of one page, and the plan alone, and prints nothing else', async () => {
    const ran = await runLampfall(
      'card',
      sample('three-stones'),
      '--pdf',
      out('c.pdf'),
      '--svg',
      out('p.svg'),
      '--paper',
      'letter',
    );
    expect(ran).toEqual({ exitCode: 0, stdout: '', stderr: '' });
    expect(readdirSync(folder).sort()).toEqual(['c.pdf', 'p.svg']);
    const pdf = readFileSync(out('c.pdf'));
    expect(poppler('pdfinfo', pdf)).toMatch(/Pages:\s+1\n[\s\S]*Page size:\s+612 x 792 pts \(letter\)/);
    expect(poppler('pdftotext', pdf, ['-layout'], ['-'])).toContain('Three standing stones');
    const { data } = pixelsOfPdf(pdf, 75);
    expect(data.every((value, i) => value === data[i - (i % 3)])).toBe(true);
    // the two pictures: many more greys than the edges of letters have
    expect(new Set(data).size).toBeGreaterThan(100);
    expect(readFileSync(out('p.svg'), 'utf8')).toMatch(
      /^<svg [^>]*mm"[\s\S]*id="number-1"[\s\S]*id="scale-bar"[\s\S]*<\/svg>$/,
    );
  });

  it.each([
    [
      'an unknown scheme',
      ['--scheme', 'sideways'],
      /--scheme: there is no scheme "sideways"; known: side, front, .*; usage: lampfall card FILE/,
    ],
    ['an unknown paper', ['--paper', 'a5'], /--paper must be a4 or letter, not "a5"; usage/],
    ['an unknown unit', ['--lengths', 'yards'], /--lengths must be metres or feet, not "yards"; usage/],
    ['a PDF by another name', ['--pdf', 'card.png'], /--pdf must end in \.pdf, not "card\.png"; usage/],
    [
      'a folder that is not there',
      ['--pdf', '/nowhere/at/all/card.pdf'],
      /card\.pdf: can't be written: there is no such file or folder$/,
    ],
  ] as const)('refuses %s', async (_, words, expected) => {
    const refused = await card.run([sample('three-stones'), ...words], nobody)?.then(
      () => null,
      (error: unknown) => error,
    );
    expect(refused).toBeInstanceOf(CommandError);
    expect(String((refused as Error).message)).toMatch(expected);
  });
});

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { reportShape } from './report-shape.ts';
import { runLampfall, runLampfallAlone, sample } from './run-command.ts';

const lines = (text: string) => text.trimEnd().split('\n');

describe('lampfall check', () => {
  it.each([
    ['three-stones', 'Three standing stones', 4, 4],
    ['drystone-wall', 'Drystone wall', 4, 4],
  ])(
    '%s: exit 0, one line with the counts of the file, then as many lines as cautions',
    async (name, title, schemes, passes) => {
      const file = JSON.parse(readFileSync(sample(name), 'utf8')) as { schemes: { frames: { passes: unknown[] }[] }[] };
      expect(file.schemes.length).toBe(schemes);
      expect(file.schemes.flatMap((scheme) => scheme.frames.flatMap((frame) => frame.passes)).length).toBe(passes);
      const ran = await runLampfall('check', sample(name));
      expect(ran).toMatchObject({ exitCode: 0, stderr: '' });
      const [head, ...cautions] = lines(ran.stdout);
      const found = /^(.*): good\. (\d+) schemes, (\d+) passes, (\d+) cautions?$/.exec(head as string);
      expect(found?.slice(1, 4)).toEqual([title, String(schemes), String(passes)]);
      expect(cautions.length).toBe(Number(found?.[4]));
      // both samples have a lamp beside the camera: flat light is a danger (common practice, no published source)
      expect(cautions.filter((line) => /^ {2}(?:danger|warning|note) +\S.* · .*\.$/.test(line))).toEqual(cautions);
      expect(cautions.some((line) => line.includes('danger') && line.includes('flat'))).toBe(true);
    },
  );
});

describe('lampfall readings', () => {
  it('prints a table a scheme: aligned, with units, one line a pass', async () => {
    const ran = await runLampfall('readings', sample('three-stones'));
    expect(ran).toMatchObject({ exitCode: 0, stderr: '' });
    const rows = lines(ran.stdout);
    const heads = rows.filter((row) => row.startsWith('  frame, pass'));
    const passes = rows.filter((row) => row.startsWith('  Painted, Key'));
    expect([heads.length, passes.length]).toEqual([4, 4]);
    expect(new Set(heads).size).toBe(1);
    const end = (row: string, word: string | RegExp) => row.search(word);
    const timeEnds = passes.map((row) => end(row, / s {2}/));
    expect(new Set(timeEnds).size).toBe(1);
    // the side lamp stands at [6.2, 7.6, 0.8] aimed at [0.2, 7.75, 1.2]: 6.0 m away by Pythagoras, on for 9 - 1 = 8 s
    expect(passes[0]).toMatch(
      / 3:00 +6\.0 m {2}hip, 0\.80 m +[\d.]+ lx +[-+][\d.]+ stops +8 s +\d+ {2}\d+ % lit.*° \/ -?\d+°$/,
    );
    // the other numbers of a frame stand under its passes: 24 mm f/8 on 36 x 24 mm has its hyperfocal at 2.4 m
    const frames = rows.filter((row) => row.startsWith('  Painted: '));
    expect(frames.length).toBe(4);
    for (const row of frames) expect(row).toMatch(/sharp from [\d.]+ m to infinity, hyperfocal 2\.4 m; .*stars draw/);
    // the sky of the file's hour, once a scheme, and what is unlit, once a frame
    const skies = rows.filter((row) => row.startsWith('  Sky of the hour: '));
    expect(skies.length).toBe(4);
    for (const row of skies)
      expect(row).toMatch(
        /sun \d+° down, dark; moon \d+° down, \d+ % lit; zenith 2\d\.\d mag\/arcsec2; core \d+° down$/,
      );
    expect(rows.filter((row) => /^ {2}Unlit land in (?:Sky|Painted): -\d+\.\d stops$/.test(row)).length).toBe(8);
    expect(
      rows.filter((row) => /% of its outline before the sky; sky over it \+\d\.\d stops unlit/.test(row)).length,
    ).toBe(4);
    expect(rows.at(-1)).toMatch(/Rules about darkness.*ask locally/);
  });
});

describe('lampfall readings --json', () => {
  it('prints JSON with the agreed names and no others, and the ids of the file', async () => {
    const ran = await runLampfall('readings', sample('three-stones'), '--json');
    expect(ran).toMatchObject({ exitCode: 0, stderr: '' });
    const { setup, schemes } = reportShape.parse(JSON.parse(ran.stdout));
    expect(setup).toBe('three-stones');
    expect(schemes.map(({ id }) => id)).toEqual(['side', 'front', 'three-quarter-back', 'back']);
    expect(schemes.map(({ frames }) => frames.map(({ id, passes }) => [id, passes.length]))).toEqual(
      Array(4).fill([
        ['sky', 0],
        ['painted', 1],
      ]),
    );
    for (const { sky, moon } of schemes) {
      expect(sky?.sun.light).toBe('dark');
      // down, so no light
      expect([sky?.moon.isUp, moon]).toEqual([false, null]);
    }
    const [side, front, , back] = schemes.map(({ frames }) => frames[1]?.passes[0]);
    // Pythagoras over the file's positions, and the law of cosines at the aim point (rel 1e-9)
    const [toLamp, toCamera] = [Math.hypot(6, -0.15, -0.4), Math.hypot(-0.2, -7.75, -0.3)];
    const cosine = (6 * -0.2 + -0.15 * -7.75 + -0.4 * -0.3) / (toLamp * toCamera);
    expect(side?.distanceMetres).toBeCloseTo(toLamp, 9);
    expect(side?.offAxisDegrees).toBeCloseTo((Math.acos(cosine) * 180) / Math.PI, 9);
    // camera at six (common practice, no published source): side lamp to the right, front lamp at the camera
    expect([side?.clock, front?.clock]).toEqual(['3:00', '6:00']);
    expect(back?.shadows.length).toBe(3);
    expect(side?.target?.doseLuxSeconds).toBeCloseTo((side?.target?.illuminanceLux ?? 0) * 8, 9);
    // the file's lamp counts 8 s; dose goes with time, so the count that it should be brings it to the wanted level
    const stops = (side?.target?.stops ?? Number.NaN) + Math.log2((side?.count.seconds ?? Number.NaN) / 8);
    expect(stops).toBeCloseTo(side?.count.wantedStops as number, 9);
  });
});

describe('lampfall --help', () => {
  it.each([
    [
      ['--help'],
      /lampfall check FILE.*lampfall readings FILE.*lampfall sweep FILE.*lampfall picture FILE.*lampfall card FILE.*lampfall explain \[NAME\]/s,
    ],
    [['picture', '--help'], /^lampfall picture FILE --out x\.png/],
  ])('%s: short usage, exit 0', async (words, expected) => {
    const ran = await runLampfall(...words);
    expect(ran).toMatchObject({ exitCode: 0, stderr: '' });
    expect(ran.stdout).toMatch(expected);
    // what it is for and a blank line, and two lines a command
    expect(lines(ran.stdout).length).toBeLessThanOrEqual(2 + 2 * 6);
  });
});

describe('lampfall in a process of its own', () => {
  it('prints to stdout and ends with 0, or tells stderr why not and ends with 1', async () => {
    const good = await runLampfallAlone('check', sample('three-stones'));
    expect(good).toEqual(await runLampfall('check', sample('three-stones')));
    expect(good.exitCode).toBe(0);
    expect(await runLampfallAlone('check')).toEqual({
      exitCode: 1,
      stdout: '',
      stderr: 'lampfall: a setup file is missing; usage: lampfall check FILE\n',
    });
  });
});

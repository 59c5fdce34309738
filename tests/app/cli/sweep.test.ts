import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { CommandError } from '../../../app/cli/command.ts';
import { sweep as command } from '../../../app/cli/sweep.ts';
import { nobody, runLampfall, sample } from './run-command.ts';

const stones = sample('three-stones');
const answer = z.strictObject({
  setup: z.literal('three-stones'),
  scheme: z.string(),
  frame: z.literal('painted'),
  pass: z.literal('key'),
  kind: z.enum(['angles', 'heights', 'distances', 'gels', 'ratios']),
  cells: z.array(
    z.strictObject({
      row: z.string().min(1),
      column: z.string().min(1),
      place: z.tuple([z.number(), z.number(), z.number()]),
      seconds: z.number().positive(),
      levelPercent: z.number().min(0).max(100),
      missStops: z.number().nullable(),
      // more than the list asks for: why a cell's level and count were left as they are
      note: z.string().nullable(),
      // the readings are those of `lampfall readings --json`, whose names are tested there
      reading: z.looseObject({ passId: z.literal('key'), clock: z.string(), distanceMetres: z.number() }),
      cautions: z.array(z.looseObject({ code: z.string(), frameId: z.literal('painted') })),
    }),
  ),
});

const sweep = async (...words: readonly string[]) => {
  const ran = await runLampfall('sweep', stones, '--pass', 'key', ...words, '--json');
  expect(ran).toMatchObject({ exitCode: 0, stderr: '' });
  return answer.parse(JSON.parse(ran.stdout));
};

describe('lampfall sweep --json', () => {
  it('angles: a cell for each step and height, the clock read being the clock asked for', async () => {
    const { kind, scheme, cells } = await sweep('--steps', '4', '--heights', '0.3,1');
    expect([kind, scheme]).toEqual(['angles', 'side']);
    expect(cells.map(({ reading }) => reading.clock)).toEqual(cells.map(({ column }) => column));
    expect(cells.map(({ column }) => column)).toEqual([
      '6:00',
      '9:00',
      '12:00',
      '3:00',
      '6:00',
      '9:00',
      '12:00',
      '3:00',
    ]);
    expect(cells.map(({ place }) => place[2])).toEqual([0.3, 0.3, 0.3, 0.3, 1, 1, 1, 1]);
    // level distance by Pythagoras over the file's [6.2, 7.6] and [0.2, 7.75], kept to the micrometre
    for (const { place } of cells)
      expect(Math.hypot(place[0] - 0.2, place[1] - 7.75)).toBeCloseTo(Math.hypot(6, 0.15), 5);
  });

  it('one step: heights at the present bearing; another scheme when asked', async () => {
    const { kind, scheme, cells } = await sweep('--steps', '1', '--heights', '1,2', '--scheme', 'front');
    expect([kind, scheme, cells.length]).toEqual(['heights', 'front', 2]);
    expect(cells[0]?.place.slice(0, 2)).toEqual(cells[1]?.place.slice(0, 2));
  });

  it('distances: equal dose, or by how much it is missed; gels: the trade’s names after none', async () => {
    const near = await sweep('--distances', '3,24');
    expect(near.cells.map(({ column }) => column)).toEqual(['3 m', '24 m']);
    expect(near.cells[0]?.missStops).toBeNull();
    // four times as far is four stops less, of which the frame's marked 10 s, 2^(10/3) s, gives back log2(10.1 / 8)
    const miss = Math.log2(2 ** (10 / 3) / 8) - 4;
    // the surface lies a little before the aim, and the lamp under its height
    expect(Math.abs((near.cells[1]?.missStops ?? Number.NaN) - miss)).toBeLessThan(0.1);
    const gels = await sweep('--gels');
    expect(gels.cells.map(({ column }) => column).slice(0, 3)).toEqual(['no gel', '1/8 CTO', '1/4 CTO']);
  });
});

describe('lampfall sweep', () => {
  it('prints one line a cell, and cautions as words', async () => {
    const ran = await runLampfall('sweep', stones, '--pass', 'key', '--steps', '2', '--heights', '0.3');
    expect(ran).toMatchObject({ exitCode: 0, stderr: '' });
    const [head, columns, six, twelve] = ran.stdout.split('\n');
    expect(head).toBe('Side, Painted, Key: angles');
    expect(columns).toMatch(/^ {2}clock {2}lamp height +distance +lamp +light +level +rim +grazing +cautions$/);
    // the aim is 1.2 m up: sqrt(6.002^2 + 0.9^2) = 6.07 m; a lamp before the camera is flat (common practice)
    expect(six).toMatch(/^ +6:00 {2}shin · 0\.3 m +6\.1 m +100 %, 8 s .*° {2}near axis/);
    expect(twelve).toMatch(/^ +12:00 {2}shin · 0\.3 m/);
    // without --heights and --steps: twelve steps at three heights
    const whole = await runLampfall('sweep', stones, '--pass', 'key');
    expect(whole.stdout.split('\n').filter((line) => /^ +\d+:\d\d /.test(line)).length).toBe(36);
  });

  it.each<readonly [name: string, words: readonly string[], expected: RegExp]>([
    ['no pass', [], /--pass is missing; usage: lampfall sweep FILE/],
    ['an unknown pass', ['--pass', 'rim'], /--pass: there is no pass "rim"; known: key$/],
    [
      'an unknown scheme',
      ['--pass', 'key', '--scheme', 'top'],
      /--scheme: there is no scheme "top"; known: side, front/,
    ],
    [
      'an unknown frame',
      ['--pass', 'key', '--frame', 'dusk'],
      /--frame: there is no frame "dusk"; known: sky, painted$/,
    ],
    ['a frame without it', ['--pass', 'key', '--frame', 'sky'], /--pass: there is no pass "key"; known: none$/],
    ['two kinds', ['--pass', 'key', '--gels', '--distances', '2'], /--gels can't go with --distances; usage/],
    ['steps of gels', ['--pass', 'key', '--gels', '--steps', '4'], /--steps can't go with --gels; usage/],
    ['37 steps', ['--pass', 'key', '--steps', '37'], /--steps must be a whole number from 1 to 36, not "37"; usage/],
    ['180 cells', ['--pass', 'key', '--steps', '36', '--heights', '1,2,3,4,5'], /--steps must make at most 144 cells/],
    [
      'words for heights',
      ['--pass', 'key', '--heights', '1,knee'],
      /--heights must be numbers .*, not "1,knee"; usage/,
    ],
    ['no heights', ['--pass', 'key', '--heights', ''], /--heights must be numbers/],
    ['a height too low', ['--pass', 'key', '--heights=-600'], /--heights must each be from 0.02 to 2000 m, not -600$/],
    ['no distance', ['--pass', 'key', '--distances', '0'], /--distances must each be from 0\.05 to 10000 m, not 0$/],
    ['too far', ['--pass', 'key', '--distances', '9000'], /the lamp must be within 5000 m level/],
    ['no key', ['--pass', 'key', '--ratios', '1'], /--pass must have a key beside it/],
  ])('%s: refused, naming the option and what was expected', (_, words, expected) => {
    expect(() => command.run([stones, ...words], nobody)).toThrow(CommandError);
    expect(() => command.run([stones, ...words], nobody)).toThrow(expected);
  });

  it('tells a fault in one line on stderr, exit 1', async () => {
    const ran = await runLampfall('sweep', stones, '--pass', 'key', '--heights=-600');
    expect(ran).toMatchObject({ exitCode: 1, stdout: '' });
    expect(ran.stderr).toBe('lampfall: --heights must each be from 0.02 to 2000 m, not -600\n');
  });
});

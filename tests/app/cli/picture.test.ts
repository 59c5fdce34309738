import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { decode } from 'fast-png';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Ran, runLampfall, sample } from './run-command.ts';

const folder = mkdtempSync(join(tmpdir(), 'lampfall-picture-'));
afterAll(() => rmSync(folder, { recursive: true }));

const take = (out: string, ...more: readonly string[]): Promise<Ran> =>
  runLampfall(
    'picture',
    sample('three-stones'),
    '--out',
    join(folder, out),
    '--width',
    '48',
    '--samples',
    '2',
    ...more,
  );
const read = (out: string) => decode(readFileSync(join(folder, out)));
const mean = (data: ArrayLike<number>) => Array.from(data).reduce((sum, v) => sum + v, 0) / data.length;

describe('lampfall picture', () => {
  let ran: readonly Ran[];
  beforeAll(async () => {
    ran = [
      await take('side.png'),
      await take('front.png', '--scheme', 'front', '--frame', 'painted'),
      await take('sky.png', '--frame', 'sky'),
      await take('blend.png', '--blend'),
    ];
  });

  it('ends with 0, prints nothing where no person sits, and leaves only its pictures', () => {
    expect(ran).toEqual(Array(4).fill({ exitCode: 0, stdout: '', stderr: '' }));
    expect(readdirSync(folder).sort()).toEqual(['blend.png', 'front.png', 'side.png', 'sky.png']);
  });

  it('writes 48 x 32 pixels from a sensor of 36 x 24 mm, three channels of eight bits', () => {
    for (const out of ['side.png', 'front.png', 'sky.png'])
      expect(read(out)).toMatchObject({ width: 48, height: 32, channels: 3, depth: 8 });
  });

  it('blends the frames as the scheme says: the brighter of each byte', () => {
    const [side, sky] = [read('side.png').data, read('sky.png').data];
    expect(Array.from(read('blend.png').data)).toEqual(Array.from(side, (v, i) => Math.max(v, sky[i] as number)));
  });

  it('is neither black nor all one tone: some pixel is over 60 of 255, and over 20 levels occur', () => {
    for (const out of ['side.png', 'front.png']) {
      const { data } = read(out);
      expect(Math.max(...data)).toBeGreaterThan(60);
      expect(new Set(data).size).toBeGreaterThan(20);
    }
  });

  it('differs between schemes: more than a twentieth of the values by more than 8 of 255', () => {
    const [side, front] = [read('side.png').data, read('front.png').data];
    const changed = Array.from(side).filter((v, i) => Math.abs(v - (front[i] as number)) > 8);
    expect(changed.length).toBeGreaterThan(side.length / 20);
  });

  it('takes the last frame unless told: the sky frame, 7.9 stops more open, has the brighter sky', () => {
    // f/2, 12 s, ISO 5000 against f/8, 10 s, ISO 400: log2(16 x 1.2 x 12.5) = 7.9 stops (H = q L t / N^2, ISO 12232)
    const sky = (out: string) => mean(read(out).data.subarray(0, 48 * 3 * 4));
    expect(sky('sky.png')).toBeGreaterThan(sky('side.png') + 20);
  });
});

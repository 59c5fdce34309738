import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { kitNamed } from '../../../core/kits/all-kits.ts';
import { initialValues, subjectFromKit } from '../../../core/kits/kit.ts';
import { formatSetup } from '../../../core/setup/format-setup.ts';
import { parseSetup, validateSetup } from '../../../core/setup/parse-setup.ts';
import { savedBytes } from '../../../core/setup/saved-bytes.ts';
import type { Part, Setup } from '../../../core/setup/schema/setup.ts';
import { savedSizeFault, sizeFault } from '../../../core/setup/setup-size.ts';

const sample = (file: string): Setup => parseSetup(readFileSync(`assets/setups/${file}`, 'utf8'));
const three = sample('three-stones.json');

/** The text itself, encoded by Node: independent of how bytes are counted. */
const encoded = (setup: Setup): number => Buffer.byteLength(formatSetup(setup), 'utf8');

describe('savedBytes', () => {
  it.each(readdirSync('assets/setups'))('%s: as many bytes as the file has', (file) => {
    const setup = sample(file);
    expect(savedBytes(setup)).toEqual({ all: encoded(setup), ofScanData: 0 });
    expect(savedBytes(setup).all).toBe(encoded(setup));
  });

  it('counts letters of two and three bytes, empty lists, scans, and what an edit changed', () => {
    const [first, ...rest] = three.subjects as [Setup['subjects'][number], ...Setup['subjects']];
    const scan = { id: 's', name: 'Stein ä', fileName: 'a.ply', triangleCount: 1, sizeMetres: [1, 1, 1], data: 'QUJD' };
    const changed = [
      { ...three, subjects: [], note: 'Hütte – 石\n"x" [\n 1\n]' },
      { ...three, subjects: [{ ...first, name: 'Fünf', parts: first.parts.slice(0, 1) }, ...rest] },
      { ...three, scans: [scan, { ...scan, id: 't', data: 'A'.repeat(1000) }] } as unknown as Setup,
    ];
    for (const setup of [three, ...changed]) expect(savedBytes(setup).all).toBe(encoded(setup));
    expect(savedBytes(changed[2] as Setup).ofScanData).toBe(1004);
  });
});

describe('the largest setups', () => {
  it('takes back from its file a setup of as many stones of a kit as it may have parts, 5000', () => {
    const kit = kitNamed('drystone-wall');
    if (!kit) throw new Error('no such kit');
    const stones: Part[] = [];
    for (let seed = 1; stones.length < 5000; seed++)
      stones.push(...subjectFromKit(kit, initialValues(kit), seed, { id: 'wall', name: 'Wall' }).parts);
    const subjects = [0, 2000, 4000].map((from, s) => ({
      ...(three.subjects[0] as Setup['subjects'][number]),
      id: `wall-${s}`,
      kit: null,
      parts: stones.slice(0, 5000).slice(from, from + 2000),
    }));
    const full = validateSetup({ ...structuredClone(three), subjects, lesson: null });
    const text = formatSetup(full);
    expect(text.length).toBeGreaterThan(5_000_000);
    expect(sizeFault(text)).toBe(null);
    expect(savedSizeFault(full)).toBe(null);
    expect(parseSetup(text)).toEqual(full);
  });
});

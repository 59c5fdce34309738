import { describe, expect, it } from 'vitest';
import { type BagLamp, formatBag, parseBag } from '../../../core/bag/bag-file.ts';
import { maxBagLamps } from '../../../core/bag/bag-size.ts';
import { lamp } from '../../../core/setup/schema/lamp.ts';
import { measuredBeam } from '../../../core/setup/schema/measured-beam.ts';
import { SetupError } from '../../../core/setup/setup-error.ts';
import { maxSetupBytes } from '../../../core/setup/setup-size.ts';

const beam = measuredBeam.parse({
  id: 'round',
  name: 'Round torch',
  verticalDegrees: [0, 10, 40],
  horizontalDegrees: [0],
  candela: [[900, 400, 0]],
});
const torch = lamp.parse({
  kind: 'torch',
  id: 'torch',
  name: 'My torch',
  output: { from: 'lumens', lumens: 600 },
  beam: { shape: 'spot', beamDegrees: 12 },
  lowestLevelPercent: 2,
  correctionStops: -0.8,
  testShots: [{ at: '2026-10-09T22:41:07', stops: -0.8, uncertaintyStops: 0.3 }],
});
const measured = (id: string, beamId: string) =>
  lamp.parse({
    kind: 'torch',
    id,
    name: `Torch ${id}`,
    output: { from: 'measured' },
    beam: { shape: 'measured', beamId },
  });

const bag: BagLamp[] = [
  { lamp: torch, beam: null },
  { lamp: measured('torch', 'round'), beam },
  { lamp: measured('torch', 'other'), beam: { ...beam, id: 'other' } },
];
/** Without the ids, which are made anew. */
const told = (lamps: readonly BagLamp[]) =>
  lamps.map(({ lamp: { id: _, ...own }, beam: its }) => [
    { ...own, ...('beam' in own && own.beam.shape === 'measured' ? { beam: { ...own.beam, beamId: '' } } : {}) },
    its && { ...its, id: '' },
  ]);

describe('a bag of lamps as a file', () => {
  it('comes back as it was written: outputs, levels, shots, beams; a beam that two share is written once', () => {
    const text = formatBag(bag);
    expect(told(parseBag(text))).toEqual(told(bag));
    expect(JSON.parse(text).measuredBeams).toHaveLength(1);
    expect(JSON.parse(text)).toMatchObject({ format: 'lampfall-bag', version: 1 });
    expect(parseBag(formatBag(parseBag(text)))).toEqual(parseBag(text));
    expect(parseBag(formatBag([]))).toEqual([]);
  });

  const changed = (change: (bag: Record<string, unknown> & { lamps: Record<string, unknown>[] }) => void): string => {
    const value = JSON.parse(formatBag(bag));
    change(value);
    return JSON.stringify(value);
  };
  it.each([
    ['words', () => 'dear aunt', 'line 1', /breaks off or has a stray character.*JSON/],
    ['a setup', () => changed((b) => Object.assign(b, { format: 'lampfall-setup' })), 'format', /not a bag of lamps/],
    ['a later version', () => changed((b) => Object.assign(b, { version: 2 })), 'version', /must be 1/],
    ['a strange field', () => changed((b) => Object.assign(b, { colour: 1 })), 'colour', /not a field/],
    [
      'a lamp brighter than any',
      () => changed((b) => Object.assign(b.lamps[0] as object, { output: { from: 'lumens', lumens: 1e9 } })),
      'lamps[0].output.lumens',
      /at most 10000000/,
    ],
    [
      'a lamp without a name',
      () => changed((b) => Object.assign(b.lamps[1] as object, { name: '' })),
      'lamps[1].name',
      /empty/,
    ],
    [
      'two of one id',
      () => changed((b) => Object.assign(b.lamps[1] as object, { id: 'lamp-1' })),
      'lamps[1].id',
      /twice/,
    ],
    [
      'a beam that is not there',
      () => changed((b) => Object.assign(b, { measuredBeams: [] })),
      'lamps[1].beam.beamId',
      /no measured beam/,
    ],
    [
      'an output measured with a beam that the lamp has not',
      () => changed((b) => Object.assign(b.lamps[0] as object, { output: { from: 'measured' } })),
      'lamps[0].output',
      /must not be that of a measured beam: the lamp has none/,
    ],
    ['a file that is too long', () => ' '.repeat(maxSetupBytes + 1), '', /has over [\d.]+ MB/],
    [
      'too many',
      () => changed((b) => Object.assign(b, { lamps: Array.from({ length: maxBagLamps + 1 }, () => b.lamps[0]) })),
      'lamps',
      /at most 200/,
    ],
  ])('%s is refused with the field named', (_, text, path, words) => {
    let error: unknown = null;
    try {
      parseBag(text());
    } catch (thrown) {
      error = thrown;
    }
    expect(error).toBeInstanceOf(SetupError);
    expect((error as SetupError).path).toBe(path);
    expect((error as SetupError).message).toMatch(words);
  });
});

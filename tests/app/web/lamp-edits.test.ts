import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { newLamps } from '../../../app/web/inspector/new-lamps.ts';
import { BeamRefused, beamFromFile } from '../../../app/web/state/beam-from-file.ts';
import * as edits from '../../../app/web/state/edits/lamp-edits.ts';
import { type Output, outputFrom } from '../../../app/web/state/edits/lamp-output.ts';
import { setPassCloth, setPassGels, setPassSnoot } from '../../../app/web/state/edits/pass-edits.ts';
import { emitterPeakPerLumen } from '../../../core/photometry/emitter.ts';
import { parseLm63 } from '../../../core/photometry/lm63/parse-lm63.ts';
import { formatSetup } from '../../../core/setup/format-setup.ts';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import type { Beam, Lamp, MeasuredBeam, Pass, Setup } from '../../../core/setup/schema/setup.ts';
import { emitterOf, fluxOf } from '../../../core/world/lamp-light.ts';

const stones = parseSetup(readFileSync('assets/setups/three-stones.json', 'utf8'));
const place = { schemeId: 'side', frameId: 'painted', passId: 'key' };
const passOf = (setup: Setup): Pass => setup.schemes[0]?.frames[1]?.passes[0] as Pass;
const lampOf = (setup: Setup, lampId = 'torch'): Lamp => setup.lamps.find(({ id }) => id === lampId) as Lamp;
const beamOf = (name: string): MeasuredBeam =>
  beamFromFile(parseLm63(readFileSync(`tests/reference/fixtures/${name}.ies`, 'utf8')));
const [five, three, round] = [beamOf('five-planes'), beamOf('three-angles'), beamOf('round-torch')] as const;
const idsOf = (setup: Setup) => setup.measuredBeams.map(({ id }) => id);

describe('a beam from a photometric file', () => {
  it('gives the lamp beam and output: 200 cd on average over a hemisphere are 400 pi lm (rel 1e-6)', () => {
    const read = edits.setBeamFromFile(stones, 'torch', five);
    expect(lampOf(read)).toMatchObject({ output: { from: 'measured' }, beam: { shape: 'measured', turnDegrees: 0 } });
    expect(Math.abs(fluxOf(lampOf(read), read.measuredBeams) / (400 * Math.PI) - 1)).toBeLessThanOrEqual(1e-6);
    expect(parseSetup(formatSetup(read))).toEqual(read);
  });

  it('is used again when another lamp reads the same; a replaced one goes when no lamp uses it', () => {
    const { setup: two, lampId } = edits.addLamp(stones, newLamps.point);
    const both = edits.setBeamFromFile(edits.setBeamFromFile(two, 'torch', five), lampId, structuredClone(five));
    expect(both.measuredBeams).toHaveLength(1);
    const other = edits.setBeamFromFile(both, 'torch', three);
    expect(idsOf(other)).toEqual(['invented-for-arithmetic-by-hand', 'invented-for-arithmetic-by-hand-2']);
    const last = edits.setBeamFromFile(other, lampId, round);
    expect(last.measuredBeams.map(({ name }) => name)).toEqual([
      'invented, for arithmetic by hand',
      'Torch with a round glass',
    ]);
    expect(parseSetup(formatSetup(last))).toEqual(last);
  });

  it('keeps the turn of the beam before', () => {
    const read = edits.setBeamFromFile(stones, 'torch', five);
    const beam = edits.measuredBeamOf(lampOf(read)) as Beam & { shape: 'measured' };
    const turned = edits.setLampBeam(read, 'torch', { ...beam, turnDegrees: 30 });
    expect(edits.measuredBeamOf(lampOf(edits.setBeamFromFile(turned, 'torch', three)))?.turnDegrees).toBe(30);
  });

  it('is refused to lanterns, tubes and unknown lamps, and as the ninth in use', () => {
    const { setup, lampId } = edits.addLamp(stones, newLamps.lantern);
    expect(edits.setBeamFromFile(setup, lampId, five)).toBe(setup);
    expect(edits.setBeamFromFile(setup, 'gone', five)).toBe(setup);
    const nth = (n: number): MeasuredBeam => ({ ...three, name: `Beam ${n}` });
    let full = stones;
    for (let n = 0; n < 8; n++) {
      const added = edits.addLamp(full, newLamps.point);
      full = edits.setBeamFromFile(added.setup, added.lampId, nth(n));
    }
    expect(full.measuredBeams).toHaveLength(8);
    expect(edits.setBeamFromFile(full, 'torch', nth(9))).toBe(full);
    expect(edits.setBeamFromFile(full, 'point', nth(9)).measuredBeams).toHaveLength(8);
  });
});

describe('what a good file may not have', () => {
  const { verticalDegrees, horizontalDegrees, candela, ...rest } = parseLm63(
    readFileSync('tests/reference/fixtures/three-angles.ies', 'utf8'),
  );
  const rising = (count: number, last: number) => Array.from({ length: count }, (_, i) => (last * i) / (count - 1));
  const dark = (planes: number, values: number) => Array.from({ length: planes }, () => new Array(values).fill(1));
  it.each([
    ['too many values', rising(401, 90), rising(250, 360), dark(250, 401), /100,250 values; at most 100,000/],
    ['too many angles', rising(2001, 90), [0], dark(1, 2001), /2,001 vertical angles; at most 2,000/],
    [
      'too many planes once mirrored',
      [0, 90],
      rising(502, 90),
      dark(502, 2),
      /circle it has 2,004 planes; at most 2,000/,
    ],
    ['backward light', [90, 135, 180], [0], dark(1, 3), /begin at 90°/],
    ['no light at all', verticalDegrees, horizontalDegrees, [[0, 0, 0]], /candelas must shine somewhere/],
    ['too bright', verticalDegrees, horizontalDegrees, [[2e9, 0, 0]], /at most 1000000000 candela/],
  ])('%s: a plain word', (_, vertical, horizontal, values, words) => {
    const file = { ...rest, verticalDegrees: vertical, horizontalDegrees: horizontal, candela: values };
    expect(() => beamFromFile(file)).toThrow(BeamRefused);
    expect(() => beamFromFile(file)).toThrow(words);
  });

  it('names without a letter get an id all the same', () => {
    expect(beamFromFile({ ...rest, name: '灯', verticalDegrees, horizontalDegrees, candela }).id).toBe('measured');
  });
});

const beams: readonly Beam[] = [
  { shape: 'spot', beamDegrees: 12, spillDegrees: 80, spillShare: 0.4 },
  { shape: 'flood', degrees: 60 },
  { shape: 'lobe', degrees: 35 },
  { shape: 'open' },
];

describe('the same light told another way', () => {
  it.each(['lumens', 'beam-distance', 'peak-candela', 'lux-at-1-metre'] as const)(
    'as %s: same lumens (rel 2e-3)',
    (from) => {
      const read = edits.setBeamFromFile(stones, 'torch', round);
      for (const setup of [...beams.map((beam) => edits.setLampBeam(stones, 'torch', beam)), read]) {
        const told = edits.restateLampOutput(setup, 'torch', from);
        expect(lampOf(told).output.from).toBe(from);
        const ratio = fluxOf(lampOf(told), told.measuredBeams) / fluxOf(lampOf(setup), setup.measuredBeams);
        expect(Math.abs(ratio - 1)).toBeLessThanOrEqual(2e-3);
      }
    },
  );

  it('a beam distance of 100 m stays 2500 cd whatever the shape (ANSI/PLATO FL 1-2019: 0.25 lx; rel 1e-12)', () => {
    const printed = edits.setLampOutput(stones, 'torch', outputFrom('beam-distance', 100));
    for (const beam of beams) {
      const lamp = lampOf(edits.setLampBeam(printed, 'torch', beam));
      expect(Math.abs((fluxOf(lamp) * emitterPeakPerLumen(emitterOf(lamp))) / 2500 - 1)).toBeLessThanOrEqual(1e-12);
    }
  });

  it('“as measured” is refused to a beam that is not; a measured lamp given a cone keeps its lumens', () => {
    expect(edits.restateLampOutput(stones, 'torch', 'measured')).toBe(stones);
    const read = edits.setBeamFromFile(stones, 'torch', five);
    const cone = edits.setLampBeam(read, 'torch', { shape: 'flood', degrees: 60 });
    expect(lampOf(cone).output).toEqual({ from: 'lumens', lumens: 1257 });
  });
});

describe('any run of edits of a lamp and what hangs in front of it', () => {
  const gel = { name: 'x', shiftMired: 100, transmission: 0.5, colour: [0.2, 1, 0.3] as [number, number, number] };
  const lampIds = ['torch', 'panel', 'lantern', 'tube', 'point'];
  const bag = Object.values(newLamps).reduce(
    (s, lamp) => (lamp.id === 'torch' ? s : edits.addLamp(s, lamp).setup),
    stones,
  );
  const froms: readonly Output['from'][] = ['lumens', 'beam-distance', 'peak-candela', 'lux-at-1-metre', 'measured'];
  const edit: fc.Arbitrary<(setup: Setup) => Setup> = fc.oneof(
    fc.tuple(fc.constantFrom(...lampIds), fc.constantFrom(five, three, round)).map(
      ([id, beam]) =>
        (s: Setup) =>
          edits.setBeamFromFile(s, id, beam),
    ),
    fc.tuple(fc.constantFrom(...lampIds), fc.constantFrom(...froms)).map(
      ([id, from]) =>
        (s: Setup) =>
          edits.restateLampOutput(s, id, from),
    ),
    fc
      .tuple(
        fc.constantFrom(...lampIds),
        fc.constantFrom<Beam>(...beams, { shape: 'even' }, { shape: 'flood', degrees: 1 }),
      )
      .map(
        ([id, beam]) =>
          (s: Setup) =>
            edits.setLampBeam(s, id, beam),
      ),
    fc.tuple(fc.constantFrom(...lampIds), fc.double({ min: 1e-9, max: 1e12, noNaN: true })).map(
      ([id, v]) =>
        (s: Setup) =>
          edits.setLampOutput(s, id, outputFrom('peak-candela', v)),
    ),
    fc
      .tuple(
        fc.constantFrom(...lampIds),
        fc.constantFrom<edits.LampSize>('diameterMm', 'widthMm', 'lengthMm', 'heightMm'),
      )
      .map(
        ([id, size]) =>
          (s: Setup) =>
            edits.setLampSize(s, id, size, 77),
      ),
    fc.integer({ min: 0, max: 11 }).map((n) => (s: Setup) => setPassGels(s, place, new Array(n).fill(gel))),
    fc.constantFrom(0, 1, 16).map((stops) => (s: Setup) => setPassCloth(s, place, { stops, spreadShare: 0.4 })),
    fc.constantFrom(null, -3, 0.2, 40, 700).map((v) => (s: Setup) => setPassSnoot(s, place, v)),
  );

  it('leaves a setup that can be saved and read back unchanged (300 runs, seed 11)', () => {
    fc.assert(
      fc.property(fc.array(edit, { minLength: 1, maxLength: 12 }), (run) => {
        const edited = run.reduce((setup, apply) => apply(setup), bag);
        expect(parseSetup(formatSetup(edited))).toEqual(edited);
      }),
      { numRuns: 300, seed: 11 },
    );
  });

  it('cloth that costs nothing is none; a stack holds eight', () => {
    expect(passOf(setPassCloth(stones, place, { stops: 0, spreadShare: 1 })).cloth).toBeNull();
    expect(passOf(setPassGels(stones, place, new Array(9).fill(gel))).gels).toHaveLength(8);
  });
});

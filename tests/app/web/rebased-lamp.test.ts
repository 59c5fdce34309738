import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { beamFromFile } from '../../../app/web/state/beam-from-file.ts';
import * as edits from '../../../app/web/state/edits/lamp-edits.ts';
import { type Output, outputFrom } from '../../../app/web/state/edits/lamp-output.ts';
import { parseLm63 } from '../../../core/photometry/lm63/parse-lm63.ts';
import { formatSetup } from '../../../core/setup/format-setup.ts';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import type { Lamp, Setup } from '../../../core/setup/schema/setup.ts';
import { fluxOf, realFluxOf } from '../../../core/world/lamp-light.ts';

const stones = parseSetup(readFileSync('assets/setups/three-stones.json', 'utf8'));
const lampOf = (setup: Setup): Lamp => setup.lamps.find(({ id }) => id === 'torch') as Lamp;
const round = beamFromFile(parseLm63(readFileSync('tests/reference/fixtures/round-torch.ies', 'utf8')));

describe('a lamp that photos were held to', () => {
  const shot = { at: null, stops: -1, uncertaintyStops: 0.3 };
  const held = (output: Output) => {
    const told = edits.setLampOutput(stones, 'torch', output);
    return {
      ...told,
      lamps: told.lamps.map((lamp) => ({ ...lamp, correctionStops: -1, testShots: [shot, shot] }) as Lamp),
    };
  };
  const real = (setup: Setup) => realFluxOf(lampOf(setup), setup.measuredBeams);
  const good = (setup: Setup) => expect(parseSetup(formatSetup(setup))).toEqual(setup);

  it('another number on the box leaves what it really gives, and comes back to where it was (rel 0.5 %)', () => {
    const before = held(outputFrom('lumens', 200));
    const typed = edits.setLampOutput(before, 'torch', outputFrom('lumens', 400));
    expect(lampOf(typed)).toMatchObject({ correctionStops: -2, testShots: [{ stops: -2 }, { stops: -2 }] });
    expect(Math.abs(real(typed) / 100 - 1)).toBeLessThan(0.005);
    good(typed);
    expect(edits.setLampOutput(typed, 'torch', outputFrom('lumens', 200))).toEqual(before);
    // past what a correction may be, the shots know the way back
    const far = edits.setLampOutput(before, 'torch', outputFrom('lumens', 1));
    good(far);
    expect(edits.setLampOutput(far, 'torch', outputFrom('lumens', 200))).toEqual(before);
  });

  it('another beam or size, where the box tells candela, leaves what it really gives (rel 0.5 %)', () => {
    const before = held(outputFrom('peak-candela', 900));
    const beam = { shape: 'lobe', degrees: 25 } as const;
    const changed = edits.setLampBeam(before, 'torch', beam);
    expect(fluxOf(lampOf(changed))).not.toBeCloseTo(fluxOf(lampOf(before)), 0);
    expect(Math.abs(real(changed) / real(before) - 1)).toBeLessThan(0.005);
    good(changed);
    const kelvin = edits.setLampKelvin(before, 'torch', 3000);
    expect(lampOf(kelvin)).toMatchObject({ correctionStops: -1, testShots: [shot, shot] });
  });

  it('a photometric file leaves what it really gives, and so does telling the box another way (rel 0.5 %)', () => {
    const before = held(outputFrom('lumens', 200));
    const read = edits.setBeamFromFile(before, 'torch', round);
    expect(Math.abs(real(read) / 100 - 1)).toBeLessThan(0.005);
    good(read);
    const restated = edits.restateLampOutput(before, 'torch', 'lux-at-1-metre');
    expect(lampOf(restated)).toMatchObject({ correctionStops: -1, testShots: [shot, shot] });
  });

  it('a new reading of a lux meter measures it itself: photos of before count no more', () => {
    const before = held(outputFrom('lux-at-1-metre', 300));
    expect(edits.setLampLux(before, 'torch', outputFrom('lux-at-1-metre', 300))).toBe(before);
    const read = edits.setLampLux(before, 'torch', outputFrom('lux-at-1-metre', 120));
    expect(lampOf(read)).toMatchObject({ correctionStops: 0, testShots: [], output: { lux: 120 } });
    good(read);
  });
});

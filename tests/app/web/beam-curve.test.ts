import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type BeamCurve, beamCurve } from '../../../app/web/inspector/beam-curve.ts';
import { newLamps } from '../../../app/web/inspector/new-lamps.ts';
import { beamFromFile } from '../../../app/web/state/beam-from-file.ts';
import type { Emitter } from '../../../core/photometry/emitter.ts';
import { emitterPeakPerLumen } from '../../../core/photometry/emitter.ts';
import { parseLm63 } from '../../../core/photometry/lm63/parse-lm63.ts';
import type { Beam } from '../../../core/setup/schema/setup.ts';
import { emitterOf } from '../../../core/world/lamp-light.ts';

const torch = (beam: Beam): Emitter => emitterOf({ ...newLamps.torch, beam } as typeof newLamps.torch);
const measured = (name: string, turnDegrees = 0): Emitter => {
  const beam = beamFromFile(parseLm63(readFileSync(`tests/reference/fixtures/${name}.ies`, 'utf8')));
  const lamp = { ...newLamps.torch, beam: { shape: 'measured' as const, beamId: beam.id, turnDegrees } };
  return emitterOf(lamp as typeof newLamps.torch, [beam]);
};
const widthOf = ({ planes }: BeamCurve, plane = 0): number =>
  (planes[plane] ?? []).reduce((sum, { halfDegrees }) => sum + (halfDegrees ?? Number.NaN), 0);

describe('beamCurve', () => {
  it.each<[string, Beam, number]>([
    ['a lobe falls to half where it says', { shape: 'lobe', degrees: 35 }, 35],
    ['a narrow lobe too', { shape: 'lobe', degrees: 1.5 }, 1.5],
    ['an even cone ends at its edge', { shape: 'flood', degrees: 50 }, 50],
    ['the cosine is a half at 60°', { shape: 'open' }, 120],
  ])('%s (1e-5°)', (_, beam, degrees) => {
    expect(Math.abs(widthOf(beamCurve(torch(beam))) - degrees)).toBeLessThanOrEqual(1e-5);
  });

  it('a snoot narrower than the beam is the beam angle (1e-5°)', () => {
    const front = { spreadShare: 0, cosSnoot: Math.cos(Math.PI / 18) };
    expect(Math.abs(widthOf(beamCurve({ ...torch({ shape: 'open' }), front })) - 20)).toBeLessThanOrEqual(1e-5);
  });

  it('cloth that spreads all makes any beam a cosine: peak 1/pi per lumen (rel 1e-12), 120° (1e-5°)', () => {
    const curve = beamCurve({ ...torch({ shape: 'lobe', degrees: 20 }), front: { spreadShare: 1, cosSnoot: -1 } });
    expect(Math.abs(curve.peakPerLumen * Math.PI - 1)).toBeLessThanOrEqual(1e-12);
    expect(Math.abs(widthOf(curve) - 120)).toBeLessThanOrEqual(1e-5);
  });

  it('a tube falls with the sine of the angle to its length: 120° along it, all round across it (1e-5°)', () => {
    const curve = beamCurve(emitterOf(newLamps.tube));
    expect(Math.abs(widthOf(curve, 0) - 120)).toBeLessThanOrEqual(1e-5);
    expect(widthOf(curve, 1)).toBe(360);
  });

  it('a globe and a bare bulb shine all round', () => {
    expect(widthOf(beamCurve(emitterOf(newLamps.lantern)))).toBe(360);
    expect(widthOf(beamCurve(emitterOf(newLamps.point)))).toBe(360);
  });

  it('a round file has one plane: 200 cd falling to 100 cd at 45° (1e-5°)', () => {
    const curve = beamCurve(measured('three-angles'));
    expect(curve.planes).toHaveLength(1);
    expect(Math.abs(widthOf(curve) - 90)).toBeLessThanOrEqual(1e-5);
  });

  it.each([0, 70])(
    'a file without symmetry shows its own planes, turned by %i°: 100, 300, 200, 200 of 300 cd (rel 1e-9)',
    (turn) => {
      const emitter = measured('five-planes', turn);
      const { planes, peakPerLumen, offAxisDegrees } = beamCurve(emitter);
      expect(Math.abs(peakPerLumen / emitterPeakPerLumen(emitter) - 1)).toBeLessThanOrEqual(1e-12);
      const at = offAxisDegrees.findIndex((degrees) => degrees > 40);
      const shares = planes.flat().map(({ perLumen }) => ((perLumen[at] as number) / peakPerLumen) * 300);
      [100, 300, 200, 200].forEach((candela, i) => {
        expect(Math.abs((shares[i] as number) / candela - 1)).toBeLessThanOrEqual(1e-9);
      });
      expect(planes[0]?.[0].halfDegrees).toBeNull();
    },
  );
});

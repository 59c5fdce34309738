import { describe, expect, it } from 'vitest';
import { beamCurve } from '../../../app/web/inspector/beam-curve.ts';
import { beamWidthText } from '../../../app/web/inspector/beam-width-text.ts';
import { reshapeBeam } from '../../../app/web/inspector/reshape-beam.ts';
import { drawnBeamDegrees } from '../../../app/web/ui/beam-width.ts';
import { reportScheme } from '../../../core/cautions/setup-report.ts';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import type { Lamp, Pass } from '../../../core/setup/schema/setup.ts';
import { dressedEmitter, emitterOf } from '../../../core/world/lamp-light.ts';
import { everyKindSetup } from '../../browser/every-kind.ts';
import { lampOf, measuredField } from '../../core/photometry/lamps.ts';

const setup = parseSetup(JSON.stringify(everyKindSetup()));
const [scheme] = setup.schemes as [(typeof setup.schemes)[number]];
const lampOfPass = ({ lampId }: Pass): Lamp => setup.lamps.find(({ id }) => id === lampId) as Lamp;
const passes = scheme.frames.flatMap((frame) => frame.passes.map((pass) => ({ frame, pass })));

describe('one beam angle for all', () => {
  const report = reportScheme(setup, scheme);

  it('the plot and the reading agree, for every kind of lamp, bare and dressed (abs 1e-9 degrees)', () => {
    let told = 0;
    for (const { frame, pass } of passes) {
      const { fullDegrees, planes } = beamCurve(dressedEmitter(emitterOf(lampOfPass(pass), setup.measuredBeams), pass));
      const reading = report.frames
        .find(({ id }) => id === frame.id)
        ?.passes.find(({ passId }) => passId === pass.id)?.beam;
      expect(reading, pass.id).toBeDefined();
      const isAllRound = fullDegrees === null || fullDegrees > 170;
      expect(reading?.beamDegrees === null, pass.id).toBe(isAllRound);
      if (isAllRound || typeof reading?.beamDegrees !== 'number') continue;
      told++;
      expect(Math.abs(fullDegrees - reading.beamDegrees), pass.id).toBeLessThanOrEqual(1e-9);
      const [one, other] = planes[0] ?? [];
      if (planes.length === 1)
        expect(Math.abs((one?.halfDegrees ?? 0) + (other?.halfDegrees ?? 0) - fullDegrees)).toBeLessThanOrEqual(1e-9);
    }
    expect(told).toBeGreaterThanOrEqual(10);
  });

  it('lamps are drawn as wide, up to 150 degrees; those that shine all round at 360 (abs 1e-9 degrees)', () => {
    for (const lamp of setup.lamps) {
      const full = beamCurve(emitterOf(lamp, setup.measuredBeams)).fullDegrees ?? 360;
      const expected = full > 180.001 ? 360 : Math.min(full, 150);
      expect(Math.abs(drawnBeamDegrees(lamp, setup.measuredBeams) - expected), lamp.id).toBeLessThanOrEqual(1e-9);
    }
  });

  it('a lamp is drawn by the file that its beam has now', () => {
    const lamp = lampOf({ kind: 'torch', beam: { shape: 'measured', beamId: 'file' } });
    const fallingTo = (last: number) => measuredField([0, last], [0], (v) => 100 - (100 * v) / last);
    expect(drawnBeamDegrees(lamp, [fallingTo(20)])).toBeCloseTo(20, 6);
    expect(drawnBeamDegrees(lamp, [fallingTo(50)])).toBeCloseTo(50, 6);
  });
});

describe('beamWidthText', () => {
  const textOf = (lamp: Lamp, files: Parameters<typeof emitterOf>[1] = []) =>
    beamWidthText(beamCurve(emitterOf(lamp, files)), ['one way', 'across']);

  it('one angle where all planes are alike', () => {
    expect(textOf(lampOf({ kind: 'torch', beam: { shape: 'flood', degrees: 1 } }))).toBe('1.0°');
    const ten = lampOf({ kind: 'torch', beam: { shape: 'flood', degrees: 10 } });
    expect(textOf(ten)).toBe('10°');
    expect(textOf(lampOf({ kind: 'lantern' }))).toBe('all round');
  });

  it('else the mean, and the planes; without a mean for what shines behind itself', () => {
    const oval = measuredField([0, 40, 60], [0, 90], (v, h) => Math.max(100 - (v * 100) / (h === 0 ? 60 : 40), 0));
    const lamp = lampOf({ kind: 'torch', beam: { shape: 'measured', beamId: 'file' } });
    expect(textOf(lamp, [oval])).toBe('50° on the mean: 60° one way, 40° across');
    expect(textOf(lampOf({ kind: 'tube', lengthMm: 500 }))).toBe('120° one way, all round across');
  });
});

describe('reshapeBeam', () => {
  const narrow = measuredField([0, 0.36], [0], (v) => 100 - v * 250);
  const measured = lampOf({ kind: 'torch', beam: { shape: 'measured', beamId: 'file' } });

  it.each(['spot', 'flood', 'lobe'] as const)(
    'a file of 0.36 degrees becomes a %s that the document takes',
    (shape) => {
      const next = reshapeBeam(measured, shape, [narrow]);
      expect(lampOf({ kind: 'torch', beam: next })).toMatchObject({ beam: next });
      expect(JSON.stringify(next)).toMatch(/"(beamDegrees|degrees)":1\b/);
    },
  );

  it('spot to flood and back keeps the angle; a flood of 180 becomes the widest lobe', () => {
    const spot = lampOf({ kind: 'torch', beam: { shape: 'spot', beamDegrees: 12.5 } });
    expect(reshapeBeam(spot, 'flood', [])).toEqual({ shape: 'flood', degrees: 12.5 });
    const wide = lampOf({ kind: 'torch', beam: { shape: 'flood', degrees: 180 } });
    expect(lampOf({ kind: 'torch', beam: reshapeBeam(wide, 'lobe', []) })).toMatchObject({ beam: { degrees: 170 } });
  });
});

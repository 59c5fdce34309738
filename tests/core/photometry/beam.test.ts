import { describe, expect, it } from 'vitest';
import { type Beam, beamPeakPerLumen, exponentFromHalfPeak, intensityPerLumen } from '../../../core/photometry/beam.ts';
import { emitterPeakPerLumen } from '../../../core/photometry/emitter.ts';
import { meter } from '../../../core/trace/meter.ts';
import { emitterOf, fluxOf } from '../../../core/world/lamp-light.ts';
import { relativeError } from '../support/errors.ts';
import { stageWith, standing } from '../support/scenes.ts';
import { lampOf, measuredField } from './lamps.ts';

/** Flux of a beam of one lumen: intensity over all directions, by the midpoint rule in the cosine. */
const fluxOfBeam = (beam: Beam, steps = 400_000): number => {
  let sum = 0;
  for (let k = 0; k < steps; k++) sum += intensityPerLumen(beam, (2 * (k + 0.5)) / steps - 1);
  return (2 * Math.PI * 2 * sum) / steps;
};
const torch = (beam: object, output: object = { from: 'lumens', lumens: 300 }) =>
  lampOf({ kind: 'torch', output, beam });

// energy: whatever its shape, a beam of one lumen sends one lumen
describe('intensityPerLumen', () => {
  it.each([
    { shape: 'open' },
    { shape: 'flood', degrees: 10 },
    { shape: 'flood', degrees: 40 },
    { shape: 'flood', degrees: 180 },
    { shape: 'spot', beamDegrees: 8 },
    { shape: 'spot', beamDegrees: 25, spillDegrees: 110, spillShare: 0.5 },
    { shape: 'spot', beamDegrees: 60, spillDegrees: 180, spillShare: 1 },
    { shape: 'spot', beamDegrees: 120, spillShare: 0 },
    { shape: 'lobe', degrees: 20 },
    { shape: 'lobe', degrees: 150 },
  ])('over all directions is one lumen for %j (0.1 %)', (beam) => {
    expect(relativeError(fluxOfBeam(emitterOf(torch(beam)).beam), 1)).toBeLessThanOrEqual(1e-3);
  });

  it('sends nothing backward, and never rises away from the axis', () => {
    for (const beam of [{ shape: 'open' }, { shape: 'flood', degrees: 60 }, { shape: 'spot', beamDegrees: 12 }]) {
      const { beam: built } = emitterOf(torch(beam));
      expect(intensityPerLumen(built, -0.2)).toBe(0);
      for (let c = 1; c > 0; c -= 0.001)
        expect(intensityPerLumen(built, c)).toBeGreaterThanOrEqual(intensityPerLumen(built, c - 0.001));
    }
  });

  it('without spill the hot spot falls to half at half its beam angle (rel 1e-9)', () => {
    for (const degrees of [6, 20, 90]) {
      const half = (degrees * Math.PI) / 360;
      const beam: Beam = { exponent: exponentFromHalfPeak(half), cosSpill: 0, cosSpillEven: 0, spillShare: 0 };
      expect(
        relativeError(intensityPerLumen(beam, Math.cos(half)) / intensityPerLumen(beam, 1), 0.5),
      ).toBeLessThanOrEqual(1e-9);
    }
  });
});

/** 2500 cd in the middle; 2500 pi sin^2 60 lm in all, were it not read in straight lines. */
const cosine = measuredField([0, 15, 30, 45, 60], [0], (v) => 2500 * Math.cos((v * Math.PI) / 180));
const beams = [
  { shape: 'open' },
  { shape: 'flood', degrees: 35 },
  { shape: 'lobe', degrees: 50 },
  { shape: 'spot', beamDegrees: 7 },
  { shape: 'measured', beamId: 'file' },
];
const lamps = [
  ...beams.map((beam) => ({ kind: 'torch', beam })),
  ...beams.map((beam) => ({ kind: 'panel', widthMm: 300, heightMm: 200, beam })),
  { kind: 'point' },
  { kind: 'point', beam: { shape: 'measured', beamId: 'file' } },
  { kind: 'lantern' },
  { kind: 'tube', lengthMm: 600 },
];

describe('fluxOf', () => {
  // each way of stating the output leads to the same candela in the middle; 0.25 lx at the beam distance (ANSI/PLATO FL 1-2019)
  it.each([[{ from: 'peak-candela', candela: 2500 }], [{ from: 'beam-distance', distanceMetres: 100 }]])(
    '%j gives 2500 cd at the peak of every lamp (rel 1e-12)',
    (output) => {
      for (const fields of lamps) {
        const known = lampOf({ ...fields, output });
        const peak = fluxOf(known, [cosine]) * emitterPeakPerLumen(emitterOf(known, [cosine]));
        expect(relativeError(peak, 2500)).toBeLessThanOrEqual(1e-12);
      }
    },
  );

  it('lux at 1 m is what the meter shows one metre in front of the skin, for every lamp (rel 2e-3)', () => {
    for (const fields of lamps) {
      const known = lampOf({ ...fields, output: { from: 'lux-at-1-metre', lux: 2500 } });
      const emitter = emitterOf(known, [cosine]);
      const skin = { sphere: emitter.halfWidthMetres, tube: emitter.halfHeightMetres }[emitter.shape as string] ?? 0;
      const lamp = standing([0, 50, 0], [0, 50, -9], emitter);
      const lux = fluxOf(known, [cosine]) * meter(stageWith(), lamp, [0, 50, -1 - skin], [0, 0, 1], 20_000);
      expect(relativeError(lux, 2500)).toBeLessThanOrEqual(2e-3);
    }
  });

  it('lumens worked out from the peak give that peak again (rel 1e-12)', () => {
    for (const fields of lamps) {
      const lumens = fluxOf(lampOf({ ...fields, output: { from: 'peak-candela', candela: 2500 } }), [cosine]);
      const stated = lampOf({ ...fields, output: { from: 'lumens', lumens } });
      const peak = fluxOf(stated, [cosine]) * emitterPeakPerLumen(emitterOf(stated, [cosine]));
      expect(relativeError(peak, 2500)).toBeLessThanOrEqual(1e-12);
    }
  });

  it('an output known from the file has the peak of the file (rel 1e-12)', () => {
    const known = torch({ shape: 'measured', beamId: 'file' }, { from: 'measured' });
    const { beam } = emitterOf(known, [cosine]);
    expect(relativeError(fluxOf(known, [cosine]) * beamPeakPerLumen(beam), 2500)).toBeLessThanOrEqual(1e-12);
  });

  it('takes lumens as they are, and sizes are half of the millimetres, in metres', () => {
    expect(fluxOf(torch({ shape: 'open' }))).toBe(300);
    const panel = lampOf({ kind: 'panel', widthMm: 600, heightMm: 300 });
    expect(emitterOf(panel)).toMatchObject({ shape: 'rectangle', halfWidthMetres: 0.3, halfHeightMetres: 0.15 });
    const tube = lampOf({ kind: 'tube', lengthMm: 1200, diameterMm: 26 });
    expect(emitterOf(tube)).toMatchObject({ shape: 'tube', halfWidthMetres: 0.6, halfHeightMetres: 0.013 });
  });
});

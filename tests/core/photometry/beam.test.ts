import { describe, expect, it } from 'vitest';
import { type Beam, exponentFromHalfPeak, intensityPerLumen } from '../../../core/photometry/beam.ts';
import { lamp as lampSchema } from '../../../core/setup/schema/lamp.ts';
import { emitterOf, fluxOf, peakPerLumen } from '../../../core/world/lamp-light.ts';
import { relativeError } from '../support/errors.ts';

/** Flux of a beam of one lumen: intensity over all directions, by the midpoint rule in the cosine. */
const fluxOfBeam = (beam: Beam, steps = 400_000): number => {
  let sum = 0;
  for (let k = 0; k < steps; k++) sum += intensityPerLumen(beam, (2 * (k + 0.5)) / steps - 1);
  return (2 * Math.PI * 2 * sum) / steps;
};
const torch = (beam: object, output: object = { from: 'lumens', lumens: 300 }) =>
  lampSchema.parse({ kind: 'torch', id: 't', name: 'T', output, beam });

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

describe('fluxOf', () => {
  // each way of stating the output leads to the same candela in the middle; 0.25 lx at the beam distance (ANSI/PLATO FL 1-2019)
  it.each([
    [{ from: 'peak-candela', candela: 2500 }],
    [{ from: 'lux-at-1-metre', lux: 2500 }],
    [{ from: 'beam-distance', distanceMetres: 100 }],
  ])('%j gives 2500 cd in the middle of any beam (rel 1e-12)', (output) => {
    for (const beam of [{ shape: 'open' }, { shape: 'flood', degrees: 35 }, { shape: 'spot', beamDegrees: 7 }]) {
      const known = torch(beam, output);
      expect(relativeError(fluxOf(known) * peakPerLumen(emitterOf(known)), 2500)).toBeLessThanOrEqual(1e-12);
    }
  });
  it('takes lumens as they are, and sizes are half of the millimetres, in metres', () => {
    expect(fluxOf(torch({ shape: 'open' }))).toBe(300);
    const panel = lampSchema.parse({
      kind: 'panel',
      id: 'p',
      name: 'P',
      output: { from: 'lumens', lumens: 1 },
      widthMm: 600,
      heightMm: 300,
    });
    expect(emitterOf(panel)).toMatchObject({ shape: 'rectangle', halfWidthMetres: 0.3, halfHeightMetres: 0.15 });
  });
});

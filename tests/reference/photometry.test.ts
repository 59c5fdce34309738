import { describe, expect, it } from 'vitest';
import {
  beamDistanceFromPeak,
  coneSolidAngle,
  exponentFromHalfPeak,
  intensityPerLumen,
  lambertianBeam,
  lobePeakPerLumen,
  peakFromBeamDistance,
} from '../../core/photometry/beam.ts';
import { pointIlluminance } from '../../core/photometry/closed-forms.ts';
import { type Emitter, seenEmitter } from '../../core/photometry/emitter.ts';
import { lamp } from '../../core/setup/schema/lamp.ts';
import { radiansFromDegrees } from '../../core/units/angle.ts';
import { emitterOf, fluxOf, peakPerLumen } from '../../core/world/lamp-light.ts';
import { relativeError } from '../core/support/errors.ts';

const lumens = 1000;
const thousandLumens = { id: 'l', name: 'L', output: { from: 'lumens', lumens } };

// Rows 1.1 of the check values. Sources stand beside each check; the numbers are computed there from the named formula.
describe('point sources and lobes', () => {
  // inverse square law and Lambert's cosine law, first principles (row 1.1a)
  it.each([
    [5, 400],
    [10, 100],
    [20, 25],
    [50, 4],
  ])('1.1a: 10 000 cd at %d m square on gives %d lx (rel 1e-15)', (distanceMetres, lux) => {
    expect(relativeError(pointIlluminance(10_000, 1, distanceMetres), lux)).toBeLessThanOrEqual(1e-15);
  });

  // I h / r^3, first principles (row 1.1b)
  it('1.1b: 10 000 cd 2 m up gives 426.692 lx on the floor 3 m away (abs 5e-4 lx, its rounding)', () => {
    const r = Math.hypot(3, 2);
    expect(Math.abs(pointIlluminance(10_000, 2 / r, r) - 426.692)).toBeLessThanOrEqual(5e-4);
  });

  // Phi / 4 pi, first principles (row 1.1c)
  it('1.1c: an even lantern of 1000 lm gives 79.5775 cd (rel 1e-6)', () => {
    const lantern = emitterOf(lamp.parse({ kind: 'lantern', ...thousandLumens }));
    expect(relativeError(lumens * peakPerLumen(lantern), 79.5775)).toBeLessThanOrEqual(1e-6);
  });

  // Omega = 2 pi (1 - cos a/2), first principles (row 1.1d)
  it.each([
    [10, 0.023909, 41824.5],
    [20, 0.095456, 10476.1],
    [30, 0.214094, 4670.84],
    [40, 0.378922, 2639.06],
    [60, 0.841787, 1187.95],
    [90, 1.840302, 543.389],
    [120, Math.PI, 318.31],
  ])(
    '1.1d: an even cone of %d degrees is %d sr and gives %d cd (rel 3e-5, the table’s rounding)',
    (degrees, sr, candela) => {
      const torch = emitterOf(lamp.parse({ kind: 'torch', ...thousandLumens, beam: { shape: 'flood', degrees } }));
      const half = radiansFromDegrees(degrees / 2);
      expect(relativeError(coneSolidAngle(Math.cos(half)), sr)).toBeLessThanOrEqual(3e-5);
      for (const share of [0, 0.5, 0.99]) {
        const inside = lumens * intensityPerLumen(torch.beam, Math.cos(half * share));
        expect(relativeError(inside, candela)).toBeLessThanOrEqual(1e-5);
      }
      expect(intensityPerLumen(torch.beam, Math.cos(half * 1.01))).toBe(0);
    },
  );

  // I0 = (n + 1) Phi / 2 pi, first principles (row 1.1e)
  it.each([
    [1, 318.31],
    [2, 477.465],
    [4, 795.775],
    [10, 1750.7],
    [20, 3342.25],
    [50, 8116.9],
  ])('1.1e: a lobe cos^%d of 1000 lm peaks at %d cd (rel 1e-5)', (exponent, candela) => {
    expect(relativeError(lumens * lobePeakPerLumen(exponent), candela)).toBeLessThanOrEqual(1e-5);
  });

  // n = ln 0.5 / ln cos, first principles (row 1.1f)
  it.each([
    [5, 181.806],
    [10, 45.2776],
    [15, 19.9937],
    [30, 4.8188],
    [45, 2],
    [60, 1],
  ])('1.1f: half peak at %d degrees needs the exponent %d (rel 1e-5)', (degrees, exponent) => {
    expect(relativeError(exponentFromHalfPeak(radiansFromDegrees(degrees)), exponent)).toBeLessThanOrEqual(1e-5);
  });

  // I0 = Phi / pi and L = Phi / (pi A) of a Lambertian panel, first principles (row 1.1g; the luminance is that of 1.2k)
  it('1.1g, 1.2k: a panel 0.6 x 0.6 m of 1000 lm gives 318.310 cd and shows 884.194 cd/m2 from anywhere (rel 1e-6)', () => {
    const panel: Emitter = { shape: 'rectangle', halfWidthMetres: 0.3, halfHeightMetres: 0.3, beam: lambertianBeam };
    expect(relativeError(lumens * peakPerLumen(panel), 318.31)).toBeLessThanOrEqual(2e-6);
    const pose = { position: [0, 0, 0], axis: [0, 0, 1] } as const;
    for (const eye of [
      [0, 0, 3],
      [2, 0, 3],
      [5, 1, 0.7],
    ] as const) {
      const r = Math.hypot(...eye);
      const seen = seenEmitter(panel, pose, eye, [-eye[0] / r, -eye[1] / r, -eye[2] / r]);
      expect(relativeError(lumens * (seen?.luminancePerLumen ?? 0), 884.194)).toBeLessThanOrEqual(1e-6);
    }
  });

  // Phi' = pi^2 I_l of a Lambertian cylinder, first principles (row 1.1h)
  it('1.1h: a tube sends 9.8696 lm for each candela square to it (rel 1e-5)', () => {
    const tube = emitterOf(lamp.parse({ kind: 'tube', ...thousandLumens, lengthMm: 1000 }));
    expect(relativeError(1 / peakPerLumen(tube), 9.8696)).toBeLessThanOrEqual(1e-5);
  });

  // ANSI/PLATO FL 1-2019: the distance where the beam still gives 0.25 lx; printed distances are rounded (row 1.1i)
  it.each([
    [100, 20],
    [1000, 63.25],
    [10_000, 200],
    [50_000, 447.2],
    [100_000, 632.5],
  ])('1.1i: %d cd have a beam distance of %d m (abs 0.05 m, the table’s rounding)', (candela, metres) => {
    expect(Math.abs(beamDistanceFromPeak(candela) - metres)).toBeLessThanOrEqual(0.05);
    expect(relativeError(peakFromBeamDistance(beamDistanceFromPeak(candela)), candela)).toBeLessThanOrEqual(1e-12);
  });

  it('1.1i: a torch known by its beam distance of 200 m has 10 000 cd in its middle, whatever its beam (rel 1e-12)', () => {
    const output = { from: 'beam-distance', distanceMetres: 200 };
    for (const beam of [{ shape: 'open' }, { shape: 'flood', degrees: 20 }, { shape: 'spot', beamDegrees: 8 }]) {
      const torch = lamp.parse({ kind: 'torch', id: 'l', name: 'L', output, beam });
      expect(relativeError(fluxOf(torch) * peakPerLumen(emitterOf(torch)), 10_000)).toBeLessThanOrEqual(1e-12);
    }
  });
});

import { describe, expect, it } from 'vitest';
import { beamReading } from '../../../core/readings/beam-reading.ts';
import { emitterOf } from '../../../core/world/lamp-light.ts';
import { lampOf } from '../photometry/lamps.ts';
import { relativeError } from '../support/errors.ts';
import { onlyPassOf, readPass } from '../support/read-pass.ts';
import { onePassSetup } from '../support/scenes.ts';

const waypoints = [{ position: [3, 4, 1], aim: [0, 8, 1] }];
/** Reading of a pass over bare ground; the lamp has 300 lm unless said otherwise. */
const read = (lamp: object, pass: object = {}) =>
  readPass(
    onePassSetup({
      camera: { position: [0, 0, 1.5], aim: [0, 8, 0] },
      lamp: { output: { from: 'lumens', lumens: 300 }, ...lamp },
      pass: { waypoints, ...pass },
    }),
  ).beam;
const lobe = { beam: { shape: 'lobe', degrees: 30 } };
const setup = onePassSetup({ camera: { position: [0, 0, 1.5], aim: [0, 8, 0] }, lamp: lobe, pass: { waypoints } });
const gel = (transmission: number) => ({ name: 'Gel', transmission });

describe('beamReading', () => {
  it('a bare lamp sends its lumens, its peak is that of its beam: (n + 1) / 2 pi (rel 1e-9)', () => {
    const { lumens, peakCandela } = read(lobe);
    const exponent = Math.log(0.5) / Math.log(Math.cos((15 * Math.PI) / 180));
    expect(relativeError(lumens, 300)).toBeLessThanOrEqual(1e-9);
    expect(relativeError(peakCandela, (300 * (exponent + 1)) / (2 * Math.PI))).toBeLessThanOrEqual(1e-9);
  });

  it.each([
    ['level', { levelPercent: 25 }, 0.25],
    ['cloth of two stops', { cloth: { stops: 2 } }, 0.25],
    ['one gel', { gels: [gel(0.5)] }, 0.5],
    ['two gels', { gels: [gel(0.5), gel(0.4)] }, 0.2],
    ['a gel that shifts the colour', { gels: [{ ...gel(0.8), shiftMired: 100 }] }, 0.8],
    ['all of them', { levelPercent: 50, cloth: { stops: 1 }, gels: [gel(0.5), gel(0.4)] }, 0.05],
  ])('%s: lumens and peak are multiplied, the beam is as wide (rel 1e-9)', (_, pass, factor) => {
    const [bare, dressed] = [read(lobe), read(lobe, pass)];
    expect(relativeError(dressed.lumens / bare.lumens, factor)).toBeLessThanOrEqual(1e-9);
    expect(relativeError(dressed.peakCandela / bare.peakCandela, factor)).toBeLessThanOrEqual(1e-9);
    expect(dressed.beamDegrees).toBe(bare.beamDegrees);
  });

  it('a snoot stops what is outside its cone and leaves the peak: an even cone by solid angles (rel 1e-9)', () => {
    const flood = { beam: { shape: 'flood', degrees: 80 } };
    const [bare, snooted] = [read(flood), read(flood, { snootDegrees: 40 })];
    const cone = (degrees: number) => 1 - Math.cos((degrees * Math.PI) / 360);
    expect(relativeError(snooted.lumens, (300 * cone(40)) / cone(80))).toBeLessThanOrEqual(1e-9);
    expect(relativeError(snooted.peakCandela, bare.peakCandela)).toBeLessThanOrEqual(1e-9);
    expect(Math.abs((snooted.beamDegrees as number) - 40)).toBeLessThanOrEqual(0.5);
  });

  it('cloth that spreads all makes the beam Lambertian: a peak of flux / pi, 120 degrees wide (abs 0.02)', () => {
    const spread = read(lobe, { cloth: { stops: 1, spreadShare: 1 } });
    expect(relativeError(spread.peakCandela, 150 / Math.PI)).toBeLessThanOrEqual(1e-9);
    expect(Math.abs((spread.beamDegrees as number) - 120)).toBeLessThanOrEqual(0.02);
  });

  it('the patch is as wide as the beam at the target: 2 d tan (a / 2) (rel 1e-9); twice as far, twice as wide', () => {
    const { light } = onlyPassOf(setup);
    const [near, far] = [beamReading(light, 5), beamReading(light, 10)];
    const half = ((near.beamDegrees as number) * Math.PI) / 360;
    expect(relativeError(near.patchMetres as number, 10 * Math.tan(half))).toBeLessThanOrEqual(1e-9);
    expect(relativeError((far.patchMetres as number) / (near.patchMetres as number), 2)).toBeLessThanOrEqual(1e-9);
    // the pass's own reading takes the distance to the aim: 3-4-5 triangle
    expect(readPass(setup).beam.patchMetres).toBeCloseTo(near.patchMetres as number, 9);
  });

  it('a lamp that shines all round has no angle and no patch', () => {
    const { light } = onlyPassOf(setup);
    if (light.source.kind !== 'lamp') throw new Error('no lamp');
    const allRound = { ...light, source: { ...light.source, emitter: emitterOf(lampOf({ kind: 'point' })) } };
    expect(beamReading(allRound, 5)).toMatchObject({ beamDegrees: null, patchMetres: null });
  });

  it('only lamps have a beam', () => {
    const sky = onlyPassOf(setup).worldFrame.lights.find(({ id }) => id === 'sky');
    if (!sky) throw new Error('no sky');
    expect(() => beamReading(sky, 5)).toThrow('only lamps have a beam');
  });
});

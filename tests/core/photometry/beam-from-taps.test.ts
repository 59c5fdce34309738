import { describe, expect, it } from 'vitest';
import {
  evenShareOfSpill,
  exponentFromHalfPeak,
  intensityPerLumen,
  type LobeBeam,
} from '../../../core/photometry/beam.ts';
import { beamFromTaps, edgeTapShare } from '../../../core/photometry/beam-from-taps.ts';

const degrees = (d: number) => (d * Math.PI) / 180;

/** Brightness of a wall at a radius, over the centre: I cos^3 (inverse square and cosine), written out here anew. */
const wall = (beam: LobeBeam, distance: number, radius: number): number => {
  const ray = Math.hypot(distance, radius);
  const lux = (intensityPerLumen(beam, distance / ray) / ray ** 2) * (distance / ray);
  return lux / (intensityPerLumen(beam, 1) / distance ** 2);
};

/** Where the wall has fallen to half, found by walking outward. */
const halfRadius = (beam: LobeBeam, distance: number): number => {
  for (let r = 0; ; r += distance / 100_000) if (wall(beam, distance, r) <= 0.5) return r;
};

const spotBeam = (beamDegrees: number, spillDegrees: number, spillShare: number): LobeBeam => ({
  exponent: exponentFromHalfPeak(degrees(beamDegrees / 2)),
  cosSpill: Math.cos(degrees(spillDegrees / 2)),
  cosSpillEven: Math.cos(degrees(spillDegrees / 2) * evenShareOfSpill),
  spillShare,
});

describe('beamFromTaps', () => {
  it.each([
    [8, 70, 0.3, 4],
    [20, 90, 0.35, 2.5],
    [40, 110, 0.35, 3],
    [12, 60, 0.6, 5],
  ])(
    'hot spot %f°, spill %f° with %f of the light, wall at %f m: found again (0.5 %)',
    (hot, spill, share, distance) => {
      const beam = spotBeam(hot, spill, share);
      const edge = distance * Math.tan(degrees(spill / 2));
      const inside = distance * Math.tan(degrees(spill / 2) * evenShareOfSpill * edgeTapShare);
      const found = beamFromTaps({
        distanceMetres: distance,
        halfRadiusMetres: halfRadius(beam, distance),
        edgeRadiusMetres: edge,
        edgeToCentre: wall(beam, distance, inside),
        centreLux: 50,
      });
      if ('refused' in found) throw new Error(found.refused);
      expect(found.shape).toBe('spot');
      expect(Math.abs(found.beamRadians / degrees(hot) - 1)).toBeLessThan(0.005);
      expect(Math.abs(found.spillRadians / degrees(spill) - 1)).toBeLessThan(1e-9);
      expect(Math.abs(found.spillShare / share - 1)).toBeLessThan(0.005);
      // inverse square: candela = lux x d^2
      expect(found.peakCandela).toBeCloseTo(50 * distance ** 2, 9);
    },
  );

  it.each([5, 20, 45, 60])('a lobe of %f° without spill is found again (0.5 %)', (hot) => {
    const beam: LobeBeam = {
      exponent: exponentFromHalfPeak(degrees(hot / 2)),
      cosSpill: 0,
      cosSpillEven: 0,
      spillShare: 0,
    };
    const taps = { distanceMetres: 3, halfRadiusMetres: halfRadius(beam, 3), edgeRadiusMetres: null };
    const found = beamFromTaps({ ...taps, edgeToCentre: null, centreLux: null });
    expect(found).toMatchObject({ shape: 'lobe', peakCandela: null });
    if ('refused' in found) throw new Error(found.refused);
    expect(Math.abs(found.beamRadians / degrees(hot) - 1)).toBeLessThan(0.005);
  });

  it('a flat panel (cos) has fallen to half on the wall where cos^4 = 1/2, and is a lobe of 120° (0.01°)', () => {
    const radius = 2 * Math.tan(Math.acos(0.5 ** 0.25));
    const found = beamFromTaps({
      distanceMetres: 2,
      halfRadiusMetres: radius,
      edgeRadiusMetres: null,
      edgeToCentre: null,
      centreLux: null,
    });
    if ('refused' in found) throw new Error(found.refused);
    expect(Math.abs(found.beamRadians - degrees(120))).toBeLessThan(degrees(0.01));
  });

  it('without a brightness of the edge the spill is taken to have the usual 30 %, and the wall is half where it was tapped', () => {
    const taps = { distanceMetres: 4, halfRadiusMetres: 0.5, edgeRadiusMetres: 3, edgeToCentre: null, centreLux: null };
    const found = beamFromTaps(taps);
    if ('refused' in found) throw new Error(found.refused);
    expect(found.spillShare).toBeCloseTo(0.3, 6);
    const beam = spotBeam((found.beamRadians * 180) / Math.PI, (found.spillRadians * 180) / Math.PI, found.spillShare);
    expect(wall(beam, 4, 0.5)).toBeCloseTo(0.5, 6);
  });

  it.each([
    ['a bare bulb', { halfRadiusMetres: 3.2 }, /no beam to speak of/],
    ['an edge inside half', { edgeRadiusMetres: 0.4 }, /farther out/],
    ['an edge that is too dark', { edgeRadiusMetres: 0.8, edgeToCentre: 0 }, /darker than the hot spot/],
    ['an edge as bright as the centre', { edgeToCentre: 0.95 }, /too bright/],
  ])('%s is refused in words', (_, part, words) => {
    const good = { distanceMetres: 4, halfRadiusMetres: 0.5, edgeRadiusMetres: 3, edgeToCentre: 0.1, centreLux: null };
    const found = beamFromTaps({ ...good, ...part });
    expect('refused' in found && found.refused).toMatch(words);
  });
});

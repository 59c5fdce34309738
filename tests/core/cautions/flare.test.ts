import { describe, expect, it } from 'vitest';
import { doseForMidGrey } from '../../../core/camera/exposure.ts';
import { blackGround, boxAt, cautionsFor, find, still } from '../support/cautions.ts';
import type { OnePass } from '../support/scenes.ts';

const eye = [0, -6, 1.5] as const;
const edgeDegrees = (Math.atan(18 / 24) * 180) / Math.PI;

/**
 * Where a lamp 5 m from the lens stands, so far outside the right edge, and the candela that lay a veil of so many stops:
 * 2 % of an even field's luminance (veiling glare index of ISO 9358; the usual size from memory), lux over pi.
 */
const lampAt = (outsideDegrees: number, veilStops: number): OnePass => {
  const angle = ((edgeDegrees + outsideDegrees) * Math.PI) / 180;
  const place = [eye[0] + 5 * Math.sin(angle), eye[1] + 5 * Math.cos(angle), 1.5];
  // a white matt surface sends lux / pi: the veil is that of a reflectance of 0.02
  const lux = doseForMidGrey({ fNumber: 8, iso: 400 }, 0.02) * 2 ** veilStops;
  return {
    camera: { position: eye, aim: [0, 0, 1.5] },
    ground: blackGround,
    lamp: { diameterMm: 2, output: { from: 'peak-candela', candela: (lux * 25) / Math.cos(angle) } },
    pass: still(place, eye),
  };
};

describe('flare', () => {
  it.each([
    [-5.02, false],
    [-4.98, true],
    [0, true],
  ])('a veil %d stops from mid-grey: %s', (stops, told) => {
    const caution = find(lampAt(5, stops), 'flare');
    expect(caution !== undefined).toBe(told);
    if (caution) {
      expect(caution).toMatchObject({ severity: 'note', passId: 'pass', limit: -5 });
      expect(caution.value).toBeCloseTo(stops, 3);
      expect(caution.message).toContain('5° outside the picture');
    }
  });
  it.each([
    [14.9, true],
    [15.1, false],
    [0.1, true],
  ])('%d degrees outside the picture: %s', (outside, told) => {
    expect(find(lampAt(outside, 0), 'flare') !== undefined).toBe(told);
  });
  it('in the picture it is the bare lamp that is told, not flare', () => {
    const codes = cautionsFor(lampAt(-1, 0)).map(({ code }) => code);
    expect(codes).toContain('lamp-in-frame');
    expect(codes).not.toContain('flare');
  });
  it('goes when the lamp is turned away, or something shades the lens', () => {
    const what = lampAt(5, 0);
    const [{ position }] = (what.pass as { waypoints: [{ position: number[] }] }).waypoints;
    expect(
      find(
        { ...what, lamp: { ...what.lamp, beam: { shape: 'flood', degrees: 60 } }, pass: still(position, [0, 20, 1.5]) },
        'flare',
      ),
    ).toBeUndefined();
    const half = position.map((v, i) => (v + (eye[i] as number)) / 2) as [number, number, number];
    expect(find({ ...what, subjects: [boxAt('post', [half[0], half[1], 0], [0.2, 0.2, 2])] }, 'flare')).toBeUndefined();
  });
});

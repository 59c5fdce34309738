import { describe, expect, it } from 'vitest';
import { cameraView, openLens } from '../../core/camera/camera-view.ts';
import { blurDiameterMm } from '../../core/camera/depth-of-field.ts';
import { traceLayers } from '../../core/trace/layer.ts';
import { stageWith, subjectOf } from '../core/support/scenes.ts';
import { accuracySection } from './support/accuracy.ts';

const { check } = accuracySection('Depth of field');

const [focalLengthMm, fNumber] = [50, 2 ** (7 / 6)];
const widthMm = 2;

/** A dark wall whose edge stands in the middle of the picture, before an even sky; a narrow sensor looks closely at it. */
const edgeProfile = (wallMetres: number, focusMetres: number): number[] => {
  const wall = subjectOf('wall', [{ kind: 'box', widthMetres: 40, depthMetres: 0.01, heightMetres: 40 }], {
    position: [20, wallMetres + 0.005, 0],
    finish: { reflectance: 0 },
  });
  const pinhole = cameraView({
    position: [0, 20, 0],
    aim: [0, 20, -10],
    rollRadians: 0,
    sensorWidthMm: widthMm,
    sensorHeightMm: widthMm / 50,
    focalLengthMm,
  });
  const view = openLens(pinhole, focalLengthMm, fNumber, focusMetres);
  const size = { width: 400, height: 1, samples: 512 };
  const [layer = new Float64Array()] = traceLayers(stageWith(wall), view, [{ kind: 'sky' }], size);
  return Array.from({ length: size.width }, (_, x) => (layer[x * 3] as number) * Math.PI);
};

/**
 * Radius of the disc that blurred an edge in the middle of a profile, mm on the sensor. The area between the profile and
 * the sharp edge is the mean distance of the disc's points from its diameter: 4 r / 3 pi.
 */
const blurRadiusMm = (profile: readonly number[]): number => {
  const off = profile.reduce((sum, value, x) => sum + Math.abs(value - (x < profile.length / 2 ? 1 : 0)), 0);
  return ((off * widthMm) / profile.length) * ((3 * Math.PI) / 4);
};

describe('blur through the open lens', () => {
  // thin lens, similar triangles: f^2/N |d - s| / (d (s - f)); our framing keeps the scale of infinity, hence 1 - f/s
  it.each([
    [11, 5, 'a wall 6 m behind a subject at 5 m'],
    [20, 4, 'a wall at 20 m, focus at 4 m'],
    [2.5, 5, 'a post at 2.5 m, focus at 5 m'],
  ])('50 mm f/2.2: wall at %d m, focus at %d m: %s is as soft as the thin lens says (1.5 %)', (wall, focus, claim) => {
    const blur = blurDiameterMm(focalLengthMm, fNumber, focus * 1000, wall * 1000);
    check({
      id: 'traced',
      claim: `blur disc of ${claim}, 50 mm f/2.2, traced`,
      source: 'thin lens, similar triangles; scale of the framing at infinity',
      unit: 'mm',
      expected: blur * (1 - focalLengthMm / (focus * 1000)),
      ours: 2 * blurRadiusMm(edgeProfile(wall, focus)),
      tolerance: { relative: 0.015 },
    });
  });

  it('a wall 6 m behind a subject is visibly soft: its edge takes several pixels of a 960-pixel picture; in focus it does not', () => {
    const pixelMm = 36 / 960;
    expect(2 * blurRadiusMm(edgeProfile(11, 5))).toBeGreaterThan(3 * pixelMm);
    expect(2 * blurRadiusMm(edgeProfile(5, 5))).toBeLessThan(0.2 * pixelMm);
  });
});

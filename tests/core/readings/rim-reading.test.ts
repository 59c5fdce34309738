import { describe, expect, it } from 'vitest';
import { cameraView } from '../../../core/camera/camera-view.ts';
import type { Vec3 } from '../../../core/geometry/vec.ts';
import { rimReading } from '../../../core/readings/rim-reading.ts';
import { silhouetteOf } from '../../../core/readings/silhouette.ts';
import { discEmitter, halfSpaceBeam, stageWith, standing, subjectOf } from '../support/scenes.ts';

const [radius, away] = [0.5, 10];
const centre: Vec3 = [0, 4, 0];
const ball = subjectOf('ball', [{ kind: 'sphere', position: [0, 0, 3.5], radiusMetres: radius, sides: 64 }]);
const stage = stageWith(ball);
const view = cameraView({
  position: [0, 4, away],
  aim: centre,
  rollRadians: 0,
  sensorWidthMm: 36,
  sensorHeightMm: 24,
  focalLengthMm: 100,
});
const silhouette = silhouetteOf(stage, view, 0);

/** A far lamp seen from the ball at an angle off the camera's axis, turned round that axis by another. */
const far = (offAxisDegrees: number, roundDegrees: number): Vec3 => {
  const [a, b] = [offAxisDegrees, roundDegrees].map((v) => (v * Math.PI) / 180) as [number, number];
  const [side, metres] = [Math.sin(a), 500];
  return [centre[0] + metres * side * Math.cos(b), centre[1] + metres * side * Math.sin(b), metres * Math.cos(a)];
};
const litShare = (lamp: Vec3) =>
  rimReading(stage, silhouette, standing(lamp, centre, discEmitter(0, halfSpaceBeam))).litShare as number;

/**
 * Share of a ball's outline that a far lamp lights. The camera at D sees the outline as a circle turned toward it by
 * alpha, sin alpha = R / D. With the lamp at theta off the axis a place at phi round the circle is lit where
 * cos theta sin alpha + sin theta cos alpha cos phi > 0. First principles.
 */
const expectedShare = (offAxisDegrees: number): number => {
  const theta = (offAxisDegrees * Math.PI) / 180;
  const alpha = Math.asin(radius / away);
  const cosPhi = -Math.tan(alpha) / Math.tan(theta);
  return Math.acos(Math.min(Math.max(cosPhi, -1), 1)) / Math.PI;
};

describe('rimReading of a ball', () => {
  it.each([
    [90, 0],
    [90, 180],
    [90, 90],
    [60, 0],
    [120, 180],
    [135, 45],
    [150, 90],
    [165, 20],
  ])('far lamp %d degrees off the axis, at %d round it: about half of the outline (abs 0.06)', (offAxis, round) => {
    const share = litShare(far(offAxis, round));
    expect(Math.abs(share - expectedShare(offAxis))).toBeLessThanOrEqual(0.06);
    expect(Math.abs(share - 0.5)).toBeLessThanOrEqual(0.12);
  });

  it('a lamp beside the camera lights all of it, one dead behind none: the ball hides it from its own outline', () => {
    expect(expectedShare(1)).toBe(1);
    expect(litShare(far(1, 0))).toBe(1);
    expect(expectedShare(179)).toBe(0);
    expect(litShare(far(179, 0))).toBe(0);
  });

  it('shines brighter than the face from three quarters behind, darker from beside the camera', () => {
    const at = (offAxis: number) =>
      rimReading(stage, silhouette, standing(far(offAxis, 0), centre, discEmitter(0, halfSpaceBeam)))
        .rimToFaceStops as number;
    expect(at(135)).toBeGreaterThan(1);
    expect(at(5)).toBeLessThan(-1);
  });

  it('says what share of the outline is lit, and no ratio, where no face is seen', () => {
    const source = standing(far(90, 0), centre, discEmitter(0, halfSpaceBeam));
    const { litShare } = rimReading(stage, silhouette, source);
    expect(rimReading(stage, silhouette, source, [])).toEqual({ litShare, rimToFaceStops: null });
    expect(litShare).toBeGreaterThan(0.3);
  });

  it('is null for a subject that the camera does not see', () => {
    const behind = cameraView({
      ...view,
      aim: [0, 4, 20],
      rollRadians: 0,
      sensorWidthMm: 36,
      sensorHeightMm: 24,
      focalLengthMm: 24,
    });
    const reading = rimReading(stage, silhouetteOf(stage, behind, 0), standing(far(90, 0), centre, discEmitter(0)));
    expect(reading).toEqual({ litShare: null, rimToFaceStops: null });
  });
});

import { describe, expect, it } from 'vitest';
import { type CameraView, cameraView } from '../../core/camera/camera-view.ts';
import type { Vec3 } from '../../core/geometry/vec.ts';
import { rimReading } from '../../core/readings/rim-reading.ts';
import { type Silhouette, silhouetteOf } from '../../core/readings/silhouette.ts';
import type { Stage } from '../../core/world/stage.ts';
import { discEmitter, stageWith, standing, subjectOf } from '../core/support/scenes.ts';
import { accuracySection } from './support/accuracy.ts';

const { check } = accuracySection('Rim');
/**
 * The outline of a ball of radius R as seen from D is a circle that leans toward the camera by alpha, sin alpha = R / D.
 * Light from infinity, t off straight behind, lights it where sin t cos phi > cos t tan alpha, phi round the circle. So
 * exactly behind none of it is lit, for any D; off the axis acos(tan alpha / tan t) / pi of it is, which is 1/2 for all t
 * well over alpha, and for any t at all for a camera at infinity. The sides of an upright post lean by the same alpha: one
 * of them is lit, and none while t is under it.
 */
const source = 'first principles, closed form';
const radians = (degrees: number) => (degrees * Math.PI) / 180;

const up = 300;
const viewFrom = (away: number): CameraView =>
  cameraView({
    position: [0, up, away],
    aim: [0, up, 0],
    rollRadians: 0,
    sensorWidthMm: 36,
    sensorHeightMm: 24,
    // the subject fills a good part of the picture
    focalLengthMm: 12 * away,
  });

/** A point lamp 20 km off, t degrees off straight behind, turned round the camera's axis. */
const behind = (offDegrees: number, roundDegrees = 0) => {
  const [t, round] = [radians(offDegrees), radians(roundDegrees)];
  const far = 20_000;
  const position: Vec3 = [
    far * Math.sin(t) * Math.cos(round),
    up + far * Math.sin(t) * Math.sin(round),
    -far * Math.cos(t),
  ];
  return standing(position, [0, up, 0], discEmitter(0));
};

interface Seen {
  readonly stage: Stage;
  readonly outline: Silhouette;
}
const litShare = ({ stage, outline }: Seen, offDegrees: number, roundDegrees = 0): number =>
  rimReading(stage, outline, behind(offDegrees, roundDegrees)).litShare ?? Number.NaN;

const radius = 0.5;
const ballStage = stageWith(
  subjectOf('ball', [{ kind: 'sphere', position: [0, 0, up - radius], radiusMetres: radius, sides: 128 }]),
);
const ballFrom = (away: number): Seen => ({
  stage: ballStage,
  outline: silhouetteOf(ballStage, viewFrom(away), 0),
});
const farBall = ballFrom(200);
const nearBall = ballFrom(2);

const postStage = stageWith(
  subjectOf('post', [
    { kind: 'cylinder', position: [0, 0, up - 2], radiusMetres: radius, heightMetres: 4, sides: 128 },
  ]),
);
/** The sides of an upright post, without its ends. */
const postSidesFrom = (away: number): Seen => {
  const { edge, ...more } = silhouetteOf(postStage, viewFrom(away), 0);
  const sides = edge.filter(({ position }) => Math.abs(position[1] - up) < 1.8);
  return { stage: postStage, outline: { edge: sides, ...more } };
};

const leanOf = (away: number) => Math.asin(radius / away);
const closedForm = (offDegrees: number, away: number): number => {
  const cosPhi = Math.tan(leanOf(away)) / Math.tan(radians(offDegrees));
  return Math.acos(Math.min(Math.max(cosPhi, -1), 1)) / Math.PI;
};

const row = { id: 'rim', source, unit: '' };
/**
 * Outline points lie up to a hundredth of a ray's step inside the outline, where the ball leans a degree more toward the
 * camera, and light counts from a hundredth of its best, half a degree over grazing: both darken what is hardly lit.
 */
const tolerance = { absolute: 0.05 };

describe('outline of a ball 1 m across, light from infinity behind it', () => {
  it.each([15, 30, 45, 60, 75, 90])(
    'seen from 200 m, %d degrees off: half of it, however it is turned (abs 0.05)',
    (t) => {
      expect(Math.abs(closedForm(t, 200) - 0.5)).toBeLessThan(0.004);
      for (const round of [0, 30, 90])
        check({
          ...row,
          claim: `ball seen from 200 m, light ${t}° off straight behind, turned ${round}°: lit share of the outline`,
          expected: 0.5,
          ours: litShare(farBall, t, round),
          tolerance,
        });
    },
  );

  it.each([20, 30, 45, 60, 90, 120, 150])(
    'seen from 2 m, %d degrees off: as the leaning circle has it (abs 0.05)',
    (t) => {
      check({
        ...row,
        claim: `ball seen from 2 m, light ${t}° off straight behind: lit share of the outline`,
        expected: closedForm(t, 2),
        ours: litShare(nearBall, t),
        tolerance,
      });
    },
  );

  it.each([
    ['200 m', farBall, 0],
    ['2 m', nearBall, 0],
    ['2 m', nearBall, 10],
  ] as const)(
    'seen from %s: none of it while the light is nearer to straight behind than the outline leans (exact)',
    (from, seen, t) => {
      check({
        ...row,
        claim: `ball seen from ${from}, light ${t}° off straight behind: lit share of the outline`,
        expected: 0,
        ours: litShare(seen, t),
        tolerance: { absolute: 0 },
      });
    },
  );

  it('seen from 2 m, light from straight in front: all of it (exact)', () => {
    check({
      ...row,
      claim: 'ball seen from 2 m, light straight from the front: lit share of the outline',
      expected: 1,
      ours: litShare(nearBall, 180),
      tolerance: { absolute: 0 },
    });
  });
});

describe('outline of an upright post’s sides, level light from infinity behind it', () => {
  it.each([
    [20, 0, 0],
    [20, 5, 0.5],
    [20, 45, 0.5],
    [20, 90, 0.5],
    [2, 0, 0],
    [2, 10, 0],
    [2, 20, 0.5],
    [2, 45, 0.5],
    [2, 90, 0.5],
    [2, 150, 0.5],
    [2, 180, 1],
  ])('seen from %d m, %d degrees off: one side or none, %d (exact)', (away, t, expected) => {
    check({
      ...row,
      claim: `post 1 m across seen from ${away} m, light ${t}° off straight behind: lit share of its sides`,
      expected,
      ours: litShare(postSidesFrom(away), t),
      tolerance: { absolute: 0 },
    });
  });
});

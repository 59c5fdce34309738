import { describe, expect, it } from 'vitest';
import { type CameraView, cameraView } from '../../../core/camera/camera-view.ts';
import type { Vec3 } from '../../../core/geometry/vec.ts';
import { shadowOutline, shadowReachMetres, shadowReading } from '../../../core/readings/shadow-reading.ts';
import { stageWith, subjectOf } from '../support/scenes.ts';

const lens = { rollRadians: 0, sensorWidthMm: 36, sensorHeightMm: 24, focalLengthMm: 24 };
const view = (position: Vec3, aim: Vec3): CameraView => cameraView({ position, aim, ...lens });
const fromSouth = view([0, 1.6, 8], [0, 0.5, -5]);

const height = 1.5;
/** A post 5 m north of the origin whose rim has corners due north, east, south and west. */
const stage = stageWith(
  subjectOf('post', [{ kind: 'cylinder', position: [0, 5, 0], radiusMetres: 0.1, heightMetres: height, sides: 32 }]),
);
const post = stage.subjects[0] as (typeof stage.subjects)[number];
const read = (lamp: Vec3, camera = fromSouth) => shadowReading(stage, camera, post, lamp);

describe('shadowReading', () => {
  // similar triangles (checkvalues.md 8a, 8i)
  it.each([
    [height + 0.01, false],
    [height, true],
    [height - 0.01, true],
    [0.1, true],
  ])('a lamp at %d m over ground, post 1.5 m: endless is %s', (lampHeight, endless) => {
    const reading = read([0, lampHeight, 0]);
    expect(reading.endless).toBe(endless);
    expect(reading.lengthMetres === null).toBe(endless);
    expect(reading.tip === null).toBe(endless);
  });

  it.each([
    ['south', [0, 3, 0], 0],
    ['west', [-4, 3, -5], 90],
    ['north', [0, 3, -9], 180],
    ['east', [4, 3, -5], 270],
    ['south, low', [0, 0.5, 0], 0],
    ['east, low', [4, 0.5, -5], 270],
  ] as const)('a lamp in the %s throws the shadow the other way (bearing abs 1e-6 degrees)', (_, lamp, bearing) => {
    const apart = Math.abs(read(lamp as Vec3).bearingDegrees - bearing);
    expect(Math.min(apart, 360 - apart)).toBeLessThanOrEqual(1e-6);
  });

  it('of a wide wall points straight away too, and does not jump where it becomes endless (abs 1e-6 degrees)', () => {
    const wall = stageWith(
      subjectOf('wall', [{ kind: 'box', position: [0, 5, 0], widthMetres: 4, depthMetres: 0.4, heightMetres: 1.5 }]),
    );
    for (const lampHeight of [0.3, 1.49, 1.51, 3]) {
      const { bearingDegrees } = shadowReading(wall, fromSouth, wall.subjects[0] as typeof post, [0, lampHeight, 0]);
      expect(Math.min(bearingDegrees, 360 - bearingDegrees)).toBeLessThanOrEqual(1e-6);
    }
  });

  it('names the tip as [east, north], on the ground beyond the post (abs 1e-9 m)', () => {
    const { tip, lengthMetres } = read([-4, 3, -5]);
    // corner 4.1 m from under the lamp: (1.5 x 4.1) / (3 - 1.5)
    expect(lengthMetres).toBeCloseTo(4.1, 9);
    expect((tip as readonly number[])[0]).toBeCloseTo(4.2, 9);
    expect((tip as readonly number[])[1]).toBeCloseTo(5, 9);
  });

  it('is in the frame whole (share 1), not at all (share 0), or in part (abs 0.06)', () => {
    const lamp: Vec3 = [0, 3, 0];
    expect(read(lamp, view([0, 30, -7], [0, 0, -7.01])).inFrameShare).toBe(1);
    expect(read(lamp, view([0, 1.6, 8], [0, 1.6, 20])).inFrameShare).toBe(0);
    // looking straight down with the frame's edge across the middle of the shadow: post 4.9 to tip 10.2, edge at 7.5
    const half = 4;
    const down = view([0, half / (12 / 24), -(7.5 - half)], [0, 0, -(7.5 - half)]);
    const share = read(lamp, down).inFrameShare as number;
    // its width grows with the way from under the lamp, so areas go as the squares: 7.5^2 - 4.9^2 over 10.2^2 - 4.9^2
    expect(Math.abs(share - (7.5 ** 2 - 4.9 ** 2) / (10.2 ** 2 - 4.9 ** 2))).toBeLessThanOrEqual(0.06);
  });

  it('has no shadow on the ground to speak of (null) when the subject floats over the lamp’s head', () => {
    const cloud = stageWith(
      subjectOf('cloud', [{ kind: 'box', position: [0, 5, 4], widthMetres: 1, depthMetres: 1, heightMetres: 1 }]),
    );
    const reading = shadowReading(cloud, fromSouth, cloud.subjects[0] as typeof post, [0, 1, 0]);
    expect(reading.endless).toBe(true);
    expect(reading.inFrameShare).toBeNull();
  });
});

describe('shadowOutline', () => {
  it('is cut off at the reach from the lamp (abs 1e-9 m)', () => {
    const lamp: Vec3 = [0, 1, 0];
    const away = shadowOutline(post.points, lamp).map(([east, north]) => Math.hypot(east - lamp[0], north + lamp[2]));
    expect(Math.abs(Math.max(...away) - shadowReachMetres)).toBeLessThanOrEqual(1e-9);
  });

  it('holds foot and tip of a shadow that ends', () => {
    const norths = shadowOutline(post.points, [0, 3, 0]).map(([, north]) => north);
    expect(Math.min(...norths)).toBeCloseTo(4.9, 9);
    // top's far corner 5.1 m out, lamp twice as high: 10.2 m
    expect(Math.max(...norths)).toBeCloseTo(10.2, 9);
  });
});

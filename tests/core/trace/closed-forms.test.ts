import { describe, expect, it } from 'vitest';
import { cameraView } from '../../../core/camera/camera-view.ts';
import { projectToGround } from '../../../core/geometry/shadow.ts';
import { add, scale, type Vec3 } from '../../../core/geometry/vec.ts';
import { intensityPerLumen } from '../../../core/photometry/beam.ts';
import { shadowReading } from '../../../core/readings/shadow-reading.ts';
import { meter } from '../../../core/trace/meter.ts';
import { pointIlluminance } from '../../reference/support/closed-forms.ts';
import { relativeError } from '../support/errors.ts';
import { cosineBeam, discEmitter, halfSpaceBeam, stageWith, standing, subjectOf } from '../support/scenes.ts';

const tolerance = 1e-9;
const empty = stageWith();
const up: Vec3 = [0, 1, 0];
const distances = [0.05, 0.3, 1, 2.5, 7, 20, 150];

/** A lamp of no size straight over a place on the ground, pointing down at it. */
const over = (place: Vec3, heightMetres: number, beam = cosineBeam) =>
  standing(add(place, scale(up, heightMetres)), place, discEmitter(0, beam));

// Inverse square law and Lambert's cosine law: first principles
describe('meter against the inverse square law', () => {
  it.each(distances)('a point lamp %d m over bare ground gives I / d^2 (rel 1e-9)', (d) => {
    for (const place of [
      [0, 0, 0],
      [3, 0, -8],
      [-40, 0, 25],
    ] as const) {
      const lux = meter(empty, over(place, d), place, up);
      expect(relativeError(lux, 1 / Math.PI / d ** 2)).toBeLessThanOrEqual(tolerance);
    }
  });

  it('falls to a quarter when the distance doubles, on the ground and in the air (rel 1e-9)', () => {
    for (const d of distances)
      for (const point of [
        [1, 0, 2],
        [1, 3, 2],
      ] as const) {
        const ratio = meter(empty, over(point, 2 * d), point, up) / meter(empty, over(point, d), point, up);
        expect(relativeError(ratio, 0.25)).toBeLessThanOrEqual(tolerance);
      }
  });
});

describe('meter against the cosine law', () => {
  it.each([0, 10, 30, 45, 60, 80, 89])(
    'a meter in the air tilted by %d degrees reads I cos / d^2 (rel 1e-9)',
    (degrees) => {
      const tilt = (degrees * Math.PI) / 180;
      const point: Vec3 = [2, 1.5, -4];
      const normal: Vec3 = [Math.sin(tilt), Math.cos(tilt), 0];
      for (const d of distances) {
        const lux = meter(empty, over(point, d), point, normal);
        expect(relativeError(lux, Math.cos(tilt) / Math.PI / d ** 2)).toBeLessThanOrEqual(tolerance);
      }
    },
  );

  it.each([90.001, 120, 180])('a meter turned %d degrees away reads nothing', (degrees) => {
    const tilt = (degrees * Math.PI) / 180;
    const point: Vec3 = [2, 1.5, -4];
    expect(meter(empty, over(point, 2), point, [Math.sin(tilt), Math.cos(tilt), 0])).toBe(0);
  });

  it('over the floor a lamp that shines evenly gives I h / r^3, off to the side too (rel 1e-9)', () => {
    for (const h of [0.3, 1.4, 4])
      for (const side of [0.5, 3, 12]) {
        const lamp = standing([0, h, 0], [side / 2, 0, 0], discEmitter(0, halfSpaceBeam));
        const r = Math.hypot(h, side);
        const lux = meter(empty, lamp, [side, 0, 0], up);
        expect(relativeError(lux, pointIlluminance(1 / (2 * Math.PI), h / r, r))).toBeLessThanOrEqual(tolerance);
      }
  });

  it('turning a lobe lamp away loses as its beam says (rel 1e-9)', () => {
    const beam = { ...cosineBeam, exponent: 12 };
    const point: Vec3 = [0, 0, 0];
    for (const degrees of [0, 15, 40, 70]) {
      const turn = (degrees * Math.PI) / 180;
      const aim: Vec3 = [Math.sin(turn), 2 - Math.cos(turn), 0];
      const lux = meter(empty, standing([0, 2, 0], aim, discEmitter(0, beam)), point, up);
      expect(relativeError(lux, intensityPerLumen(beam, Math.cos(turn)) / 4)).toBeLessThanOrEqual(tolerance);
    }
  });
});

// h d / (H - h) by similar triangles (checkvalues.md 8a)
describe('ground shadow lengths', () => {
  const view = cameraView({
    position: [0, 1.6, 6],
    aim: [0, 0, -6],
    rollRadians: 0,
    sensorWidthMm: 36,
    sensorHeightMm: 24,
    focalLengthMm: 24,
  });

  it.each([
    [6, 1.8, 3],
    [2, 1, 4],
    [1.4, 1.39, 8],
    [0.3, 0.02, 5],
  ])('lamp %d m, thing %d m, %d m apart: the tip meets the ray over the top (rel 1e-9)', (lamp, thing, away) => {
    const length = (projectToGround([0, lamp, 0], [away, thing, 0])?.[0] ?? Number.NaN) - away;
    // the ray from lamp to top, followed down to the ground
    expect(relativeError(lamp / (away + length), thing / length)).toBeLessThanOrEqual(tolerance);
    expect(relativeError(length, (thing * away) / (lamp - thing))).toBeLessThanOrEqual(tolerance);
  });

  it.each([
    [3, [0, 0]],
    [2.2, [-6, -2]],
    [8, [2.5, -11]],
  ] as const)('reading of a box, lamp %d m up at %j [east, north] (rel 1e-9)', (lampHeight, [east, north]) => {
    const [width, depth, height] = [0.8, 0.6, 1.7];
    const [boxEast, boxNorth] = [1.3, 4];
    const box = subjectOf('box', [
      { kind: 'box', position: [boxEast, boxNorth, 0], widthMetres: width, depthMetres: depth, heightMetres: height },
    ]);
    const stage = stageWith(box);
    const reading = shadowReading(stage, view, stage.subjects[0] as never, [east, lampHeight, -north]);
    // the tip belongs to the top corner that stands farthest from the lamp
    const corners = [-1, 1].flatMap((i) => [-1, 1].map((j) => [boxEast + (i * width) / 2, boxNorth + (j * depth) / 2]));
    const away = Math.max(...corners.map(([e, n]) => Math.hypot((e as number) - east, (n as number) - north)));
    expect(reading.endless).toBe(false);
    const expected = (height * away) / (lampHeight - height);
    expect(relativeError(reading.lengthMetres as number, expected)).toBeLessThanOrEqual(tolerance);
  });

  it.each([2, 3.5, 9])('reading of a post with its rim corner in line, lamp %d m up (rel 1e-9)', (lampHeight) => {
    const [radius, height, north] = [0.15, 1.2, 5];
    const post = subjectOf('post', [
      { kind: 'cylinder', position: [0, north, 0], radiusMetres: radius, heightMetres: height, sides: 32 },
    ]);
    const stage = stageWith(post);
    const reading = shadowReading(stage, view, stage.subjects[0] as never, [0, lampHeight, 0]);
    const expected = (height * (north + radius)) / (lampHeight - height);
    expect(relativeError(reading.lengthMetres as number, expected)).toBeLessThanOrEqual(tolerance);
    expect(
      relativeError((reading.tip as readonly number[])[1] as number, north + radius + expected),
    ).toBeLessThanOrEqual(tolerance);
  });
});

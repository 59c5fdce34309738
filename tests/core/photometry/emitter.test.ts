import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../../core/geometry/random.ts';
import { distance, dot, normalize, sub, type Vec3 } from '../../../core/geometry/vec.ts';
import { lambertianBeam } from '../../../core/photometry/beam.ts';
import {
  type Emitter,
  type EmitterShape,
  emitterSpot,
  poseToward,
  spotIntensityPerLumen,
} from '../../../core/photometry/emitter.ts';
import { seenEmitter } from '../../../core/photometry/seen-emitter.ts';
import { relativeError } from '../support/errors.ts';

const [w, h] = [0.4, 0.15];
const emitter = (shape: EmitterShape): Emitter => ({
  shape,
  halfWidthMetres: w,
  halfHeightMetres: shape === 'rectangle' ? h : 0,
  beam: lambertianBeam,
});
const pose = poseToward([1, 2, -3], [2, 1.5, -1]);
const random = seededRandom(77);
const spots = (shape: EmitterShape, count = 20_000) =>
  Array.from({ length: count }, () => emitterSpot(emitter(shape), pose, random(), random()));

describe('emitterSpot', () => {
  it.each(['disc', 'rectangle', 'sphere', 'tube'] as const)('%s: (0.5, 0.5) is its middle', (shape) => {
    const { spot, normal } = emitterSpot(emitter(shape), pose, 0.5, 0.5);
    expect(distance(spot, pose.position)).toBeLessThanOrEqual(1e-15);
    expect(normal).toBeNull();
  });

  // mean square distance from the middle of an even spread: first principles
  it.each([
    ['disc', w ** 2 / 2],
    ['rectangle', (w ** 2 + h ** 2) / 3],
    ['sphere', w ** 2],
    ['tube', w ** 2 / 3],
  ] as const)('%s: spots are spread evenly: mean square distance %d m2 (2 %)', (shape, expected) => {
    const found = spots(shape).map(({ spot }) => distance(spot, pose.position) ** 2);
    expect(relativeError(found.reduce((a, b) => a + b, 0) / found.length, expected)).toBeLessThanOrEqual(0.02);
  });

  it('disc, rectangle and tube lie square to the axis; the tube is level (abs 1e-12)', () => {
    for (const shape of ['disc', 'rectangle', 'tube'] as const)
      for (const { spot } of spots(shape, 300)) {
        const offset = sub(spot, pose.position);
        expect(Math.abs(dot(offset, pose.axis))).toBeLessThanOrEqual(1e-12);
        if (shape === 'tube') expect(Math.abs(offset[1])).toBeLessThanOrEqual(1e-12);
      }
  });
});

// energy: mean over the lamp's skin, summed over all directions, is one lumen
describe('spotIntensityPerLumen', () => {
  it.each(['disc', 'rectangle', 'sphere', 'tube'] as const)('%s sends one lumen in all (1.5 %)', (shape) => {
    let sum = 0;
    const count = 60_000;
    for (let n = 0; n < count; n++) {
      const [y, turn] = [2 * random() - 1, 2 * Math.PI * random()];
      const r = Math.sqrt(1 - y * y);
      const direction: Vec3 = [r * Math.cos(turn), y, r * Math.sin(turn)];
      const { normal } = emitterSpot(emitter(shape), pose, random(), random());
      sum += spotIntensityPerLumen(emitter(shape), pose, direction, normal);
    }
    expect(relativeError((4 * Math.PI * sum) / count, 1)).toBeLessThanOrEqual(0.015);
  });
});

describe('seenEmitter', () => {
  const eye: Vec3 = [2.4, 1.7, 0.5];
  // luminance = flux / (pi area) of a Lambertian skin: first principles (checkvalues.md 1.1g)
  it.each([
    ['disc', Math.PI * w * w],
    ['rectangle', 4 * w * h],
    ['sphere', 4 * Math.PI * w * w],
  ] as const)(
    '%s: is seen along rays to its spots, as bright as 1 / (pi area) (rel 1e-9), and as far away',
    (shape, area) => {
      let seen = 0;
      for (const { spot, normal } of spots(shape, 500)) {
        const direction = normalize(sub(spot, eye));
        if (normal && dot(normal, direction) > -1e-3) continue;
        const found = seenEmitter(emitter(shape), pose, eye, direction);
        expect(relativeError(found?.luminancePerLumen ?? 0, 1 / (Math.PI * area))).toBeLessThanOrEqual(1e-9);
        expect(Math.abs((found?.t ?? 0) - distance(eye, spot))).toBeLessThanOrEqual(1e-9);
        seen++;
      }
      expect(seen).toBeGreaterThan(150);
    },
  );

  it('is not seen from behind, nor where the ray passes by', () => {
    const back: Vec3 = [0, 2.5, -5];
    for (const shape of ['disc', 'rectangle'] as const) {
      expect(seenEmitter(emitter(shape), pose, back, normalize(sub(pose.position, back)))).toBeNull();
      expect(seenEmitter(emitter(shape), pose, eye, normalize(sub([1, 2.5, -3], eye)))).toBeNull();
    }
    expect(seenEmitter(emitter('sphere'), pose, eye, normalize(sub(eye, pose.position)))).toBeNull();
  });
});

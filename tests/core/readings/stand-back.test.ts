import { describe, expect, it } from 'vitest';
import { distance, normalize, sub, type Vec3 } from '../../../core/geometry/vec.ts';
import type { Emitter } from '../../../core/photometry/emitter.ts';
import { distanceForLight } from '../../../core/readings/stand-back.ts';
import { type SurfacePoint, surfaceAlong } from '../../../core/trace/surface-point.ts';
import { emitterOf } from '../../../core/world/lamp-light.ts';
import { rectangleFactorUnderCorner } from '../../reference/support/closed-forms.ts';
import { lampOf } from '../photometry/lamps.ts';
import { relativeError } from '../support/errors.ts';
import { stageWith, standing, subjectOf } from '../support/scenes.ts';

const stage = stageWith(
  subjectOf('wall', [{ kind: 'box', position: [0, 10.2, 0], widthMetres: 40, depthMetres: 0.4, heightMetres: 20 }]),
);
const seenAt = (target: Vec3): SurfacePoint => {
  const eye: Vec3 = [1, 3, 0];
  return surfaceAlong(stage, eye, normalize(sub(target, eye))) as SurfacePoint;
};
/** On the wall's south face, and on the ground. */
const onWall = seenAt([0, 5, -10]);
const onGround = seenAt([0, 0, -4]);
const point = emitterOf(lampOf({ kind: 'point' }));
const open = emitterOf(lampOf({ kind: 'torch', diameterMm: 10, beam: { shape: 'open' } }));

const find = (emitter: Emitter, surface: SurfacePoint, position: Vec3, ratio: number, aim: Vec3 = surface.place) =>
  distanceForLight(stage, standing(position, aim, emitter), surface, { position, aim }, ratio);
/** South of a target, level with it. */
const levelWith = (surface: SurfacePoint, metres: number): Vec3 => [
  surface.place[0],
  surface.place[1],
  surface.place[2] + metres,
];

describe('distanceForLight', () => {
  it('is null for a lamp straight over its aim, which has no way to walk', () => {
    const [x, y, z] = onGround.place;
    expect(find(point, onGround, [x, y + 2, z], 0.5)).toBeNull();
    expect(find(point, onGround, [x + 0.5, y + 2, z], 0.5)).not.toBeNull();
  });

  it.each([0.0002, 0.01, 0.25, 0.8, 1.5, 4, 90])(
    'a point level with its target, for %d times the light: d / sqrt(ratio) (inverse square, rel 1e-6)',
    (ratio) => {
      for (const metres of [0.4, 3, 40]) {
        const found = find(point, onWall, levelWith(onWall, metres), ratio) as number;
        expect(relativeError(found, metres / Math.sqrt(ratio))).toBeLessThanOrEqual(1e-6);
      }
    },
  );

  it.each([0.01, 0.3, 1.4])(
    'a point over the ground moves level: light goes as height / r^3, so r / ratio^(1/3) for %d (rel 1e-6)',
    (ratio) => {
      const position: Vec3 = [0, 1.2, -0.5];
      const r = distance(position, onGround.place);
      // told level, its height left out
      const level = Math.sqrt((r / ratio ** (1 / 3)) ** 2 - 1.2 ** 2);
      expect(relativeError(find(point, onGround, position, ratio) as number, level)).toBeLessThan(1e-6);
    },
  );

  it.each([
    [0.5, 0.25],
    [0.5, 0.05],
    [2, 1.5],
  ])(
    'a panel of 1.2 x 0.8 m, %d m off, for %d times the light: as the rectangle’s closed form says (Howell B-4, rel 1 %)',
    (metres, ratio) => {
      const panel = emitterOf(lampOf({ kind: 'panel', widthMm: 1200, heightMm: 800 }));
      const factor = (d: number) => 4 * rectangleFactorUnderCorner(0.6, 0.4, d);
      let [low, high] = [0.01, 100];
      for (let n = 0; n < 60; n++) {
        const middle = (low + high) / 2;
        if (factor(middle) > ratio * factor(metres)) low = middle;
        else high = middle;
      }
      const found = find(panel, onWall, levelWith(onWall, metres), ratio) as number;
      expect(relativeError(found, low)).toBeLessThanOrEqual(0.01);
      // a point would have to stand elsewhere: the check can tell the two apart
      expect(relativeError(metres / Math.sqrt(ratio), low)).toBeGreaterThan(0.02);
    },
  );

  it('is null where no place from a tenth to a hundred times as far does it, and without light', () => {
    expect(find(point, onWall, levelWith(onWall, 3), 101)).toBeNull();
    expect(find(point, onWall, levelWith(onWall, 3), 0.9e-4)).toBeNull();
    expect(find(open, onWall, levelWith(onWall, 3), 0.5, [0, 5, 30])).toBeNull();
  });

  it('coming in under a lamp held high: takes the first place that does, though nearer still is darker (rel 1e-6)', () => {
    // 1.3 m over the target: light goes as x / (x^2 + 1.3^2)^1.5, most at x = 1.3 / sqrt 2
    const high = 1.3;
    const light = (x: number) => x / (x * x + high * high) ** 1.5;
    const position: Vec3 = [0, onWall.place[1] + high, onWall.place[2] + 3];
    expect(light(0.3)).toBeLessThan(2 * light(3));
    const x = find(point, onWall, position, 2) as number;
    expect(relativeError(light(x) / light(3), 2)).toBeLessThanOrEqual(1e-6);
    expect(x).toBeGreaterThan(high / Math.SQRT2);
  });
});

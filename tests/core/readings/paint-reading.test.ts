import { describe, expect, it } from 'vitest';
import { faceLight } from '../../../core/readings/face-light.ts';
import { paintReading } from '../../../core/readings/paint-reading.ts';
import type { PassReading } from '../../../core/readings/pass-reading.ts';
import { silhouetteOf } from '../../../core/readings/silhouette.ts';
import { relativeError } from '../support/errors.ts';
import { onlyPassOf, readPass } from '../support/read-pass.ts';
import { onePassSetup } from '../support/scenes.ts';

const reflectance = 0.3;
const finish = { reflectance };
const [w, h] = [1.2, 2];
/** Its south face at north = 10, its middle at the height of the lens. */
const box = {
  id: 'box',
  name: 'Box',
  finish,
  parts: [{ kind: 'box', position: [0, 10.3, 0], widthMetres: w, depthMetres: 0.6, heightMetres: h }],
};
const [radius, away] = [0.9, 6];
const ball = {
  id: 'ball',
  name: 'Ball',
  finish,
  parts: [{ kind: 'sphere', position: [0, away, 1.1], radiusMetres: radius, sides: 128 }],
};

const setupOf = (subject: object, camera: object, waypoint: object, extra: { lamp?: object; pass?: object } = {}) =>
  onePassSetup({
    camera,
    subjects: [subject],
    pass: { waypoints: [waypoint], ...extra.pass },
    ...(extra.lamp ? { lamp: extra.lamp } : {}),
  });
const facing = { position: [0, 0, h / 2], aim: [0, 10, h / 2] };
const paintOf = (reading: PassReading) => {
  if (!reading.paint) throw new Error('no paint budget');
  return reading.paint;
};
/** Even to 0.2 % over the box: a lamp 60 m off. */
const fromAfar = { position: [0, -50, h / 2], aim: [0, 10, h / 2] };
const strong = { output: { from: 'peak-candela', candela: 36_000 } };

describe('paintReading', () => {
  it('the front of a box that faces the camera is w x h (rel 3 %)', () => {
    const { areaSquareMetres } = paintOf(readPass(setupOf(box, facing, fromAfar)));
    expect(relativeError(areaSquareMetres, w * h)).toBeLessThanOrEqual(0.03);
  });

  it('what one sees of a ball is the cap 2 pi r^2 (1 - r / d) (rel 3 %)', () => {
    // the ball hangs with its middle at 2.0 m, level with the lens
    const camera = { position: [0, 0, 1.1 + radius], aim: [0, away, 1.1 + radius] };
    const waypoint = { position: [1, 0, 2], aim: [0, away, 1.1 + radius] };
    const { areaSquareMetres } = paintOf(readPass(setupOf(ball, camera, waypoint)));
    expect(relativeError(areaSquareMetres, 2 * Math.PI * radius ** 2 * (1 - radius / away))).toBeLessThanOrEqual(0.03);
  });

  it('even light: lumens are lux times area, seconds are dose over lux (rel 3 %)', () => {
    const { lumensOnSubject, budgetLumenSeconds, seconds } = paintOf(
      readPass(setupOf(box, facing, fromAfar, { lamp: strong })),
    );
    // 36 000 cd at 60 m: 10 lx
    expect(relativeError(lumensOnSubject, 10 * w * h)).toBeLessThanOrEqual(0.03);
    // pi H N^2 / (q rho), H = 10 / S (ISO 12232), 1.5 stops under mid-grey, f/8, ISO 400
    const dose = (Math.PI * (10 / 400) * 8 ** 2 * 2 ** -1.5) / (0.65 * reflectance);
    expect(relativeError(budgetLumenSeconds, dose * w * h)).toBeLessThanOrEqual(0.03);
    expect(relativeError(seconds, dose / 10)).toBeLessThanOrEqual(0.005);
    expect(relativeError(seconds * lumensOnSubject, budgetLumenSeconds)).toBeLessThanOrEqual(1e-12);
  });

  it('a narrow beam that stays on the subject: seconds do not depend on the distance (rel 2 %)', () => {
    const wall = { ...box, parts: [{ ...box.parts[0], widthMetres: 8, heightMetres: 7 }] };
    const camera = { position: [0, 0, 3.5], aim: [0, 10, 3.5] };
    const seconds = [2.5, 5].map((metres) => {
      const waypoint = { position: [0, 10 - metres, 3.5], aim: [0, 10, 3.5] };
      return paintOf(
        readPass(setupOf(wall, camera, waypoint, { lamp: { ...strong, beam: { shape: 'flood', degrees: 55 } } })),
      ).seconds;
    }) as [number, number];
    expect(relativeError(seconds[1], seconds[0])).toBeLessThanOrEqual(0.02);
  });

  it('half the level needs twice the seconds, the budget being the same (rel 1e-9)', () => {
    const [full, half] = [100, 50].map((levelPercent) =>
      paintOf(readPass(setupOf(box, facing, fromAfar, { pass: { levelPercent } }))),
    ) as [ReturnType<typeof paintOf>, ReturnType<typeof paintOf>];
    expect(relativeError(half.seconds / full.seconds, 2)).toBeLessThanOrEqual(1e-9);
    expect(half.budgetLumenSeconds).toBe(full.budgetLumenSeconds);
  });

  it('one stop more needs twice the budget (rel 1e-12)', () => {
    const { world, worldFrame, light } = onlyPassOf(setupOf(box, facing, fromAfar));
    const face = faceLight(world.stage, silhouetteOf(world.stage, world.view, 0).face, light.source);
    const budget = (stops: number) =>
      paintReading(face, light, worldFrame.exposure, stops)?.budgetLumenSeconds ?? Number.NaN;
    expect(relativeError(budget(0) / budget(-1), 2)).toBeLessThanOrEqual(1e-12);
  });

  it('is null where none of the light lands on what the camera sees, and where it sees nothing of the subject', () => {
    expect(readPass(setupOf(box, facing, { position: [0, 20, 1], aim: [0, 10, 1] })).paint).toBeNull();
    const turned = { position: [0, 0, 1], aim: [0, -10, 1] };
    expect(readPass(setupOf(box, turned, fromAfar)).paint).toBeNull();
  });
});

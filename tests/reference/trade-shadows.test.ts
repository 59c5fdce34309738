import { describe, expect, it } from 'vitest';
import { cameraView, projectPoint, viewDirection } from '../../core/camera/camera-view.ts';
import type { Vec3 } from '../../core/geometry/vec.ts';
import { groundRaking } from '../../core/readings/relief-reading.ts';
import { ground } from '../../core/setup/schema/ground.ts';
import { irradianceSample } from '../../core/trace/irradiance.ts';
import { type SurfacePoint, surfaceAlong } from '../../core/trace/surface-point.ts';
import { buildStage, type Stage } from '../../core/world/stage.ts';
import { stageWith, standing, subjectOf } from '../core/support/scenes.ts';
import { accuracySection } from './support/accuracy.ts';
import { barePoint } from './support/lamps.ts';

const { check } = accuracySection('Trade practice');
const source = 'common practice, no published source';

const viewFrom = (position: Vec3, aim: Vec3, focalLengthMm: number) =>
  cameraView({ position, aim, rollRadians: 0, sensorWidthMm: 36, sensorHeightMm: 24, focalLengthMm });

const middle = { u: 0.5, v: 0.5, time: 0.5 };
const isLit = (stage: Stage, lamp: Vec3, surface: SurfacePoint): boolean =>
  irradianceSample(stage, standing(lamp, [0, 0, 0], barePoint()), surface, middle) > 0;

describe('the shadow behind a subject through longer lenses, stepping back to keep the subject’s size', () => {
  // an upright sheet 0.5 m wide, without thickness, wall 2 m behind it, lamp to the left:
  // its shadow is 0.75 m wide, around 1.5 m to the right
  const board = { kind: 'plane', position: [0, 0, 0.5], widthMetres: 0.5, depthMetres: 1, tiltDegrees: 90 };
  const wall = { kind: 'box', position: [0, 2.5, 0], widthMetres: 20, depthMetres: 1, heightMetres: 4 };
  const stage = stageWith(subjectOf('board', [board]), subjectOf('wall', [wall]));
  const lamp: Vec3 = [-3, 0.6, 4];

  /** Widths in the picture, millimetres on the sensor: the board, by projection, and its shadow, by traced rays. */
  const widths = (focalLengthMm: number): { subject: number; shadow: number } => {
    const view = viewFrom([0, 0.5, 0.125 * focalLengthMm], [0, 0.5, 0], focalLengthMm);
    const across = (x: number, z: number) => projectPoint(view, [x, 0.5, z])?.[0] ?? Number.NaN;
    const isDark = (x: number): boolean => {
      const surface = surfaceAlong(stage, view.position, viewDirection(view, x, 0.5));
      return surface !== null && !isLit(stage, lamp, surface);
    };
    const edge = (dark: number, lit: number): number => {
      let [a, b] = [dark, lit];
      for (let n = 0; n < 30; n++) [a, b] = isDark((a + b) / 2) ? [(a + b) / 2, b] : [a, (a + b) / 2];
      return a;
    };
    const inside = across(1.5, -2);
    expect([isDark(inside), isDark(across(0.8, -2)), isDark(across(2.2, -2))]).toEqual([true, false, false]);
    return {
      subject: 36 * (across(0.25, 0) - across(-0.25, 0)),
      shadow: 36 * (edge(inside, across(2.2, -2)) - edge(inside, across(0.8, -2))),
    };
  };
  const wide = widths(24);

  it('24 mm from 3 m: the shadow is 24 x 0.75 / 5 = 3.6 mm wide on the sensor (rel 1e-4)', () => {
    check({
      id: 'trade e',
      claim: 'shadow 0.75 m wide on a wall 5 m off, on the sensor behind 24 mm, traced',
      source: 'similar triangles, computed',
      unit: 'mm',
      expected: 3.6,
      ours: wide.shadow,
      tolerance: { relative: 1e-4 },
    });
  });

  it.each([
    [50, 6.25],
    [85, 10.625],
  ])('%d mm from %d m: the shadow grows as D / (D + b) has it, the subject not at all (rel 1e-4)', (focal, away) => {
    const { subject, shadow } = widths(focal);
    const row = { id: 'trade e', unit: '', tolerance: { relative: 1e-4 } };
    check({
      ...row,
      claim: `subject through ${focal} mm from ${away} m, over 24 mm from 3 m`,
      source: `similar triangles; ${source}`,
      expected: 1,
      ours: subject / wide.subject,
    });
    check({
      ...row,
      claim: `its shadow on a wall 2 m behind, through ${focal} mm over 24 mm, traced`,
      source: `similar triangles; ${source}`,
      expected: away / (away + 2) / (3 / 5),
      ours: shadow / wide.shadow,
    });
  });

  it('from very far it grows toward 1 + b / D of the nearest place, 5/3, and no more (1 %)', () => {
    const ratio = widths(2000).shadow / wide.shadow;
    check({
      id: 'trade e',
      claim: 'its shadow through 2000 mm over 24 mm, toward the limit, traced',
      source: `similar triangles; ${source}`,
      unit: '',
      expected: 5 / 3,
      ours: ratio,
      tolerance: { relative: 0.01 },
    });
    expect(ratio).toBeLessThan(5 / 3);
  });
});

describe('raking light over level ground', () => {
  it.each([
    [0.3, 2, 6.7],
    [0.3, 5, 17],
    [0.3, 10, 33],
    [1, 2, 2],
    [1, 5, 5],
    [1, 10, 10],
    [2.2, 2, 0.9],
    [2.2, 5, 2.3],
    [2.2, 10, 4.5],
  ])(
    'a lamp %d m up, %d m off: shadows %d times as long as things are high (the rule’s rounding)',
    (up, away, expected) => {
      check({
        id: 'trade f',
        claim: `lamp ${up} m up, ${away} m off: length of shadows over height`,
        source: `1 / tan, computed; ${source}`,
        unit: '',
        expected,
        ours: groundRaking([0, 0, 0], [away, up, 0]).shadowLengthPerHeight ?? Number.NaN,
        tolerance: { absolute: expected > 10 ? 0.5 : 0.05 },
      });
    },
  );

  it('a pebble 2 cm high, lamp 0.3 m up and 5 m off: its traced shadow is about 17 times its height (10 %)', () => {
    const pebble = { kind: 'box', widthMetres: 0.02, depthMetres: 0.02, heightMetres: 0.02 };
    const stage = stageWith(subjectOf('pebble', [pebble]));
    const lit = (x: number): boolean => {
      const surface = surfaceAlong(stage, [x, 1, 0], [0, -1, 0]);
      return surface !== null && isLit(stage, [-5, 0.3, 0], surface);
    };
    let [dark, light] = [0.02, 2];
    expect([lit(dark), lit(light)]).toEqual([false, true]);
    for (let n = 0; n < 30; n++) {
      const x = (dark + light) / 2;
      if (lit(x)) light = x;
      else dark = x;
    }
    check({
      id: 'trade f',
      claim: 'pebble 2 cm high, lamp 0.3 m up, 5 m off: length of its shadow over its height, traced',
      source,
      unit: '',
      expected: 17,
      ours: dark / 0.02,
      tolerance: { relative: 0.1 },
    });
  });
});

describe('strewn stones in the picture', () => {
  const stones = { kind: 'stones', count: 500, heightMetres: [0.02, 0.08], centre: [0, 5], radiusMetres: 4 };
  const stage = buildStage(ground.parse({ relief: [stones] }), []);
  const view = viewFrom([0, 1.5, 1], [0, 0, -5], 24);
  const [width, height] = [160, 90];
  const seen = Array.from({ length: width * height }, (_, p) =>
    surfaceAlong(
      stage,
      view.position,
      viewDirection(view, ((p % width) + 0.5) / width, (Math.floor(p / width) + 0.5) / height),
    ),
  ).filter((surface) => surface !== null);
  const level = seen.filter(({ position }) => Math.abs(position[1]) < 1e-6);

  const shadowedShare = (surfaces: readonly SurfacePoint[], lamp: Vec3): number =>
    surfaces.filter((surface) => !isLit(stage, lamp, surface)).length / surfaces.length;

  it('a lamp at the lens shows no shadow, on the ground or on the stones (abs 5e-4)', () => {
    // shadow rays start a hair off a face, 0.06 mm here: within that of where a stone meets the ground, inside the stone
    expect(seen.length - level.length).toBeGreaterThan(100);
    check({
      id: 'trade f',
      claim: 'strewn stones, lamp at the lens: share of what is seen that lies in shadow, traced',
      source,
      unit: '',
      expected: 0,
      ours: shadowedShare(seen, view.position),
      tolerance: { absolute: 5e-4 },
    });
  });

  it('the lower a lamp at the side, the more of the ground lies in shadow', () => {
    const shares = [2.2, 1, 0.3, 0.1].map((up) => shadowedShare(level, [-5, up, -5]));
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
    expect(shares[0]).toBeGreaterThan(0);
    expect(shares[3]).toBeGreaterThan(5 * (shares[0] as number));
  });
});

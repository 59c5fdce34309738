import { describe, expect, it } from 'vitest';
import { cameraView } from '../../../core/camera/camera-view.ts';
import type { Vec3 } from '../../../core/geometry/vec.ts';
import { patchContrast, patchLight, patchReading } from '../../../core/readings/patch-reading.ts';
import { patchView } from '../../../core/readings/patch-view.ts';
import { meterReceiver } from '../../../core/trace/meter.ts';
import type { PathPoint, Source } from '../../../core/world/world.ts';
import { relativeError } from '../support/errors.ts';
import { discEmitter, halfSpaceBeam, stageWith, standing, subjectOf } from '../support/scenes.ts';

/** Level ground from 20 m above; the picture is 36 x 24 m there, its top is north. */
const view = cameraView({
  position: [0, 20, 0],
  aim: [0, 0, 0],
  rollRadians: 0,
  sensorWidthMm: 36,
  sensorHeightMm: 24,
  focalLengthMm: 20,
});
const square = (half: number, x = 0): Vec3[] => [
  [x - half, 0, half],
  [x + half, 0, half],
  [x + half, 0, -half],
  [x - half, 0, -half],
];
const bare = stageWith();
const finish = { reflectance: 0.18 };
const boxes = stageWith(
  subjectOf(
    'boxes',
    [-1.1, 0.9].map((east) => ({
      kind: 'box',
      position: [east, 0.2, 0],
      widthMetres: 0.5,
      depthMetres: 0.5,
      heightMetres: 0.4,
    })),
    { finish },
  ),
);
const moon = (degrees: number): Source => {
  const a = (degrees * Math.PI) / 180;
  return { kind: 'moon', toward: [Math.cos(a), Math.sin(a), 0], radiusRadians: 0.0045 };
};
const sky: Source = { kind: 'sky' };

describe('patchView', () => {
  it('looks at the drawn piece only: all points inside it, in number as its share of its own box', () => {
    const whole = patchView(bare, view, square(2));
    expect(whole).toHaveLength(32 * 32);
    expect(whole.every(({ position: [x, , z] }) => Math.abs(x) < 2 && Math.abs(z) < 2)).toBe(true);
    // a square on its corner fills half of its box; so does an arrow head that is not convex a third of its own
    const diamond = patchView(bare, view, [
      [-2, 0, 0],
      [0, 0, 2],
      [2, 0, 0],
      [0, 0, -2],
    ]);
    expect(Math.abs(diamond.length / 1024 - 0.5)).toBeLessThanOrEqual(0.04);
    expect(diamond.every(({ position: [x, , z] }) => Math.abs(x) + Math.abs(z) <= 2.001)).toBe(true);
    const arrow = patchView(bare, view, [
      [-2, 0, 2],
      [0, 0, -2],
      [2, 0, 2],
      [0, 0, 0],
    ]);
    expect(Math.abs(arrow.length / 1024 - 0.25)).toBeLessThanOrEqual(0.04);
  });

  it('keeps to the part that is in the picture, and sees what stands in front', () => {
    const cut = patchView(bare, view, square(4, 18));
    expect(cut.length).toBeGreaterThan(900);
    expect(cut.every(({ position }) => position[0] <= 18.001)).toBe(true);
    const tops = patchView(boxes, view, square(2)).filter(({ subject }) => subject === 0);
    expect(tops.length).toBeGreaterThan(20);
  });

  it('is empty with a corner behind the lens, outside the picture, or too small to have any rays', () => {
    const [a, b, c] = square(2) as [Vec3, Vec3, Vec3];
    expect(patchView(bare, view, [a, b, c, [0, 30, 0]])).toEqual([]);
    expect(patchView(bare, view, square(2, 40))).toEqual([]);
    expect(patchView(bare, view, [a, a, a, a])).toEqual([]);
  });

  it('leaves out the sky', () => {
    const level = cameraView({
      ...view,
      position: [0, 2, 0],
      aim: [0, 2, -10],
      rollRadians: 0,
      sensorWidthMm: 36,
      sensorHeightMm: 24,
      focalLengthMm: 20,
    });
    expect(
      patchView(bare, level, [
        [-2, 4, -8],
        [2, 4, -8],
        [2, 6, -8],
        [-2, 6, -8],
      ]),
    ).toEqual([]);
  });
});

describe('patchReading', () => {
  const points = patchView(boxes, view, square(2));
  const flat = patchView(bare, view, square(2));

  it('of bare level ground under the moon is flat and without shadow (abs 1e-9)', () => {
    const reading = patchReading(bare, flat, moon(10));
    expect(reading?.rmsContrast).toBeLessThanOrEqual(1e-9);
    expect(reading?.shadowedShare).toBe(0);
  });

  it('the lower the light, the more contrast and the more shadow', () => {
    const readings = [60, 45, 30, 20, 10].map((degrees) => patchReading(boxes, points, moon(degrees)));
    for (const name of ['rmsContrast', 'shadowedShare'] as const) {
      const values = readings.map((reading) => reading?.[name] ?? Number.NaN);
      expect(values).toEqual([...values].sort((a, b) => a - b));
      expect(values[4]).toBeGreaterThan(2 * (values[0] as number));
    }
  });

  it('meters as the incident meter does, point by point (exact)', () => {
    const lamp = standing([3, 1, 1], [0, 0, 0], discEmitter(0.3));
    const { lux } = patchLight(boxes, points, lamp);
    expect(lux).toEqual(points.map((point) => meterReceiver(boxes, lamp, point, 4)));
    expect(Math.max(...lux)).toBeGreaterThan(0);
  });

  it('does not hang on how grey everything is (rel 1e-9); paint of two greys is contrast', () => {
    const dark = points.map((point) => ({ ...point, reflectance: [0.02, 0.02, 0.02] as const }));
    const contrast = (seen: typeof points) => patchReading(boxes, seen, moon(20))?.rmsContrast ?? Number.NaN;
    expect(relativeError(contrast(dark), contrast(points))).toBeLessThanOrEqual(1e-9);
    const striped = flat.map((point, i) => ({
      ...point,
      reflectance: (i % 2 ? [0.3, 0.3, 0.3] : [0.1, 0.1, 0.1]) as Vec3,
    }));
    // two levels of 0.1 and 0.3: mean 0.2, deviation 0.1
    expect(patchReading(bare, striped, moon(40))?.rmsContrast).toBeCloseTo(0.5, 9);
  });

  it('counts only what the beam reaches: a narrow beam aside leaves the rest out of the share', () => {
    const narrow = standing([0, 8, 0], [0, 0, 0], {
      ...discEmitter(0),
      front: { spreadShare: 0, cosSnoot: Math.cos(0.06) },
    });
    // straight down on open ground, half a metre round: nothing it reaches is in shadow, though most is dark
    const reading = patchReading(bare, flat, narrow);
    expect(reading?.shadowedShare).toBe(0);
    expect(reading?.rmsContrast).toBeGreaterThan(1);
  });

  it('is all shadow and no contrast where the beam would reach and nothing comes: behind a wall, from under the ground', () => {
    const wall = stageWith(
      subjectOf('wall', [{ kind: 'box', position: [4, 0, 0], widthMetres: 0.2, depthMetres: 30, heightMetres: 10 }]),
    );
    const seen = patchView(wall, view, square(2));
    const dark = { rmsContrast: 0, shadowedShare: 1 };
    expect(patchReading(wall, seen, standing([8, 3, 0], [0, 0, 0], discEmitter(0.05)))).toEqual(dark);
    expect(patchReading(wall, seen, moon(30))).toEqual(dark);
    expect(patchReading(bare, flat, standing([0, -3, 0], [0, 0, 0], discEmitter(0)))).toEqual(dark);
  });

  it('of a lamp walked past boxes the contrast is that of the incident meter over its way (abs 0.01)', () => {
    const way = standing([-6, 0.6, 2.5], [-6, 0, 0], discEmitter(0, halfSpaceBeam));
    const [from] = way.path as [PathPoint];
    const to = { seconds: 8, position: [6, 0.6, 2.5] as const, aim: [6, 0, 0] as const };
    const walked = { ...way, path: [from, to], onOff: [0, 8] as const };
    const some = points.filter((_, i) => i % 8 === 0);
    const fine = some.map((point) => meterReceiver(boxes, walked, point, 512));
    const expected = patchContrast(some, [[{ strength: [1, 1, 1], seconds: 1 }, fine]]) ?? Number.NaN;
    const contrast = patchReading(boxes, some, walked)?.rmsContrast ?? Number.NaN;
    expect(expected).toBeGreaterThan(0.2);
    expect(Math.abs(contrast - expected)).toBeLessThanOrEqual(0.01);
  });

  it('is null where the beam does not reach: from one that misses, from the sky alone, of no patch', () => {
    const away = standing([0, 8, 0], [0, 20, 0], discEmitter(0));
    expect(patchReading(bare, flat, away)).toBeNull();
    expect(patchReading(bare, flat, sky)).toBeNull();
    expect(patchReading(bare, [], moon(30))).toBeNull();
  });
});

describe('patchContrast', () => {
  const points = patchView(boxes, view, square(2));
  const luxOf = (source: Source) => patchLight(boxes, points, source).lux;
  const key = luxOf(moon(15));
  const fill = luxOf(sky);
  const light = (strength: number, seconds = 1) => ({ strength: [strength, strength, strength] as Vec3, seconds });

  it('of one light alone is that of its reading, whatever its strength and seconds (rel 1e-9)', () => {
    const alone = patchReading(boxes, points, moon(15))?.rmsContrast ?? Number.NaN;
    expect(relativeError(patchContrast(points, [[light(7, 3), key]]) ?? Number.NaN, alone)).toBeLessThanOrEqual(1e-9);
  });

  it('falls as fill is added, at every step', () => {
    const contrasts = [0, 0.05, 0.2, 1, 5].map((level) =>
      patchContrast(points, [
        [light(1), key],
        [light(level), fill],
      ]),
    );
    for (let i = 1; i < contrasts.length; i++) expect(contrasts[i]).toBeLessThan(contrasts[i - 1] as number);
  });

  it('under the sky alone is that of the incident meter, whose rays are far more (abs 0.01)', () => {
    const some = points.filter((_, i) => i % 8 === 0);
    const [ours, fine] = [
      patchLight(boxes, some, sky).lux,
      some.map((point) => meterReceiver(boxes, sky, point, 2048)),
    ].map((lux) => patchContrast(some, [[light(1), lux]]) ?? Number.NaN) as [number, number];
    expect(fine).toBeGreaterThan(0.05);
    expect(Math.abs(ours - fine)).toBeLessThanOrEqual(0.01);
  });

  it('twice the seconds is as good as twice the strength (rel 1e-12)', () => {
    const [a, b] = [light(2, 1), light(1, 2)].map((each) =>
      patchContrast(points, [
        [each, key],
        [light(1), fill],
      ]),
    );
    expect(relativeError(a as number, b as number)).toBeLessThanOrEqual(1e-12);
  });

  it('is null in the dark and of no patch', () => {
    expect(patchContrast(points, [[light(0), key]])).toBeNull();
    expect(patchContrast([], [[light(1), []]])).toBeNull();
  });
});

import { describe, expect, it } from 'vitest';
import { normalize, type Vec3 } from '../../../core/geometry/vec.ts';
import { meter } from '../../../core/trace/meter.ts';
import type { Source } from '../../../core/world/world.ts';
import { meanMoonRadiusRadians } from '../../../core/world/world.ts';
import { relativeError } from '../support/errors.ts';
import { stageWith, subjectOf } from '../support/scenes.ts';

const samples = 4096;
const empty = stageWith();
const sky: Source = { kind: 'sky' };
const up: Vec3 = [0, 1, 0];
const tilted = (degrees: number, bearingDegrees = 0): Vec3 => {
  const [t, b] = [degrees, bearingDegrees].map((v) => (v * Math.PI) / 180) as [number, number];
  return [Math.sin(t) * Math.sin(b), Math.cos(t), -Math.sin(t) * Math.cos(b)];
};

// An even dome of luminance L gives pi L on level ground and (1 + cos tilt) / 2 of it on a tilted face: first principles
describe('even sky', () => {
  it('gives 1 lx per lux on open level ground (rel 1e-12)', () => {
    for (const point of [
      [0, 0, 0],
      [30, 0, -7],
      [2, 5, 2],
    ] as const)
      expect(relativeError(meter(empty, sky, point, up, samples), 1)).toBeLessThanOrEqual(1e-12);
  });

  it.each([0, 90, 200])('gives an upright wall 0.5, whichever way it faces (bearing %d; 1 %)', (bearing) => {
    expect(relativeError(meter(empty, sky, [0, 1, 0], tilted(90, bearing), samples), 0.5)).toBeLessThanOrEqual(0.01);
  });

  it.each([20, 45, 70, 110, 150])('gives a face tilted by %d degrees (1 + cos) / 2 (abs 0.005)', (degrees) => {
    const expected = (1 + Math.cos((degrees * Math.PI) / 180)) / 2;
    expect(Math.abs(meter(empty, sky, [0, 1, 0], tilted(degrees, 35), samples) - expected)).toBeLessThanOrEqual(0.005);
  });

  it('gives a face turned to the ground nothing', () => {
    expect(meter(empty, sky, [0, 1, 0], [0, -1, 0], samples)).toBe(0);
  });

  // a lid hides sin^2 of its half angle: F = R^2 / (R^2 + h^2), I. Martinez (checkvalues.md 1.2a)
  it.each([
    [1, 1],
    [2, 1],
    [0.5, 2],
  ])('under a round lid of radius %d m, %d m up, the rest is left (abs 0.01)', (radius, above) => {
    const lid = subjectOf('lid', [
      { kind: 'cylinder', position: [0, 0, above], radiusMetres: radius, heightMetres: 0.01, sides: 128 },
    ]);
    const left = meter(stageWith(lid), sky, [0, 0, 0], up, samples);
    expect(Math.abs(left - (1 - radius ** 2 / (radius ** 2 + above ** 2)))).toBeLessThanOrEqual(0.01);
  });
});

describe('moon', () => {
  const moonAt = (altitudeDegrees: number): Source => ({
    kind: 'moon',
    toward: tilted(90 - altitudeDegrees, 70),
    radiusRadians: meanMoonRadiusRadians,
  });

  // Lambert's cosine law: level ground gets the sine of the altitude
  it.each([5, 20, 45, 90])('at %d degrees up gives level ground the sine of it per lux (1e-4)', (altitude) => {
    const lux = meter(empty, moonAt(altitude), [3, 0, 1], up, samples);
    expect(Math.abs(lux - Math.sin((altitude * Math.PI) / 180))).toBeLessThanOrEqual(1e-4);
  });

  it('gives a face square to it 1 lx per lux (1e-4), and one turned away nothing', () => {
    const toward = tilted(60, 70);
    expect(
      relativeError(
        meter(empty, { kind: 'moon', toward, radiusRadians: meanMoonRadiusRadians }, [0, 2, 0], toward, samples),
        1,
      ),
    ).toBeLessThanOrEqual(1e-4);
    const away = normalize([-toward[0], -toward[1], -toward[2]]);
    expect(meter(empty, { kind: 'moon', toward, radiusRadians: meanMoonRadiusRadians }, [0, 2, 0], away, samples)).toBe(
      0,
    );
  });

  it('is kept off by a wall between', () => {
    const wall = subjectOf('wall', [
      { kind: 'box', position: [0, 2, 0], widthMetres: 9, depthMetres: 0.2, heightMetres: 5 },
    ]);
    const moon: Source = { kind: 'moon', toward: tilted(60, 0), radiusRadians: meanMoonRadiusRadians };
    expect(meter(stageWith(wall), moon, [0, 0, 0], up, samples)).toBe(0);
    expect(meter(stageWith(wall), moon, [0, 0, -9], up, samples)).toBeGreaterThan(0.4);
  });
});

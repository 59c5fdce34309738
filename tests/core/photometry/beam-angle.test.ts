import { describe, expect, it } from 'vitest';
import { beamAngleRadians } from '../../../core/photometry/beam-angle.ts';
import type { Emitter } from '../../../core/photometry/emitter.ts';
import { degreesFromRadians, radiansFromDegrees } from '../../../core/units/angle.ts';
import { emitterOf } from '../../../core/world/lamp-light.ts';
import { lampOf, measuredField } from './lamps.ts';

const degreesOf = (emitter: Emitter): number | null => {
  const angle = beamAngleRadians(emitter);
  return angle === null ? null : degreesFromRadians(angle);
};
const torch = (beam: object): Emitter => emitterOf(lampOf({ kind: 'torch', beam }));
const measured = (...field: Parameters<typeof measuredField>): Emitter =>
  emitterOf(lampOf({ kind: 'torch', beam: { shape: 'measured', beamId: 'file' } }), [measuredField(...field)]);
const apart = (emitter: Emitter, expected: number): number => Math.abs((degreesOf(emitter) ?? Number.NaN) - expected);
const snoot = (emitter: Emitter, degrees: number, spreadShare = 0): Emitter => ({
  ...emitter,
  front: { spreadShare, cosSnoot: Math.cos(radiansFromDegrees(degrees / 2)) },
});

describe('beamAngleRadians: full angle between the halves of the peak', () => {
  it.each([4, 12, 45, 90, 150])('lobe of %d degrees has that angle by its definition (abs 0.02 degrees)', (degrees) => {
    expect(apart(torch({ shape: 'lobe', degrees }), degrees)).toBeLessThanOrEqual(0.02);
  });

  it('Lambertian: 120 degrees, as cos 60 is one half (abs 0.02 degrees)', () => {
    expect(apart(torch({ shape: 'open' }), 120)).toBeLessThanOrEqual(0.02);
  });

  // an edge is found to a step of a quarter degree on each side
  it.each([7, 20, 63, 120])('flood of %d degrees ends at its edge (abs 0.5 degrees)', (degrees) => {
    expect(apart(torch({ shape: 'flood', degrees }), degrees)).toBeLessThanOrEqual(0.5);
  });

  it('measured, falling in a straight line to nothing at 50 degrees: 50 degrees (abs 0.01)', () => {
    expect(
      apart(
        measured([0, 50], [0], (v) => 900 - 18 * v),
        50,
      ),
    ).toBeLessThanOrEqual(0.01);
  });

  it('measured, wider one way than the other: the mean of both (abs 0.5 degrees)', () => {
    // 0-180 plane even to 60, 90-270 plane even to 20; the step between 20 and 21 is nearly an edge
    const oval = measured([0, 20, 21, 60, 61, 90], [0, 90], (v, h) => (v <= (h === 0 ? 60 : 20) ? 100 : 0));
    expect(apart(oval, (121 + 41) / 2)).toBeLessThanOrEqual(0.5);
  });

  it('measured, with a dark middle: to the outer halves (abs 0.01 degrees)', () => {
    const ring = measured([0, 20, 40], [0], (v) => (v === 20 ? 100 : 0));
    expect(apart(ring, 60)).toBeLessThanOrEqual(0.01);
  });

  it('a half plane that nowhere reaches half the peak has no width: two fans of 30 to 40 degrees to the sides (abs 0.5)', () => {
    const fans = measured([0, 29, 30, 40, 41, 90], [0, 90], (v, h) =>
      h === 0 && v >= 30 && v <= 40 ? 100 : 10 - v / 10,
    );
    // two half planes out to where 40 to 41 degrees passes one half, two of none
    expect(apart(fans, (2 * 40.5 + 0) / 2)).toBeLessThanOrEqual(0.5);
  });

  it('a snoot narrows it to its cone, and leaves a narrower beam as it is (abs 0.5 degrees)', () => {
    expect(apart(snoot(torch({ shape: 'open' }), 24), 24)).toBeLessThanOrEqual(0.5);
    expect(apart(snoot(torch({ shape: 'lobe', degrees: 12 }), 60), 12)).toBeLessThanOrEqual(0.02);
  });

  it('cloth that spreads all makes it 120 degrees (abs 0.02)', () => {
    expect(apart(snoot(torch({ shape: 'lobe', degrees: 12 }), 360, 1), 120)).toBeLessThanOrEqual(0.02);
  });

  it('is null for lamps that shine all round, for globes and tubes', () => {
    expect(degreesOf(emitterOf(lampOf({ kind: 'point' })))).toBeNull();
    expect(degreesOf(measured([0, 180], [0], () => 50))).toBeNull();
    expect(degreesOf(emitterOf(lampOf({ kind: 'lantern' })))).toBeNull();
    expect(degreesOf(emitterOf(lampOf({ kind: 'tube', lengthMm: 500 })))).toBeNull();
  });
});

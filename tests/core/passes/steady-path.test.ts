import { describe, expect, it } from 'vitest';
import type { Vec3 } from '../../../core/geometry/vec.ts';
import { evenSpeedTimes } from '../../../core/passes/even-speed-times.ts';
import { steadyPath } from '../../../core/passes/steady-path.ts';
import type { Position, Waypoint } from '../../../core/setup/schema/setup.ts';
import { meterWith } from '../../../core/trace/meter.ts';
import { dimension, sampleNumber } from '../../../core/trace/sequence.ts';
import { worldFromDocument } from '../../../core/world/axes.ts';
import { discEmitter, stageWith, subjectOf } from '../support/scenes.ts';

// a wall to the east, swept with a beam of 1.5 degrees (cos^n is a half at 0.75 degrees) from 2 m out of its face
const lamp: Position = [0, -2, 1.5];
const eastAt = (metres: number) => Math.sqrt(metres ** 2 - 4);
const at = (metres: number): Waypoint => ({ time: 0, position: lamp, aim: [eastAt(metres), 0, 1.5] });
const raked = [at(2.7), at(22)];
const emitter = discEmitter(0.01, { exponent: 8000, cosSpill: -1, cosSpillEven: -1, spillShare: 0 });
const stage = stageWith(
  subjectOf('wall', [{ kind: 'box', position: [12, 0.25, 0], widthMetres: 40, depthMetres: 0.5, heightMetres: 4 }]),
);
const distances = Array.from({ length: 18 }, (_, i) => 3 + i);

/** Stops of dose along the wall, 3 to 20 m from the lamp, over that at 3 m, at even speed. */
const stopsAlong = (waypoints: readonly Waypoint[]): number[] => {
  const times = evenSpeedTimes(waypoints, { on: 0, off: 20 });
  const path = waypoints.map(({ position, aim }, i) => ({
    seconds: times[i] as number,
    position: worldFromDocument(position),
    aim: worldFromDocument(aim),
  }));
  const source = { kind: 'lamp', emitter, path, onOff: [0, 20], holder: null } as const;
  const samples = Array.from({ length: 4000 }, (_, s) => ({
    u: sampleNumber(s, dimension.emitterU, 0, 0),
    v: sampleNumber(s, dimension.emitterV, 0, 0),
    time: (s + 0.5) / 4000,
  }));
  return distances.map((metres) => {
    const place: Vec3 = [eastAt(metres), 1.5, 0];
    const shadowOrigin: Vec3 = [place[0], 1.5, 1e-4];
    return Math.log2(meterWith(stage, source, { place, shadowOrigin, normal: [0, 0, 1] }, samples));
  });
};
const most = (a: readonly number[], b: readonly number[]) =>
  Math.max(...a.map((stops, i) => Math.abs(stops - (b[i] as number))));
const halvedAt = (path: readonly Waypoint[], leg: number): Waypoint[] => {
  const [a, b] = [path[leg] as Waypoint, path[leg + 1] as Waypoint];
  const aim = a.aim.map((v, i) => (v + (b.aim[i] as number)) / 2) as Position;
  return [...path].toSpliced(leg + 1, 0, { ...a, aim });
};

describe('steadyPath', () => {
  const steady = steadyPath(raked);
  const stops = stopsAlong(steady);

  it('a waypoint put in the middle of any of its legs changes no dose along the wall by 0.3 stop', () => {
    const change = Math.max(...steady.slice(1).map((_, leg) => most(stopsAlong(halvedAt(steady, leg)), stops)));
    expect(change).toBeLessThan(0.3);
    // of the leg as it was drawn it changes them by more than a stop
    expect(most(stopsAlong(halvedAt(raked, 0)), stopsAlong(raked))).toBeGreaterThan(1);
  });

  it('a hand that turns evenly gives a dose that falls with the third power of the distance (closed form; 0.4 stop)', () => {
    // a narrow beam gives I / r² × h / r for as long as the wall there lies in it, which is as long everywhere
    const form = distances.map((metres) => -3 * Math.log2(metres));
    const mean = (values: readonly number[]) => values.reduce((sum, v) => sum + v, 0) / values.length;
    const shift = mean(stops) - mean(form);
    expect(
      most(
        stops,
        form.map((v) => v + shift),
      ),
    ).toBeLessThan(0.4);
  });

  it('puts few in, between the ends and on the line, closer together near the lamp; again, nothing changes', () => {
    expect(steady.length).toBeLessThanOrEqual(12);
    expect([steady[0], steady.at(-1)]).toEqual(raked);
    const east = steady.map(({ aim }) => aim[0]);
    const ways = east.slice(1).map((v, i) => v - (east[i] as number));
    expect(Math.min(...ways)).toBe(ways[0]);
    expect(Math.min(...ways)).toBeGreaterThan(0);
    for (const { aim, position } of steady) expect([aim[1], aim[2], position]).toEqual([0, 1.5, lamp]);
    expect(steadyPath(steady)).toBe(steady);
  });

  it('leaves a sweep of twenty degrees square on to its wall, a walk, and a lamp that stands', () => {
    const aside = (east: number): Waypoint => ({ time: 0, position: [0, -5, 1.5], aim: [east, 0, 1.5] });
    const square = [aside(-0.88), aside(0.88)];
    expect(steadyPath(square)).toBe(square);
    const walk = [at(3), { ...at(20), position: [0, -2, 1.4] as Position }];
    expect(steadyPath(walk)).toBe(walk);
    expect(steadyPath([at(3)])).toHaveLength(1);
  });

  it('puts no waypoint where the lamp would be aimed at itself, and leaves the rest alike to both sides', () => {
    const through = (east: number): Waypoint => ({ time: 0, position: [0, -2, 1.5], aim: [east, -2, 1.5] });
    const east = steadyPath([through(-1), through(1)]).map(({ aim }) => aim[0]);
    expect(east.length).toBeGreaterThan(10);
    for (const [i, v] of east.entries()) {
      expect(Math.abs(v)).toBeGreaterThan(1e-4);
      expect(v).toBeCloseTo(-(east.at(-1 - i) as number), 9);
    }
  });

  it('divides both ways from the place that is nearest, alike', () => {
    const aside = (east: number): Waypoint => ({ time: 0, position: [0, -2, 1.5], aim: [east, 0, 1.5] });
    const east = steadyPath([aside(-6), aside(6)]).map(({ aim }) => aim[0]);
    expect(east.length).toBeGreaterThan(4);
    east.forEach((v, i) => {
      expect(v).toBeCloseTo(-(east.at(-1 - i) as number), 9);
    });
  });

  it('never makes more than 24 of a line that all but goes through the lamp, and none of one with as many', () => {
    const close = (east: number): Waypoint => ({ time: 0, position: [0, -0.01, 1.5], aim: [east, 0, 1.5] });
    expect(steadyPath([close(-4000), close(4000)]).length).toBeLessThanOrEqual(24);
    const many = Array.from({ length: 24 }, (_, i) => at(3 + 4 * i));
    expect(steadyPath(many)).toBe(many);
  });
});

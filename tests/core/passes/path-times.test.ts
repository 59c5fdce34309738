import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dividedPath } from '../../../core/passes/divided-path.ts';
import { evenSpeedTimes } from '../../../core/passes/even-speed-times.ts';
import { legsOf, pathKind } from '../../../core/passes/path-legs.ts';
import { pathSpeed } from '../../../core/passes/path-speed.ts';
import { retimedPass } from '../../../core/passes/retimed-pass.ts';
import { firstStroke } from '../../../core/passes/stroke.ts';
import { timesFromWeights } from '../../../core/passes/times-from-weights.ts';
import type { Pass, Position, Waypoint } from '../../../core/setup/schema/setup.ts';

const at = (position: Position, aim: Position, time = 0): Waypoint => ({ time, position, aim });
const lamp: Position = [0, -5, 1.5];
const sweep = [at(lamp, [-2, 0, 1.5], 0), at(lamp, [0, 0, 1.5], 1), at(lamp, [6, 0, 1.5], 2)];

describe('firstStroke', () => {
  it('is the on-time in equal parts: 12 s in 3 strokes from 2 s is 2 s to 6 s', () => {
    expect(firstStroke({ on: 2, off: 14, strokes: 3 })).toEqual({ on: 2, off: 6, seconds: 4 });
    expect(firstStroke({ on: 0.1, off: 0.4, strokes: 1 }).off).toBe(0.4);
  });
});

describe('pathSpeed', () => {
  it('is way over time, leg by leg: 2 m and 6 m in 1 s each, and what the lamp turns by (Pythagoras)', () => {
    const speed = pathSpeed(sweep);
    expect(speed?.lampMetresPerSecond).toEqual([0, 0]);
    expect(speed?.aimMetresPerSecond).toEqual([2, 6]);
    expect(speed?.turnRadiansPerSecond[0]).toBeCloseTo(Math.atan(2 / 5), 12);
    expect(speed?.turnRadiansPerSecond[1]).toBeCloseTo(Math.atan(6 / 5), 12);
    expect(pathSpeed(sweep.slice(0, 1))).toBeNull();
  });

  it('a lamp carried past what it points at square on goes as fast as its light, and does not turn', () => {
    const walk = [at([0, 0, 1], [0, 4, 1], 0), at([3, 0, 1], [3, 4, 1], 6)];
    const speed = pathSpeed(walk);
    expect(speed?.lampMetresPerSecond).toEqual([0.5, 0.5]);
    expect(speed?.aimMetresPerSecond).toEqual([0.5, 0.5]);
    expect(speed?.turnRadiansPerSecond[1]).toBeCloseTo(0, 12);
  });
});

describe('pathKind', () => {
  it('tells what moves: nothing, the aim, the lamp', () => {
    expect(pathKind(sweep.slice(0, 1))).toBe('still');
    expect(pathKind(sweep)).toBe('sweep');
    expect(pathKind([at([0, 0, 1], [0, 4, 1], 0), at([0.1, 0, 1], [0, 4, 1], 6)])).toBe('walk');
  });
});

describe('evenSpeedTimes', () => {
  it('gives each leg of a sweep time by what the lamp turns: atan(2/5) and atan(6/5) of 8 s', () => {
    const [on, middle, off] = evenSpeedTimes(sweep, { on: 1, off: 9 }) as [number, number, number];
    expect([on, off]).toEqual([1, 9]);
    const [first, second] = [Math.atan(2 / 5), Math.atan(6 / 5)];
    expect(middle).toBeCloseTo(1 + (8 * first) / (first + second), 9);
  });

  it('goes by the lamp on a walk, wherever it aims; by its light on a leg where it rests', () => {
    const round = [at([0, 0, 1], [0, 4, 1]), at([3, 0, 1], [0, 4, 1]), at([3, 0, 1], [1, 4, 1])];
    const times = evenSpeedTimes(round, { on: 0, off: 4 });
    expect(times[1]).toBeCloseTo(3, 12);
  });

  it('rises strictly whatever the path, from on to off; one speed on all legs that move (rel 1e-9; 200 runs, seed 7)', () => {
    // to the centimetre
    const coordinate = fc.integer({ min: -5000, max: 5000 }).map((v) => v / 100);
    const place = fc.tuple(coordinate, coordinate, coordinate);
    fc.assert(
      fc.property(fc.array(place, { minLength: 2, maxLength: 20 }), (aims) => {
        const path = aims.map((aim) => at([0, -60, 1], aim as Position));
        const times = evenSpeedTimes(path, { on: 0.5, off: 6.5 });
        expect([times[0], times.at(-1)]).toEqual([0.5, 6.5]);
        for (let i = 1; i < times.length; i++) expect(times[i]).toBeGreaterThan(times[i - 1] as number);
        const legs = legsOf(path.map((w, i) => ({ ...w, time: times[i] as number })));
        const whole = legs.reduce((sum, leg) => sum + leg.turnRadians, 0);
        // legs that are next to nothing get the least time that a leg gets
        if (legs.some(({ turnRadians }) => turnRadians < (whole / legs.length) * 2e-3)) return;
        for (const leg of legs) expect((leg.turnRadians / leg.seconds) * (6 / whole)).toBeCloseTo(1, 6);
      }),
      { numRuns: 200, seed: 7 },
    );
  });
});

describe('timesFromWeights', () => {
  it('takes weights of nought for legs that are gone as fast as can be, and no weight at all for even ones', () => {
    expect(timesFromWeights([0, 0], { on: 0, off: 2 })).toEqual([0, 1, 2]);
    const [, middle] = timesFromWeights([0, 1], { on: 0, off: 2 }) as [number, number, number];
    expect(middle).toBeGreaterThan(0);
    expect(middle).toBeLessThan(0.002);
  });
});

describe('timesFromWeights with least times', () => {
  it('gives each leg its least, and shares out the rest by weight: 1 s and 1 s of 10 s, then 8 s as 3 to 1', () => {
    expect(timesFromWeights([3, 1], { on: 0, off: 10 }, [1, 1])).toEqual([0, 7, 10]);
  });
  it('is quicker where the least times would fill the stroke', () => {
    const [, middle] = timesFromWeights([0, 1], { on: 0, off: 1 }, [3, 1]) as [number, number, number];
    // nine tenths of it as 3 to 1, the rest for the other leg but for next to nothing
    expect(middle).toBeCloseTo(0.675, 3);
  });
});

describe('retimedPass', () => {
  const pass = { on: 0, off: 4, strokes: 2, waypoints: [sweep[0], { ...sweep[2], time: 2 }] } as unknown as Pass;
  it('stretches one stroke with the on-time: from 2 × 2 s to 2 × 5 s, 3 s later', () => {
    const next = retimedPass(pass, 3, 13) as Pass;
    expect(next.waypoints.map(({ time }) => time)).toEqual([3, 8]);
    expect(next).toMatchObject({ on: 3, off: 13, strokes: 2 });
  });
  it('leaves the waypoint of a lamp that stands', () => {
    const still = { ...pass, waypoints: pass.waypoints.slice(0, 1) };
    expect(retimedPass(still, 1, 2)?.waypoints).toBe(still.waypoints);
  });
});

describe('dividedPath', () => {
  const raked = [at(lamp, [0, -3, 1.5]), at(lamp, [0, 15, 1.5])];
  const waysOf = (path: readonly Waypoint[]) =>
    path.slice(1).map(({ aim }, i) => aim[1] - (path[i] as Waypoint).aim[1]);

  it('puts waypoints on the path until no leg is longer than asked for: nearer the lamp, closer together', () => {
    const path = dividedPath(raked, 0.4);
    expect([path[0], path.at(-1)]).toEqual(raked);
    path.slice(1).forEach(({ aim, position }, i) => {
      const before = path[i] as Waypoint;
      expect(aim[0]).toBe(0);
      expect(position).toEqual(lamp);
      expect((aim[1] - before.aim[1]) / (before.aim[1] - lamp[1])).toBeLessThanOrEqual(0.4);
    });
    const ways = waysOf(path);
    expect(ways[0]).toBeLessThan((ways.at(-1) as number) / 2);
  });

  it('stops at 16 legs, and halves on only at the ends; again, nothing changes', () => {
    const path = dividedPath(raked, 0.01);
    expect(path.length - 1).toBe(16 + 6);
    const ways = waysOf(path);
    expect(ways[0]).toBeCloseTo((ways[3] as number) / 4, 2);
    expect(dividedPath(path, 0.01)).toBe(path);
    const coarse = dividedPath(raked, 0.4);
    expect(dividedPath(coarse, 0.4)).toBe(coarse);
  });

  it('leaves a path with legs short enough, and one that is shorter than a millimetre', () => {
    expect(dividedPath(sweep, 2)).toBe(sweep);
    const tiny = [at(lamp, [0, 0, 1.5]), at(lamp, [0.0004, 0, 1.5])];
    expect(dividedPath(tiny, 1e-9)).toHaveLength(2);
  });
});

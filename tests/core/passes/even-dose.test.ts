import { describe, expect, it, vi } from 'vitest';
import type { Vec3 } from '../../../core/geometry/vec.ts';
import { evenDose } from '../../../core/passes/even-dose.ts';
import { evenBeam } from '../../../core/photometry/beam.ts';
import type { Emitter } from '../../../core/photometry/emitter.ts';
import type { Position, Waypoint } from '../../../core/setup/schema/setup.ts';
import { irradianceSample } from '../../../core/trace/irradiance.ts';
import { discEmitter, stageWith, subjectOf } from '../support/scenes.ts';

vi.mock('../../../core/trace/irradiance.ts', async (original) => {
  const real = await original<typeof import('../../../core/trace/irradiance.ts')>();
  return { ...real, irradianceSample: vi.fn(real.irradianceSample) };
});

const wall = (east = 0, height = 4) => ({
  kind: 'box',
  position: [east, 0.25, 0],
  widthMetres: 10,
  depthMetres: 0.5,
  heightMetres: height,
});
const eye: Vec3 = [0, 1.5, 12];
const emitter = discEmitter(0.01, { exponent: 60, cosSpill: -1, cosSpillEven: -1, spillShare: 0 });
const at = (aim: Position, position: Position = [0, -4, 1.5]): Waypoint => ({ time: 0, position, aim });
const stroke = { on: 2, off: 10 };

describe('evenDose', () => {
  it('fills the stroke with rising times, keeps ends and lamp, and says how even it was and is', () => {
    const stage = stageWith(subjectOf('wall', [wall()]));
    const waypoints = [at([-4, 0, 1.5]), at([4, 0, 1.5])];
    const even = evenDose({ stage, eye, emitter, waypoints }, stroke);
    if (even.kind !== 'even') throw new Error('not evened');
    const times = even.waypoints.map(({ time }) => time);
    expect([times[0], times.at(-1)]).toEqual([2, 10]);
    times.slice(1).forEach((time, i) => {
      expect(time).toBeGreaterThan(times[i] as number);
    });
    expect(even.waypoints[0]?.aim).toEqual([-4, 0, 1.5]);
    expect(even.waypoints.at(-1)?.aim).toEqual([4, 0, 1.5]);
    expect(even.spreadStops).toBeLessThan(even.spreadBeforeStops);
    // the same again, from the path that came out: nothing more is put in
    const again = evenDose({ stage, eye, emitter, waypoints: even.waypoints }, stroke);
    expect(again).toEqual(even);
  });

  it('of a lamp in front of the middle of a wall gives both halves the same time (5 %)', () => {
    const stage = stageWith(subjectOf('wall', [wall()]));
    const even = evenDose({ stage, eye, emitter, waypoints: [at([-4, 0, 1.5]), at([4, 0, 1.5])] }, stroke);
    if (even.kind !== 'even') throw new Error('not evened');
    const middle = even.waypoints.find(({ aim }) => Math.abs(aim[0]) < 1e-9);
    expect(middle?.time).toBeGreaterThan(6 - 0.2);
    expect(middle?.time).toBeLessThan(6 + 0.2);
  });

  it('of a path of 256 waypoints takes less than three times the work of one of 16, and evens it as well (0.2 stop)', () => {
    const stage = stageWith(subjectOf('wall', [wall()]));
    // to and fro over the wall, as a hand does
    const path = (count: number) =>
      Array.from({ length: count }, (_, i) =>
        at([-4 + (8 * i) / (count - 1), 0, 1.5 + 0.3 * Math.sin((20 * i) / count)]),
      );
    const evenOf = (count: number) => {
      vi.mocked(irradianceSample).mockClear();
      const even = evenDose({ stage, eye, emitter, waypoints: path(count) }, stroke);
      if (even.kind !== 'even') throw new Error('not evened');
      return { even, work: vi.mocked(irradianceSample).mock.calls.length };
    };
    const [few, many] = [evenOf(16), evenOf(256)];
    expect(few.work).toBeGreaterThan(0);
    expect(many.work).toBeLessThan(3 * few.work);
    const { waypoints, spreadStops, spreadBeforeStops } = many.even;
    expect(waypoints.map(({ aim }) => aim)).toEqual(path(256).map(({ aim }) => aim));
    expect([waypoints[0]?.time, waypoints.at(-1)?.time]).toEqual([2, 10]);
    waypoints.slice(1).forEach(({ time }, i) => {
      expect(time).toBeGreaterThan(waypoints[i]?.time as number);
    });
    expect(spreadStops).toBeLessThan(spreadBeforeStops);
    expect(spreadStops).toBeLessThan(few.even.spreadStops + 0.2);
  });

  it('leaves out an aim in the sky, and says where on the way it lies', () => {
    const stage = stageWith(subjectOf('wall', [wall()]));
    const waypoints = [at([-4, 0, 1.5]), at([0, 0, 1.5]), at([0, 0, 60])];
    const even = evenDose({ stage, eye, emitter, waypoints }, stroke);
    if (even.kind !== 'even') throw new Error('not evened');
    const last = even.waypoints.length - 1;
    expect(even.unlit).toContain(last);
    // all of them on the way up from the middle of the wall
    const middle = even.waypoints.findIndex(({ aim }) => aim.join() === '0,0,1.5');
    expect(even.unlit.every((place) => place > middle && place <= last)).toBe(true);
  });

  it('leaves out what something keeps all light off, however long the lamp rests', () => {
    // a screen stands close before the wall’s right half, between it and the lamp; the eye looks over it from above
    const screen = { kind: 'box', position: [3, -0.6, 0], widthMetres: 5, depthMetres: 0.02, heightMetres: 3 };
    const stage = stageWith(subjectOf('wall', [wall()]), subjectOf('screen', [screen]));
    const over: Vec3 = [3, 9, 0.9];
    const waypoints = [at([-4, 0, 1.5]), at([4, 0, 1.5])];
    const even = evenDose({ stage, eye: over, emitter, waypoints }, stroke);
    if (even.kind !== 'even') throw new Error('not evened');
    expect(even.unlit).toContain(even.waypoints.length - 1);
    expect(even.unlit).not.toContain(0);
  });

  it('of a lamp that shines all round, aim it as one may, changes nothing: each place has the same share of all times', () => {
    const stage = stageWith(subjectOf('wall', [wall()]));
    const globe: Emitter = { shape: 'sphere', halfWidthMetres: 0.05, halfHeightMetres: 0, beam: evenBeam };
    const waypoints = [at([-4, 0, 1.5]), at([4, 0, 1.5])];
    const even = evenDose({ stage, eye, emitter: globe, waypoints }, stroke);
    if (even.kind !== 'even') throw new Error('not evened');
    expect(even.spreadStops).toBeCloseTo(even.spreadBeforeStops, 9);
    // 4 m before the middle and 4 m aside: inverse square and cosine make 2^1.5, 1.5 stops for the point at its middle
    expect(Math.abs(even.spreadStops - 1.5)).toBeLessThan(0.1);
    expect(even.unlit).toEqual([]);
  });

  it('cannot be evened where no light reaches anything along the way', () => {
    const stage = stageWith(subjectOf('wall', [wall()]));
    // from behind the wall
    const waypoints = [at([-4, 0, 1.5], [0, 4, 1.5]), at([4, 0, 1.5], [0, 4, 1.5])];
    const result = evenDose({ stage, eye, emitter, waypoints }, stroke);
    expect(result.kind).toBe('cannot');
    expect(result.unlit.slice(0, 3)).toEqual([0, 0.5, 1]);
  });
});

import { describe, expect, it } from 'vitest';
import type { Waypoint } from '../../../core/setup/schema/setup.ts';
import { withDose } from '../../../core/sweep/with-dose.ts';
import { barn, barnKey, foundIn, wallPass, wallSetup } from './sweep-setups.ts';

describe('withDose', () => {
  const { pass, frame, lamp } = foundIn(
    wallSetup({ lowestLevelPercent: 5 }, { levelPercent: 50, on: 1, off: 9 }),
    wallPass,
  );
  const dosed = (factor: number) => withDose(pass, lamp, frame, factor);

  it('turns the level first: down to the lamp’s lowest and up to full, the count as it is', () => {
    for (const factor of [0.1, 0.3, 1, 2])
      expect(dosed(factor)).toEqual({ pass: { ...pass, levelPercent: 50 * factor }, missStops: null });
  });

  it('then the count, with dose = level x time (rel 1e-9)', () => {
    const short = dosed(0.02);
    expect(short.missStops).toBeNull();
    expect(short.pass.levelPercent).toBe(5);
    expect(short.pass.off - short.pass.on).toBeCloseTo((50 * 8 * 0.02) / 5, 9);
    const long = dosed(2.4);
    expect(long.pass.levelPercent).toBe(100);
    expect(long.pass.off - long.pass.on).toBeCloseTo((50 * 8 * 2.4) / 100, 9);
    expect(long.pass.off).toBeLessThanOrEqual(10);
  });

  it('a whole frame is longer than its marking (10 s is 2^(10/3) s, checkvalues.md T8): the level makes up for it', () => {
    const whole = dosed(2.51);
    expect(whole.missStops).toBeNull();
    expect(whole.pass).toMatchObject({ on: 0, off: 10 });
    expect(whole.pass.levelPercent * 2 ** (10 / 3)).toBeCloseTo(50 * 8 * 2.51, 9);
  });

  it('misses by what is left: too dark past the whole frame at full, too bright under 0.01 s at the lowest (abs 1e-9)', () => {
    const dark = dosed(100);
    expect(dark.pass).toMatchObject({ levelPercent: 100, on: 0, off: 10 });
    expect(dark.missStops).toBeCloseTo(Math.log2((100 * 2 ** (10 / 3)) / (50 * 8 * 100)), 9);
    const bright = dosed(1e-6);
    expect(bright.pass.levelPercent).toBe(5);
    expect(bright.missStops).toBeCloseTo(Math.log2((5 * 0.01) / (50 * 8 * 1e-6)), 9);
  });

  it('just at a limit nothing is missed; a thousandth of a stop past it is', () => {
    const most = (100 * 2 ** (10 / 3)) / (50 * 8);
    expect(dosed(most).missStops).toBeNull();
    expect(dosed(most * 2 ** 0.001).missStops).toBeCloseTo(-0.001, 9);
    const least = (5 * 0.01) / (50 * 8);
    expect(dosed(least).missStops).toBeNull();
    expect(dosed(least / 2 ** 0.001).missStops).toBeCloseTo(0.001, 9);
  });

  it('a lamp that can’t be dimmed changes its count only', () => {
    const torch = foundIn(barn, barnKey);
    const half = withDose(torch.pass, torch.lamp, torch.frame, 0.5);
    expect(half.pass).toMatchObject({ levelPercent: 100, on: 1, off: 3 });
    // walked from 0 to 4 s and lit from 1 to 5 s: half as long, the same way at twice the pace
    expect(half.pass.waypoints.map(({ time }) => time)).toEqual([1, 2.5]);
    expect(half.pass.waypoints[0]?.position).toEqual([5.25, 6, 1]);
    expect(half.pass.waypoints[1]?.position).toEqual([6, 6, 1]);
  });

  it('a walk that comes through its own aim where it would be cut stays as it is, and is missed', () => {
    const torch = foundIn(barn, barnKey);
    // half-way, where the lamp goes on, it is where it points: such a waypoint no document takes
    const waypoints: Waypoint[] = [
      { time: 0, position: [0, 0, 1], aim: [2, 0, 1] },
      { time: 2, position: [2, 0, 1], aim: [0, 0, 1] },
    ];
    const through = { ...torch.pass, on: 1, off: 3, waypoints };
    const half = withDose(through, torch.lamp, torch.frame, 0.5);
    expect(half.pass).toEqual(through);
    expect(half.missStops).toBeCloseTo(1, 9);
  });

  it('a lamp that goes its way twice is stretched stroke by stroke: half as long, each stroke half as long', () => {
    const torch = foundIn(barn, barnKey);
    const twice = { ...torch.pass, strokes: 2 };
    const half = withDose(twice, torch.lamp, torch.frame, 0.5);
    // lit from 1 to 5 s, so that the first stroke ends at 3 s; now from 1 to 3 s, and it ends at 2 s
    expect(half.pass).toMatchObject({ on: 1, off: 3, strokes: 2 });
    expect(half.pass.waypoints.map(({ time }) => time)).toEqual([1, 2]);
  });
});

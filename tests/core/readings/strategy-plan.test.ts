import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Strategy } from '../../../core/readings/strategy-frames.ts';
import { type StrategyPlan, strategyPlan } from '../../../core/readings/strategy-plan.ts';
import { formatSetup } from '../../../core/setup/format-setup.ts';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import type { Pass, Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import { placeOnPath } from '../../../core/world/world.ts';
import { boxAt, still } from '../support/cautions.ts';
import { loneOak } from '../support/lone-oak.ts';
import { onePassSetup } from '../support/scenes.ts';

const strategies: readonly Strategy[] = ['one-frame', 'standing', 'separate'];
const planOf = (setup: Setup, strategy: Strategy, scheme = setup.schemes[0] as Scheme): StrategyPlan =>
  strategyPlan(setup, scheme, strategy);
const passesOf = ({ scheme }: StrategyPlan): Pass[] => scheme.frames.flatMap(({ passes }) => passes);
const sample = (name: string): Setup => parseSetup(readFileSync(`assets/setups/${name}.json`, 'utf8'));

/** A wall lit square on from 5 m, painted at f/8 ISO 200 for 4 s. */
const wall = (lamp: object = {}, pass: object = {}, frame: object = {}): Setup =>
  onePassSetup({
    camera: { position: [2, -6, 1.5], aim: [0, 0, 1.5], focalLengthMm: 24 },
    lamp: { lowestLevelPercent: 1, ...lamp },
    pass: { ...still([0, -5, 1.5], [0, 0, 1.5]), off: 4, ...pass },
    frame: { aperture: 8, iso: 200, focusMetres: 6, ...frame },
    subjects: [boxAt('wall', [0, 0.5, 0], [4, 1, 3])],
  });

describe('strategyPlan', () => {
  it('asks for 256 times less light at f/2.8 ISO 6400 than at f/8 ISO 200 (trade notes: 260 times)', () => {
    const { doseRatio, scheme } = planOf(wall(), 'one-frame');
    expect(scheme.frames.map(({ aperture, iso }) => [aperture, iso])).toEqual([[2.8, 6400]]);
    expect(1 / doseRatio).toBeCloseTo(256, 6);
  });

  it.each(strategies)('%s: brings the target to the night level, whatever that is (a sixth of a stop)', (strategy) => {
    for (const nightLevelStops of [-2.5, -1.5, 0]) {
      const [pass] = planOf({ ...wall(), nightLevelStops }, strategy).passes;
      expect(pass?.missStops).toBeNull();
      expect(Math.abs((pass?.stops ?? 9) - nightLevelStops)).toBeLessThan(1 / 6);
    }
  });

  it.each(strategies)(
    '%s: gives a scheme that the parser takes, with lamps, places and colours as they were',
    (strategy) => {
      for (const name of ['lone-tree', 'beached-boat', 'natural-arch', 'bothy-in-snow', 'lesson-ratio-ladder']) {
        const setup = sample(name);
        for (const scheme of setup.schemes) {
          if (scheme.frames.every(({ passes }) => passes.length === 0)) continue;
          const plan = planOf(setup, strategy, scheme);
          const made = { ...setup, schemes: [{ ...plan.scheme, id: 'made' }], lesson: null };
          expect(parseSetup(formatSetup(made))).toEqual(made);
          const kept = ({ lampId, waypoints, cloth, snootDegrees, gels }: Pass) => ({
            lampId,
            waypoints,
            cloth,
            snootDegrees,
            gels: gels.filter(({ shiftMired, colour }) => shiftMired !== 0 || colour),
          });
          expect(passesOf(plan).map(kept)).toEqual(
            scheme.frames.flatMap(({ passes }) => [...passes].sort((a, b) => a.on - b.on).map(kept)),
          );
        }
      }
    },
  );

  it.each(strategies)('%s: keeps the rungs of a ladder of ratios a stop apart (abs 0.2 stop)', (strategy) => {
    const setup = sample('lesson-ratio-ladder');
    const apart = ['fill-2', 'fill-3', 'fill-4'].map((id) => {
      const [key, fill] = planOf(
        setup,
        strategy,
        setup.schemes.find((each) => each.id === id),
      ).passes;
      return (key?.stops ?? 0) - (fill?.stops ?? 0);
    }) as [number, number, number];
    expect(Math.abs(apart[1] - apart[0] - 1)).toBeLessThan(0.2);
    expect(Math.abs(apart[2] - apart[1] - 1)).toBeLessThan(0.2);
  });

  it('one frame, the lone oak from both sides: can’t be walked in 20 s, and the seconds say so', () => {
    const frame = (id: string) => ({ seconds: 8, passes: [{ side: id as 'left' | 'right', on: 1, off: 4 }] });
    const oak = loneOak([frame('right'), frame('left')]);
    const [first, ...others] = (oak.schemes[0] as Scheme).frames;
    if (!first) throw new Error('frames');
    const sky = { ...first, id: 'sky', purpose: 'sky' as const, seconds: 20, iso: 5000, aperture: 2, passes: [] };
    const scheme = { ...(oak.schemes[0] as Scheme), frames: [sky, first, ...others] };
    const { walk, passes } = strategyPlan(oak, scheme, 'one-frame');
    const counts = passes.reduce((sum, { seconds }) => sum + seconds, 0);
    // 16 to 18 m round the back, 20 to 22.5 s at 0.8 m/s (trade notes, scene S3), and the counts
    expect(walk.neededSeconds - counts).toBeGreaterThanOrEqual(20);
    expect(walk.neededSeconds - counts).toBeLessThanOrEqual(22.5);
    expect(walk).toMatchObject({ isPossible: false, availableSeconds: 20 });
    const slow = strategyPlan(oak, { ...scheme, frames: [{ ...sky, seconds: 40 }, first, ...others] }, 'one-frame');
    expect(slow.walk.isPossible).toBe(true);
    const apart = strategyPlan(oak, scheme, 'separate');
    expect(apart.walk.isPossible).toBe(true);
    expect(apart.scheme.frames).toHaveLength(3);
    expect(apart.scheme.frames[2]?.delaySeconds).toBeGreaterThan(apart.walk.longestWaitSeconds);
  });

  it.each(['one-frame', 'separate'] as const)(
    '%s: a walked lamp goes the way that it was lit on, 5 to 10 m of 10, whatever waypoints lie before',
    (strategy) => {
      const waypoints = [0, 2, 4, 10].map((time) => ({ time, position: [time - 7, -5, 1], aim: [0, 0, 1] }));
      const setup = wall({}, { on: 5, off: 10, waypoints }, { seconds: 20 });
      const plan = planOf(setup, strategy);
      const made = { ...setup, schemes: [plan.scheme], lesson: null };
      expect(parseSetup(formatSetup(made))).toEqual(made);
      const [pass] = passesOf(plan) as [Pass];
      const path = pass.waypoints.map(({ time, position, aim }) => ({ seconds: time, position, aim }));
      expect(placeOnPath(path, pass.on).position[0]).toBeCloseTo(-2, 9);
      expect(placeOnPath(path, pass.off).position[0]).toBeCloseTo(3, 9);
    },
  );

  it('standing: lit for the whole shutter, on stands; a walked lamp stands half-way', () => {
    const walked = {
      waypoints: [
        { time: 0, position: [-4, -5, 1], aim: [-1, 0, 1] },
        { time: 4, position: [2, -5, 1], aim: [1, 0, 1] },
      ],
    };
    const plan = planOf(wall({}, walked), 'standing');
    const [frame] = plan.scheme.frames;
    expect(passesOf(plan)).toMatchObject([
      { held: 'stand', on: 0, off: frame?.seconds, waypoints: [{ position: [-1, -5, 1], aim: [0, 0, 1] }] },
    ]);
    expect(plan.passes[0]?.wasWalked).toBe(true);
  });

  it('standing, too bright even under nine stops of ND at the lowest level: says by how much and what would do it', () => {
    const [bright] = planOf(
      wall({ output: { from: 'peak-candela', candela: 1000 }, lowestLevelPercent: 100 }),
      'standing',
    ).passes;
    expect(bright).toMatchObject({ levelPercent: 100, ndStops: 9 });
    expect(bright?.missStops).toBeGreaterThan(0.5);
    expect(bright?.advice.join(' ')).toMatch(
      /stops too bright at 5\.0 m.*Step back to \d+.*cloth or ND.*ower the ISO.*frame of its own/,
    );
    const [less] = planOf(
      wall({ output: { from: 'peak-candela', candela: 40 }, lowestLevelPercent: 100 }),
      'standing',
    ).passes;
    expect(less).toMatchObject({ missStops: null, advice: [] });
  });

  it('one frame, too dark at full level for all of the shutter: says by how much and what would do it', () => {
    const weak = wall({ output: { from: 'peak-candela', candela: 5 } }, {}, { purpose: 'sky', aperture: 8, iso: 400 });
    const [dark] = planOf(weak, 'one-frame').passes;
    expect(dark).toMatchObject({ levelPercent: 100, ndStops: 0 });
    expect(dark?.missStops).toBeLessThan(-0.5);
    expect(dark?.advice.join(' ')).toMatch(/stops too dark.*Come to .*aise the ISO.*frame of its own/);
  });

  it('separate: each in a frame of its own behind the sky, as long as its count, and a blend of all', () => {
    const plan = planOf(sample('beached-boat'), 'separate');
    expect(plan.scheme.frames.map(({ purpose, passes }) => [purpose, passes.length])).toEqual([
      ['sky', 0],
      ['painted', 1],
      ['painted', 1],
    ]);
    expect(plan.scheme.blend.frames.map(({ frameId }) => frameId)).toEqual(plan.scheme.frames.map(({ id }) => id));
    for (const { seconds, passes } of plan.scheme.frames.slice(1))
      for (const { off } of passes) expect(off).toBeLessThan(seconds);
  });

  it.each(strategies)(
    '%s: of a scheme without lamps is its sky, at the light that it asked for, and nobody walks',
    (strategy) => {
      const setup = wall();
      const scheme = setup.schemes[0] as Scheme;
      const plan = planOf(setup, strategy, {
        ...scheme,
        frames: scheme.frames.map((frame) => ({ ...frame, passes: [] })),
      });
      expect(plan.passes).toEqual([]);
      expect(plan.doseRatio).toBe(1);
      expect(plan.walk).toMatchObject({ isPossible: true, neededSeconds: 0, longestWaitSeconds: 0 });
      expect(plan.scheme.frames.length).toBeGreaterThan(0);
    },
  );

  it('separate names the sky so that painted frames can have their own name', () => {
    const setup = wall({}, {}, { id: 'painted', purpose: 'sky' });
    const { frames } = planOf(setup, 'separate').scheme;
    expect(frames.map(({ id, purpose }) => [id, purpose])).toEqual([
      ['sky', 'sky'],
      ['painted', 'painted'],
    ]);
  });

  it('separate keeps frames of the blue hour, and puts no stars beside them', () => {
    const jetty = sample('timber-jetty');
    const plan = planOf(jetty, 'separate', jetty.schemes.find(({ id }) => id === 'focus') as Scheme);
    expect(plan.scheme.frames.map(({ id }) => id)).toEqual(['blue-2', 'blue-5', 'blue-20', 'painted']);
  });

  it('a strategy of a strategy is that of the first: density comes off again', () => {
    const setup = wall();
    const once = planOf(setup, 'separate');
    const dim = planOf(setup, 'standing');
    expect(dim.passes[0]?.ndStops).toBeGreaterThan(0);
    const back = planOf({ ...setup, schemes: [dim.scheme] }, 'separate');
    expect(passesOf(back)[0]?.gels).toEqual(passesOf(once)[0]?.gels);
    expect(Math.abs((back.passes[0]?.stops ?? 9) - (once.passes[0]?.stops ?? -9))).toBeLessThan(1 / 3);
  });
});

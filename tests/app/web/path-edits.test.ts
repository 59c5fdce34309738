import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { EditRefused } from '../../../app/web/state/edits/edit-refused.ts';
import { setFrameNumber } from '../../../app/web/state/edits/frame-edits.ts';
import { setPassSeconds } from '../../../app/web/state/edits/pass-edits.ts';
import * as path from '../../../app/web/state/edits/path-edits.ts';
import * as points from '../../../app/web/state/edits/waypoint-edits.ts';
import { evenedPass, evenedWaypoints } from '../../../app/web/state/evened-pass.ts';
import { legsOf, pathKind } from '../../../core/passes/path-legs.ts';
import { formatSetup } from '../../../core/setup/format-setup.ts';
import { parseSetup, validateSetup } from '../../../core/setup/parse-setup.ts';
import type { Pass, Position, Setup } from '../../../core/setup/schema/setup.ts';

const stones = parseSetup(readFileSync('assets/setups/three-stones.json', 'utf8'));
const place = { schemeId: 'side', frameId: 'painted', passId: 'key' };
const passOf = (setup: Setup): Pass => setup.schemes[0]?.frames[1]?.passes[0] as Pass;
const timesOf = (setup: Setup) => passOf(setup).waypoints.map(({ time }) => time);
const still = passOf(stones);
const [{ position, aim }] = still.waypoints as [Pass['waypoints'][number]];
const sweep = path.setPathKind(stones, place, 'sweep');
const walk = path.setPathKind(stones, place, 'walk');

describe('what moves in a pass', () => {
  it('a sweep begins and ends beside the aim, from where the lamp stands, over the on-time', () => {
    const [a, b] = passOf(sweep).waypoints as [Pass['waypoints'][number], Pass['waypoints'][number]];
    expect(pathKind(passOf(sweep).waypoints)).toBe('sweep');
    expect([a.position, b.position]).toEqual([position, position]);
    for (const axis of [0, 1, 2] as const) expect((a.aim[axis] + b.aim[axis]) / 2).toBeCloseTo(aim[axis], 2);
    expect(timesOf(sweep)).toEqual([still.on, still.off]);
    expect(passOf(sweep).dwell).toBe('even-speed');
  });

  it('a walk goes 2 m to the side and keeps its aim; still again, it is as it was', () => {
    const [a, b] = passOf(walk).waypoints as [Pass['waypoints'][number], Pass['waypoints'][number]];
    expect(a.position).toEqual(position);
    expect(legsOf([a, b])[0]?.positionMetres).toBeCloseTo(2, 2);
    expect(b.aim).toEqual(aim);
    expect(passOf(path.setPathKind(walk, place, 'still'))).toEqual(still);
  });

  it('a walk with one aim made a sweep gets a way to sweep; a sweep made a walk keeps its aims', () => {
    const swept = passOf(path.setPathKind(walk, place, 'sweep'));
    expect(pathKind(swept.waypoints)).toBe('sweep');
    expect(legsOf(swept.waypoints)[0]?.aimMetres).toBeGreaterThan(0.9);
    const walked = passOf(path.setPathKind(sweep, place, 'walk'));
    expect(walked.waypoints.map((w) => w.aim)).toEqual(passOf(sweep).waypoints.map((w) => w.aim));
    expect(path.setPathKind(sweep, place, 'sweep')).toBe(sweep);
  });
});

describe('waypoints', () => {
  it('one put in lies in the middle of its leg; at even speed half the time goes by before it', () => {
    const three = passOf(points.addWaypoint(sweep, place, 0));
    expect(three.waypoints).toHaveLength(3);
    expect(three.waypoints[1]?.time).toBeCloseTo((still.on + still.off) / 2, 3);
    expect(three.waypoints[1]?.aim[0]).toBeCloseTo(aim[0], 2);
  });

  it('one put after the last goes as far on again, in the same stroke', () => {
    const three = passOf(points.addWaypoint(walk, place, 1));
    const legs = legsOf(three.waypoints);
    expect(legs[1]?.positionMetres).toBeCloseTo(legs[0]?.positionMetres as number, 2);
    expect(three.waypoints.at(-1)?.time).toBe(still.off);
    const typed = points.addWaypoint(path.setDwell(walk, place, 'typed'), place, 1);
    expect(timesOf(typed)).toEqual([still.on, still.on + (still.off - still.on) / 2, still.off]);
  });

  it('one taken out leaves the ends their times; two stay', () => {
    const typed = path.setDwell(points.addWaypoint(sweep, place, 0), place, 'typed');
    expect(timesOf(points.removeWaypoint(typed, place, 0))).toEqual([still.on, still.off]);
    expect(points.removeWaypoint(sweep, place, 0)).toBe(sweep);
  });

  it('moved and aimed alone, the others stay; at even speed times follow', () => {
    const three = points.addWaypoint(sweep, place, 0);
    const next = points.aimWaypoint(three, place, 1, passOf(three).waypoints[0]?.aim.with(2, 3) as Position);
    expect(passOf(next).waypoints[0]?.aim).toEqual(passOf(three).waypoints[0]?.aim);
    const legs = legsOf(passOf(next).waypoints);
    expect((legs[0]?.turnRadians as number) / (legs[0]?.seconds as number)).toBeCloseTo(
      (legs[1]?.turnRadians as number) / (legs[1]?.seconds as number),
      6,
    );
    const moved = points.moveWaypoint(three, place, 2, [1, 2, 3]);
    expect(passOf(moved).waypoints[2]?.position).toEqual([1, 2, 3]);
    expect(passOf(moved).waypoints[1]).toEqual({ ...passOf(three).waypoints[1], time: expect.any(Number) });
    expect(points.moveWaypoint(three, place, 1, passOf(three).waypoints[1]?.aim as Position)).toBe(three);
  });

  it('a typed time ends even speed; one that is not between its neighbours, or not in the stroke, is refused', () => {
    const three = points.addWaypoint(sweep, place, 0);
    const typed = points.timeWaypoint(three, place, 1, still.on + 0.5);
    expect(passOf(typed).dwell).toBe('typed');
    expect(timesOf(typed)[1]).toBe(still.on + 0.5);
    for (const [index, seconds] of [
      [1, still.on],
      [1, still.off],
      [2, still.off + 1],
      [0, timesOf(three)[1] as number],
    ] as const)
      expect(() => points.timeWaypoint(three, place, index, seconds)).toThrow(EditRefused);
  });
});

describe('strokes', () => {
  const long = setFrameNumber(sweep, place, 'seconds', 30);
  const seconds = still.off - still.on;
  it('keep their time: three last three times as long, and one again as long as before', () => {
    const three = path.setStrokes(long, place, 3);
    expect(passOf(three)).toMatchObject({ strokes: 3, off: still.on + 3 * seconds });
    expect(timesOf(three)).toEqual(timesOf(long));
    expect(passOf(path.setStrokes(three, place, 1)).off).toBeCloseTo(still.off, 12);
  });

  it('that would run past the shutter are quicker, and end with it', () => {
    const many = passOf(path.setStrokes(long, place, 40));
    expect(many).toMatchObject({ strokes: 40, on: still.on, off: 30 });
    expect((many.waypoints.at(-1)?.time as number) - still.on).toBeCloseTo((30 - still.on) / 40, 9);
    expect(validateSetup(path.setStrokes(long, place, 40))).toBeDefined();
  });

  it('a new count stretches them; a shorter frame too', () => {
    const two = path.setStrokes(long, place, 2);
    expect(timesOf(setPassSeconds(two, place, 20)).at(-1)).toBeCloseTo(still.on + 10, 9);
    const cut = passOf(setFrameNumber(two, place, 'seconds', seconds));
    expect(cut.off - cut.on).toBeCloseTo(seconds, 9);
    expect((cut.waypoints.at(-1)?.time as number) - (cut.waypoints[0]?.time as number)).toBeCloseTo(seconds / 2, 9);
  });
});

describe('a sweep that was painted', () => {
  const aims: Position[] = [
    [-2, 7, 1],
    [0, 8, 1.5],
    [2, 7.5, 1],
  ];
  it('goes over what was drawn, from where the lamp begins, at even speed; strokes and count stay', () => {
    const painted = passOf(path.paintSweep(walk, place, aims));
    const drawn = painted.waypoints.map((w) => w.aim.join());
    expect(drawn.filter((each) => aims.some((place) => place.join() === each))).toEqual(
      aims.map((each) => each.join()),
    );
    for (const w of painted.waypoints) expect(w.position).toEqual(position);
    expect(painted).toMatchObject({ dwell: 'even-speed', on: still.on, off: still.off, strokes: 1 });
  });

  it('straight along a wall from 3 to 20 m keeps the hand’s speed along legs too: no waypoint put in changes it much', () => {
    // turned by w a second, 2 m off, a lamp sends its spot r² w / 2 along the wall
    const wall = (metres: number): Position => [position[0] + Math.sqrt(metres ** 2 - 4), position[1] + 2, position[2]];
    const painted = path.paintSweep(stones, place, [wall(3), wall(20)]);
    const count = passOf(painted).waypoints.length;
    expect(count).toBeLessThanOrEqual(12);
    expect(path.isSteady(passOf(painted))).toBe(true);
    const spotSpeeds = (setup: Setup) => {
      const { waypoints } = passOf(setup);
      return Array.from({ length: 69 }, (_, i) => {
        const east = wall(3 + i / 4 - (i === 68 ? 1e-3 : 0))[0];
        const k = waypoints.findIndex((w) => w.aim[0] > east) - 1;
        const leg = legsOf(waypoints)[k];
        return (leg?.aimMetres ?? Number.NaN) / (leg?.seconds ?? Number.NaN);
      });
    };
    const before = spotSpeeds(painted);
    for (let leg = 0; leg < count - 1; leg++)
      spotSpeeds(points.addWaypoint(painted, place, leg)).forEach((speed, i) => {
        expect(Math.abs(Math.log2(speed / (before[i] as number)))).toBeLessThan(0.25);
      });
    const seconds = still.off - still.on;
    const turn = Math.acos(2 / 20) - Math.acos(2 / 3);
    before.forEach((speed, i) => {
      const even = (((3 + i / 4) ** 2 / 2) * turn) / seconds;
      expect(Math.abs(Math.log2(speed / even))).toBeLessThan(0.4);
    });
  });

  it('gets waypoints where a leg has become long, once even speed is asked for again, and none while it is dragged', () => {
    expect(path.isSteady(passOf(sweep))).toBe(true);
    const dragged = points.aimWaypoint(sweep, place, 1, [400, 8, 1]);
    expect(passOf(dragged).waypoints).toHaveLength(2);
    expect(path.isSteady(passOf(dragged))).toBe(false);
    const again = path.setDwell(dragged, place, 'even-speed');
    expect(passOf(again).waypoints.length).toBeGreaterThan(4);
    expect(passOf(again).waypoints.length).toBeLessThanOrEqual(24);
    expect(path.setDwell(again, place, 'even-speed')).toBe(again);
    const typed = path.setDwell(dragged, place, 'typed');
    expect(passOf(typed).waypoints).toHaveLength(2);
    expect(passOf(path.setDwell(typed, place, 'even-speed')).waypoints).toEqual(passOf(again).waypoints);
  });

  it('over a lamp’s own place is refused', () => {
    expect(() => path.paintSweep(stones, place, [aims[0] as Position, position])).toThrow(EditRefused);
  });

  it('evened, its times give the stones a more even dose, and say so; one past everything is refused in words', () => {
    const even = evenedPass(path.paintSweep(stones, place, aims), place);
    if (even?.kind !== 'even') throw new Error('not evened');
    expect(even.spreadStops).toBeLessThan(even.spreadBeforeStops);
    const taken = passOf(path.takeEvened(path.paintSweep(stones, place, aims), place, evenedWaypoints(even)));
    expect(taken.dwell).toBe('even-dose');
    const away = path.paintSweep(stones, place, [
      [-1, 3000, 900],
      [1, 3000, 900],
    ]);
    expect(() => evenedWaypoints(evenedPass(away, place))).toThrow(/No dwell evens this/);
    expect(() => evenedWaypoints(evenedPass(stones, place))).toThrow(EditRefused);
  });
});

describe('any run of edits of a path', () => {
  it('leaves a setup that can be saved and read back unchanged, or is refused (300 runs, seed 9)', () => {
    const coordinate = fc.double({ min: -9000, max: 9000, noNaN: true });
    const anywhere = fc.tuple(coordinate, coordinate, fc.double({ min: -900, max: 4000, noNaN: true }));
    const index = fc.integer({ min: 0, max: 5 });
    const change = fc.oneof(
      fc.constantFrom('still', 'sweep', 'walk').map((kind) => (s: Setup) => path.setPathKind(s, place, kind as never)),
      index.map((i) => (s: Setup) => points.addWaypoint(s, place, i)),
      index.map((i) => (s: Setup) => points.removeWaypoint(s, place, i)),
      fc.tuple(index, anywhere).map(
        ([i, to]) =>
          (s: Setup) =>
            points.moveWaypoint(s, place, i, to),
      ),
      fc.tuple(index, anywhere).map(
        ([i, to]) =>
          (s: Setup) =>
            points.aimWaypoint(s, place, i, to),
      ),
      fc.tuple(index, fc.double({ min: 0, max: 12, noNaN: true })).map(
        ([i, to]) =>
          (s: Setup) =>
            points.timeWaypoint(s, place, i, to),
      ),
      fc.integer({ min: 1, max: 64 }).map((n) => (s: Setup) => path.setStrokes(s, place, n)),
      fc.constantFrom('typed', 'even-speed').map((dwell) => (s: Setup) => path.setDwell(s, place, dwell as never)),
      fc.array(anywhere, { maxLength: 16 }).map((aims) => (s: Setup) => path.paintSweep(s, place, aims)),
      fc.double({ min: 0.001, max: 20, noNaN: true }).map((v) => (s: Setup) => setPassSeconds(s, place, v)),
      fc.double({ min: 0.001, max: 40, noNaN: true }).map((v) => (s: Setup) => setFrameNumber(s, place, 'seconds', v)),
    );
    fc.assert(
      fc.property(fc.array(change, { minLength: 1, maxLength: 12 }), (changes) => {
        let setup = stones;
        for (const each of changes) {
          try {
            setup = each(setup);
          } catch (error) {
            if (!(error instanceof EditRefused)) throw error;
          }
        }
        expect(parseSetup(formatSetup(setup))).toEqual(setup);
      }),
      { numRuns: 300, seed: 9 },
    );
  });
});

import { describe, expect, it } from 'vitest';
import { luminanceOfLinearSrgb } from '../../../core/colour/srgb.ts';
import { lampDirection } from '../../../core/readings/direction.ts';
import { middleMoment } from '../../../core/readings/moments.ts';
import { targetSurface } from '../../../core/readings/target-reading.ts';
import type { Position, Setup, Waypoint } from '../../../core/setup/schema/setup.ts';
import type { SweepCell } from '../../../core/sweep/cell.ts';
import { type PassPlace, passAt } from '../../../core/sweep/pass-at.ts';
import { setupOfCell } from '../../../core/sweep/setup-of-cell.ts';
import { sweepCells } from '../../../core/sweep/sweep-cells.ts';
import { meterReceiver } from '../../../core/trace/meter.ts';
import type { SurfacePoint } from '../../../core/trace/surface-point.ts';
import { worldFromDocument } from '../../../core/world/axes.ts';
import { buildWorld, type WorldLight } from '../../../core/world/world.ts';
import { barn, barnKey, foundIn, stones, stonesKey, wallPass, wallSetup } from './sweep-setups.ts';

/** Places are kept to the micrometre. */
const roundingMetres = 2e-6;
const first = ({ pass }: SweepCell): Waypoint => pass.waypoints[0] as Waypoint;
const levelDistance = ({ position, aim }: Waypoint): number => Math.hypot(position[0] - aim[0], position[1] - aim[1]);
const hoursOf = (cell: SweepCell): number => {
  const [aim, camera] = [worldFromDocument(first(cell).aim), worldFromDocument(stones.camera.position)];
  return lampDirection(aim, camera, worldFromDocument(first(cell).position)).clockHours;
};

/** Dose at the target of a pass, lux seconds: metered with many more samples than the sweep takes. */
const meteredDose = (setup: Setup, place: PassPlace): number => {
  const { scheme, frame } = passAt(setup, place);
  const { stage, view, frames } = buildWorld(setup, scheme);
  const light = frames[scheme.frames.indexOf(frame)]?.lights.find(({ id }) => id === place.passId) as WorldLight;
  const surface = targetSurface(stage, view.position, middleMoment(light).aim) as SurfacePoint;
  return meterReceiver(stage, light.source, surface, 2000) * luminanceOfLinearSrgb(light.strength) * light.seconds;
};

describe('a sweep of angles', () => {
  const before = foundIn(stones, stonesKey).pass.waypoints[0] as Waypoint;
  const heightsMetres = [0.3, 1, 2.2];

  it.each([1, 5, 12, 36])(
    '%d steps: even steps of the clock from six, clockwise, found again by lampDirection (abs 1e-5 h)',
    (steps) => {
      const cells = sweepCells(stones, stonesKey, { kind: 'angles', steps, heightsMetres });
      expect(cells.length).toBe(steps * 3);
      cells.forEach((cell, i) => {
        const away = Math.abs(hoursOf(cell) - ((6 + (12 * (i % steps)) / steps) % 12));
        expect(Math.min(away, 12 - away)).toBeLessThan(1e-5);
      });
    },
  );

  it('keeps aim and level distance (abs 2e-6 m), and stands at the heights', () => {
    for (const [i, cell] of sweepCells(stones, stonesKey, { kind: 'angles', steps: 12, heightsMetres }).entries()) {
      expect(first(cell).aim).toEqual(before.aim);
      expect(Math.abs(levelDistance(first(cell)) - levelDistance(before))).toBeLessThan(roundingMetres);
      expect(first(cell).position[2]).toBe(heightsMetres[Math.floor(i / 12)]);
    }
  });

  it('names rows by height and columns by clock, and goes by the camera’s left first, as a clock does', () => {
    const cells = sweepCells(stones, stonesKey, { kind: 'angles', steps: 4, heightsMetres });
    expect(cells.slice(0, 4).map(({ column }) => column)).toEqual(['6:00', '9:00', '12:00', '3:00']);
    expect([0, 4, 8].map((i) => cells[i]?.row)).toEqual(['shin · 0.3 m', 'hip · 1 m', 'overhead · 2.2 m']);
    // the camera looks north, so its left is the west
    expect(first(cells[1] as SweepCell).position[0]).toBeLessThan(before.aim[0]);
    expect(new Set(cells.map(({ id }) => id)).size).toBe(12);
  });

  it('changes nothing of a pass but its place, and moves a walked path as a whole', () => {
    const { pass } = foundIn(barn, barnKey);
    const [a, b] = pass.waypoints as [Waypoint, Waypoint];
    for (const cell of sweepCells(barn, barnKey, { kind: 'angles', steps: 3, heightsMetres: [0.5, 1] })) {
      expect({ ...cell.pass, waypoints: pass.waypoints }).toEqual(pass);
      const [p, q] = cell.pass.waypoints as [Waypoint, Waypoint];
      expect([p.aim, q.aim, p.time, q.time]).toEqual([a.aim, b.aim, a.time, b.time]);
      for (const i of [0, 1, 2] as const)
        expect(q.position[i] - p.position[i]).toBeCloseTo(b.position[i] - a.position[i], 5);
    }
  });
});

describe('a sweep of heights', () => {
  it('keeps bearing and level distance (abs 2e-6 m)', () => {
    const { position } = foundIn(stones, stonesKey).pass.waypoints[0] as Waypoint;
    const heightsMetres = [0.05, 0.5, 2.5, 40];
    const cells = sweepCells(stones, stonesKey, { kind: 'heights', heightsMetres });
    cells.forEach((cell, i) => {
      const want: Position = [position[0], position[1], heightsMetres[i] as number];
      for (const axis of [0, 1, 2] as const)
        expect(Math.abs(first(cell).position[axis] - want[axis])).toBeLessThan(roundingMetres);
    });
    expect(cells.map(({ row }) => row)).toEqual(Array(4).fill('3:00'));
    expect(cells.map(({ column }) => column)).toEqual([
      'ground · 0.05 m',
      'knee · 0.5 m',
      'overhead · 2.5 m',
      'high up · 40 m',
    ]);
  });
});

describe('a sweep of distances', () => {
  it('of a small light square to a wall: level goes with the square of the distance (inverse square, rel 1e-4)', () => {
    const setup = wallSetup();
    const cells = sweepCells(setup, wallPass, { kind: 'distances', distancesMetres: [0.5, 1, 2, 4] });
    cells.forEach((cell, i) => {
      const away = [0.5, 1, 2, 4][i] as number;
      const percentSeconds = cell.pass.levelPercent * (cell.pass.off - cell.pass.on);
      expect(percentSeconds / (500 * (away / 4) ** 2)).toBeCloseTo(1, 4);
      expect(cell).toMatchObject({ missStops: null, note: null });
      expect(levelDistance(first(cell))).toBeCloseTo(away, 5);
    });
  });

  it('past what the lamp can do: too dark by the stops that are left, twice a distance being two stops', () => {
    // lit 5 s at full level 4 m away; a frame marked 10 s lasts 2^(10/3) s (checkvalues.md T8)
    const [cell] = sweepCells(wallSetup(), wallPass, { kind: 'distances', distancesMetres: [8] });
    expect(cell?.pass).toMatchObject({ levelPercent: 100, on: 0, off: 10 });
    expect(cell?.missStops).toBeCloseTo(Math.log2(2 ** (10 / 3) / 5) - 2, 3);
  });

  it.each([
    ['a torch among stones', stones, stonesKey, [3, 4.5, 6]],
    ['a walked torch with a beam', barn, barnKey, [2.5, 4, 5.5]],
    ['a panel', barn, { ...barnKey, passId: 'fill' }, [2, 3, 5]],
  ] as const)(
    '%s: the dose at its target stays, by a meter of 2000 samples (rel 0.01)',
    (_, setup, place, distances) => {
      const present = meteredDose(setup, place);
      const cells = sweepCells(setup, place, { kind: 'distances', distancesMetres: distances });
      expect(cells.map(({ missStops }) => missStops)).toEqual([null, null, null]);
      for (const cell of cells)
        expect(Math.abs(meteredDose(setupOfCell(setup, place, cell), place) / present - 1)).toBeLessThan(0.01);
    },
  );

  it('a lamp whose light does not reach its target keeps level and count, and says so', () => {
    const behind = wallSetup({}, { waypoints: [{ position: [0, 4, 2], aim: [0, 0, 2] }] });
    const { pass } = foundIn(behind, wallPass);
    for (const cell of sweepCells(behind, wallPass, { kind: 'distances', distancesMetres: [2, 6] })) {
      expect(cell.pass).toMatchObject({ levelPercent: pass.levelPercent, on: pass.on, off: pass.off });
      expect(cell.missStops).toBeNull();
      expect(cell.note).toContain('No light of the pass reaches its target where the lamp stands now');
    }
  });

  it('says from which places no light reaches the target, where another thing stands between', () => {
    const setup = wallSetup();
    const [wall] = setup.subjects as [Setup['subjects'][number]];
    // from 5.5 to 6.5 m before the wall, over the lamp and under the lens's line to the target, which is as high there
    const fence = { ...wall, id: 'fence', name: 'Fence', position: [0, -6.5, 0] as Position };
    const low = { ...fence, parts: fence.parts.map((part) => ({ ...part, widthMetres: 0.4, heightMetres: 2.2 })) };
    const cells = sweepCells({ ...setup, subjects: [wall, low as typeof wall] }, wallPass, {
      kind: 'distances',
      distancesMetres: [2, 8],
    });
    const { pass } = foundIn(setup, wallPass);
    expect(cells[0]?.note).toBeNull();
    expect(cells[1]?.note).toBe('No light of the pass reaches its target from here: level and count stay.');
    expect(cells[1]?.pass).toMatchObject({ levelPercent: pass.levelPercent, on: pass.on, off: pass.off });
  });

  it('a lamp that is aimed where the camera sees only sky keeps level and count, and says so', () => {
    const up = wallSetup({}, { waypoints: [{ position: [0, -4, 2], aim: [0, 0, 40] }] });
    const { pass } = foundIn(up, wallPass);
    for (const cell of sweepCells(up, wallPass, { kind: 'distances', distancesMetres: [2, 6] })) {
      expect(cell).toMatchObject({
        missStops: null,
        note: 'The camera sees no surface at the aim: level and count stay.',
      });
      expect(cell.pass).toMatchObject({ levelPercent: pass.levelPercent, on: pass.on, off: pass.off });
    }
  });
});

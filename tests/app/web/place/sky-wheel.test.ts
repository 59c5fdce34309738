import { describe, expect, it } from 'vitest';
import { aimBearing } from '../../../../app/web/place/aim-bearing.ts';
import { clockBoxes, lampBoxes, meet } from '../../../../app/web/ui/plan-dial.ts';
import { type EdgeMark, edgeMarks, glowSign, skySign } from '../../../../app/web/ui/plan-sky.ts';
import { planHalf, planViewOf, toPlan } from '../../../../app/web/ui/plan-view.ts';
import {
  bandOverHorizon,
  edgePoint,
  levelOfBearing,
  turnToDrawing,
  wheelPoint,
} from '../../../../app/web/ui/sky-wheel.ts';
import type { GroundPoint } from '../../../../core/geometry/hull.ts';
import type { Vec3 } from '../../../../core/geometry/vec.ts';
import { directionFromBearing } from '../../../../core/sky/frames-body.ts';
import { skyAt } from '../../../../core/sky/sky-at.ts';
import { radiansFromDegrees } from '../../../../core/units/angle.ts';

const northUp: GroundPoint = [0, 1];
const toward = (bearing: number, altitude: number, north = 0): Vec3 =>
  directionFromBearing(radiansFromDegrees(bearing), radiansFromDegrees(altitude), radiansFromDegrees(north));

describe('wheelPoint', () => {
  it('puts the horizon at 1, 45 degrees half-way, straight up in the middle; east to the right when north is up', () => {
    const [x, y] = wheelPoint(northUp, toward(90, 0));
    expect([x, y]).toEqual([expect.closeTo(1, 12), expect.closeTo(0, 12)]);
    expect(wheelPoint(northUp, toward(180, 45))).toEqual([expect.closeTo(0, 12), expect.closeTo(0.5, 12)]);
    expect(wheelPoint(northUp, [0, 1, 0])).toEqual([0, 0]);
  });

  it('lies as the ground plan does: what stands behind the subject is where the plan has it (1e-9)', () => {
    const camera = { position: [3, -4, 1] as [number, number, number], aim: [7, 9, 1] as [number, number, number] };
    const view = planViewOf(camera, []);
    for (const bearing of [0, 33, 145, 260]) {
      const t = radiansFromDegrees(bearing);
      const [x, y] = toPlan(view, [view.centre[0] + Math.sin(t), view.centre[1] + Math.cos(t)]);
      const size = Math.hypot(x, y);
      const [wx, wy] = wheelPoint(view.up, toward(bearing, 0));
      expect(wx).toBeCloseTo(x / size, 9);
      expect(wy).toBeCloseTo(y / size, 9);
    }
  });

  it('turns with the scene’s north: a true bearing of 70 is the scene’s north where that bears 70', () => {
    const [e, n] = levelOfBearing(70, 70);
    expect([e, n]).toEqual([expect.closeTo(0, 12), expect.closeTo(1, 12)]);
    const level = turnToDrawing(northUp, levelOfBearing(100, 70));
    const point = wheelPoint(northUp, toward(100, 0, 70));
    expect(level[0]).toBeCloseTo(point[0], 12);
    expect(level[1]).toBeCloseTo(point[1], 12);
  });
});

describe('bandOverHorizon', () => {
  const sky = skyAt({
    latitudeRadians: radiansFromDegrees(-33),
    longitudeRadians: radiansFromDegrees(149),
    utcMilliseconds: Date.UTC(2026, 7, 11, 10, 30),
    northRadians: 0,
    zenithMagnitude: 21.7,
    extinctionMagnitudes: 0.2,
    thinCloudDepth: 0,
  });

  it('is one line from horizon to horizon: half of a great circle is up', () => {
    const pieces = bandOverHorizon(northUp, sky.worldFromGalactic);
    expect(pieces).toHaveLength(1);
    const piece = pieces[0] ?? [];
    // of 120 steps round, half
    expect(piece.length).toBeGreaterThanOrEqual(59);
    expect(piece.length).toBeLessThanOrEqual(61);
    for (const end of [piece[0], piece.at(-1)]) {
      const r = Math.hypot(...(end as GroundPoint));
      expect(r).toBeGreaterThan(0.93);
      expect(r).toBeLessThanOrEqual(1);
    }
  });
});

describe('marks at the plan’s edge', () => {
  const moonAt = (bearing: number, altitude = 20) => {
    const sign = skySign('moon', toward(bearing, altitude));
    if (!sign) throw new Error('no sign');
    return sign;
  };
  const boxOf = ({ text, textAt: [x, y], anchor }: EdgeMark) => {
    const width = 6.2 * text.length;
    const left = anchor === 'start' ? x : x - width;
    return { left, right: left + width, top: y - 9, bottom: y + 3 };
  };

  it('stand on the square’s edge, in their direction, and within the drawing with their words', () => {
    for (let bearing = 0; bearing < 360; bearing += 7) {
      const [mark] = edgeMarks(northUp, [moonAt(bearing)]);
      if (!mark) throw new Error('no mark');
      const [x, y] = mark.at;
      const t = radiansFromDegrees(bearing);
      expect(Math.max(Math.abs(x), Math.abs(y))).toBeCloseTo(planHalf - 9, 9);
      expect(Math.atan2(x, -y)).toBeCloseTo(Math.atan2(Math.sin(t), Math.cos(t)), 9);
      expect(mark.text).toBe('moon 20°');
      const { left, right, top, bottom } = boxOf(mark);
      for (const v of [left, right, top, bottom]) expect(Math.abs(v)).toBeLessThanOrEqual(planHalf);
    }
  });

  it('make room for each other: moon, core and a town in one direction keep it, and no words lie on others', () => {
    for (let bearing = 0; bearing < 360; bearing += 10) {
      const core = skySign('core', toward(bearing + 3, 30));
      if (!core) throw new Error('no sign');
      const marks = edgeMarks(northUp, [moonAt(bearing), core, glowSign(bearing + 1, 0, 'Harbour')]);
      marks.forEach((one, i) => {
        const turn = Math.atan2(one.at[0], -one.at[1]) - radiansFromDegrees(bearing + ([0, 3, 1][i] ?? 0));
        expect(Math.sin(turn)).toBeCloseTo(0, 9);
        for (const other of marks.slice(0, i)) {
          const [a, b] = [boxOf(one), boxOf(other)];
          const meets = a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
          expect([bearing, one.kind, other.kind, meets]).toEqual([bearing, one.kind, other.kind, false]);
        }
      });
    }
  });

  it('keep their words on the drawing where they make room for each other', () => {
    for (let bearing = 0; bearing < 360; bearing += 5) {
      const marks = edgeMarks(northUp, [moonAt(bearing), glowSign(bearing + 2, 0, 'town in the dale')]);
      for (const { left, right, top, bottom } of marks.map(boxOf))
        for (const v of [left, right, top, bottom]) expect(Math.abs(v)).toBeLessThanOrEqual(planHalf);
    }
  });

  it('leave out words that have no room, never a mark: twenty towns close together', () => {
    const towns = Array.from({ length: 20 }, (_, i) => glowSign(40 + 2 * i, 0, `Village ${i}`));
    const marks = edgeMarks(northUp, towns);
    expect(marks).toHaveLength(20);
    const named = marks.filter(({ text }) => text !== '');
    expect(named.length).toBeGreaterThan(2);
    expect(named.length).toBeLessThan(20);
    named.forEach((one, i) => {
      for (const other of named.slice(0, i))
        expect([one.text, meet(boxOf(one), boxOf(other))]).toEqual([one.text, false]);
    });
  });

  it('keep names off the clock and the lamps, where the mark itself stays at the edge', () => {
    const lamp = lampBoxes([190, 10], 'Key');
    for (let bearing = 0; bearing < 360; bearing += 5) {
      const [mark] = edgeMarks(northUp, [glowSign(bearing, 0, 'Hollow under Moor')], [], [...clockBoxes, ...lamp]);
      if (!mark) throw new Error('no mark');
      expect(Math.max(...mark.at.map(Math.abs))).toBeGreaterThan(planHalf - 64);
      for (const box of mark.text === '' ? [] : [...clockBoxes, ...lamp])
        expect([bearing, meet(boxOf(mark), box)]).toEqual([bearing, false]);
    }
  });

  it('cut a long name after its fifteenth letter; one of sixteen stays whole', () => {
    expect(glowSign(0, 0, 'Greater Wolverdale-under-the-Moor').text).toBe('Greater Wolverd…');
    expect(glowSign(0, 0, 'town in the dale').text).toBe('town in the dale');
  });

  it('are not there for what is under the horizon; a moon straight up throws no shadows to a side', () => {
    expect(skySign('core', toward(180, -1))).toBeNull();
    expect([20, 80].map((altitude) => moonAt(0, altitude).isSlanting)).toEqual([true, false]);
    expect(glowSign(90, 0, '').text).toBe('glow');
  });

  it('edgePoint goes through the corners', () => {
    expect(edgePoint([Math.SQRT1_2, Math.SQRT1_2], 10)).toEqual([10, 10]);
  });
});

describe('aimBearing', () => {
  it('is the compass rose from the camera to the aim, plus the scene’s north', () => {
    const camera = { position: [0, 0, 1] as [number, number, number], aim: [5, 5, 1] as [number, number, number] };
    expect(aimBearing(camera, 0)).toBeCloseTo(45, 9);
    expect(aimBearing(camera, 330)).toBeCloseTo(15, 9);
    expect(aimBearing(camera, 0, [0, -3])).toBeCloseTo(180, 9);
  });
});

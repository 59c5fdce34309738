import { describe, expect, it } from 'vitest';
import { cameraView, projectPoint, viewDirection } from '../../../core/camera/camera-view.ts';
import type { Vec3 } from '../../../core/geometry/vec.ts';
import { type CastingSource, litGrid, litState, litStateAt, skyCell } from '../../../core/readings/lit-grid.ts';
import { surfaceAlong } from '../../../core/trace/surface-point.ts';
import { discEmitter, halfSpaceBeam, stageWith, standing, subjectOf } from '../support/scenes.ts';

const lens = { rollRadians: 0, sensorWidthMm: 36, sensorHeightMm: 24, focalLengthMm: 24 };
/** A box 2 m wide, 1 m deep and 1.5 m high that stands 5 m north of the origin. */
const [half, near, far, top] = [1, -4.5, -5.5, 1.5];
const stage = stageWith(
  subjectOf('box', [{ kind: 'box', position: [0, 5, 0], widthMetres: 2, depthMetres: 1, heightMetres: top }]),
);
const camera: Vec3 = [0, 6, 6];
const view = cameraView({ position: camera, aim: [0, 0, -5], ...lens });
const [columns, rows] = [120, 80] as const;

/**
 * Whether a place on the ground lies in the box's shadow, in closed form: the way from there to the lamp passes through
 * the box (slab by slab). `grown` widens the box on all sides.
 */
const isBehindBox = ([x, , z]: Vec3, lamp: Vec3, grown: number): boolean => {
  const slabs: readonly (readonly [number, number, number, number])[] = [
    [x, lamp[0], -half - grown, half + grown],
    [z, lamp[2], far - grown, near + grown],
    [0, lamp[1], 0, top + grown],
  ];
  let [enter, leave] = [0, 1];
  for (const [from, to, low, high] of slabs) {
    const ends = [(low - from) / (to - from), (high - from) / (to - from)];
    [enter, leave] = [Math.max(enter, Math.min(...ends)), Math.min(leave, Math.max(...ends))];
  }
  return enter < leave;
};

const lampAt = (position: Vec3): CastingSource => standing(position, [0, 0, -5], discEmitter(0, halfSpaceBeam));

/** Every cell whose line of sight meets the ground: where it does, and its index. */
const groundCells = (subjects: Int16Array): { cell: number; place: Vec3 }[] =>
  [...subjects].flatMap((subject, cell) => {
    if (subject !== -1) return [];
    const direction = viewDirection(
      view,
      ((cell % columns) + 0.5) / columns,
      (Math.floor(cell / columns) + 0.5) / rows,
    );
    const t = -camera[1] / direction[1];
    return [{ cell, place: [camera[0] + t * direction[0], 0, camera[2] + t * direction[2]] }];
  });

describe('litStateAt', () => {
  const ground = surfaceAlong(stage, [4, 3, 0], [0, -1, 0]);
  const moonAt = (toward: Vec3): CastingSource => ({ kind: 'moon', toward, radiusRadians: 0.004 });

  it('is nothing in the sky', () => {
    expect(litStateAt(stage, lampAt([5, 3, -2]), null)).toBe(litState.nothing);
    expect(litStateAt(stage, moonAt([0, 1, 0]), null)).toBe(litState.nothing);
  });

  it('under a moon: lit, turned away where it is down, in shadow where the box stands in its way', () => {
    expect(litStateAt(stage, moonAt([0.6, 0.8, 0]), ground)).toBe(litState.lit);
    expect(litStateAt(stage, moonAt([0.6, -0.8, 0]), ground)).toBe(litState.away);
    const behind = surfaceAlong(stage, [0, 3, far - 0.5], [0, -1, 0]);
    expect(litStateAt(stage, moonAt([0, 0.6, 0.8]), behind)).toBe(litState.shadow);
    expect(litStateAt(stage, moonAt([0, 0.6, -0.8]), behind)).toBe(litState.lit);
  });
});

describe('litGrid', () => {
  it.each([[[5, 3, -2]], [[-4, 2, -5]], [[0.5, 4, -9]], [[2, 1.2, 3]]] as const)(
    'a box’s shadow on the ground under a lamp at %j, cell by cell against the slabs of the box (edges to 1 cm)',
    (position) => {
      const lamp = position as unknown as Vec3;
      const { subjects, masks } = litGrid(stage, view, columns, rows, [lampAt(lamp)]);
      let [judged, shadowed] = [0, 0];
      for (const { cell, place } of groundCells(subjects)) {
        const inside = isBehindBox(place, lamp, -0.01);
        // the centimetre round the edge is left to rounding
        if (inside !== isBehindBox(place, lamp, 0.01)) continue;
        // a disc that shines into the half space before it: behind its back there is no light to take away
        const before = (place[0] - lamp[0]) * -lamp[0] + -lamp[1] * -lamp[1] + (place[2] - lamp[2]) * (-5 - lamp[2]);
        if (before <= 0) continue;
        judged++;
        if (inside) shadowed++;
        expect(masks[0]?.[cell]).toBe(inside ? litState.shadow : litState.lit);
      }
      expect(judged).toBeGreaterThan(3000);
      expect(shadowed).toBeGreaterThan(100);
    },
  );

  it('the corners of a box’s top lie on its outline: one cell inside is the box, one outside is not', () => {
    const { subjects } = litGrid(stage, view, columns, rows, []);
    const [left, y] = projectPoint(view, [-half, top, far]) as readonly [number, number];
    const cell = (dx: number, dy: number) =>
      subjects[Math.floor(y * rows + dy) * columns + Math.floor(left * columns + dx)];
    expect(cell(1.5, 1.5)).toBe(0);
    expect(cell(-1.5, 1.5)).toBe(-1);
    expect(cell(1.5, -1.5)).toBe(-1);
  });

  it('faces that are turned from the lamp are told from those in a cast shadow', () => {
    const lamp = lampAt([6, 3, -5]);
    const stateAt = (place: Vec3) => {
      const way = place.map((v, i) => v - (camera[i] as number));
      const far = Math.hypot(...way);
      const met = surfaceAlong(stage, camera, way.map((v) => v / far) as unknown as Vec3);
      expect(met && Math.hypot(...met.position.map((v, i) => v - (place[i] as number)))).toBeLessThan(1e-3);
      return litStateAt(stage, lamp, met);
    };
    expect(stateAt([0.5, top, -5])).toBe(litState.lit);
    // the face toward the camera sees the lamp from the side, its plane runs 0.5 m in front of the lamp
    expect(stateAt([0, 0.7, near])).toBe(litState.away);
    expect(stateAt([-1.4, 0, -5])).toBe(litState.shadow);
    expect(stateAt([3, 0, -4])).toBe(litState.lit);
  });

  it('outside the beam begins where the spot’s edge is, on both sides of it (0.2 degrees)', () => {
    const halfAngle = 15;
    const cos = Math.cos((halfAngle * Math.PI) / 180);
    const emitter = discEmitter(0, { exponent: 1, cosSpill: cos, cosSpillEven: cos, spillShare: 1 });
    const open = stageWith(subjectOf('far', [{ kind: 'sphere', position: [400, 0, 0], radiusMetres: 1 }]));
    const down = standing([0, 4, 0], [0, 0, 0], emitter);
    for (const [degrees, state] of [
      [halfAngle - 0.2, litState.lit],
      [halfAngle + 0.2, litState.outside],
    ] as const) {
      const x = 4 * Math.tan((degrees * Math.PI) / 180);
      expect(litStateAt(open, down, surfaceAlong(open, [x, 2, 0], [0, -1, 0]))).toBe(state);
    }
  });

  it('the moon’s shadow of a box is its height over the tangent of the moon’s altitude long (1 mm)', () => {
    const altitude = (30 * Math.PI) / 180;
    const moon: CastingSource = {
      kind: 'moon',
      toward: [0, Math.sin(altitude), Math.cos(altitude)],
      radiusRadians: 0.0045,
    };
    const tip = far - top / Math.tan(altitude);
    const at = (z: number) => litStateAt(stage, moon, surfaceAlong(stage, [0.3, 5, z], [0, -1, 0]));
    expect(at(tip + 0.001)).toBe(litState.shadow);
    expect(at(tip - 0.001)).toBe(litState.lit);
  });

  it('looks level: sky above the horizon, ground below it, whatever the lamp', () => {
    const level = cameraView({ position: [0, 1.6, 30], aim: [0, 1.6, 40], ...lens });
    const { subjects, masks } = litGrid(stage, level, 30, 20, [lampAt([0, 3, 34])]);
    expect([...subjects.slice(0, 300)].every((subject) => subject === skyCell)).toBe(true);
    expect([...(masks[0] as Uint8Array).slice(0, 300)].every((state) => state === litState.nothing)).toBe(true);
    expect([...subjects.slice(300)].every((subject) => subject === -1)).toBe(true);
  });
});

import { describe, expect, it } from 'vitest';
import {
  composeRigid,
  MeshBuilder,
  type Rigid,
  rigidFromTurns,
  transformDirection,
  transformPoint,
} from '../../../core/geometry/mesh.ts';
import { seededRandom } from '../../../core/geometry/random.ts';
import { cross, distance, dot, length, sub, type Vec3 } from '../../../core/geometry/vec.ts';

const [east, up, north]: readonly Vec3[] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, -1],
];
const quarter = Math.PI / 2;
const apart = (a: Vec3, b: Vec3) => length(sub(a, b));
const [south, west] = [
  [0, 0, 1],
  [-1, 0, 0],
] as const;

describe('rigidFromTurns', () => {
  it.each([
    ['a turn takes north to east', 1, 0, 0, north, east],
    ['a turn takes east to south', 1, 0, 0, east, south],
    ['a turn leaves up alone', 1, 0, 0, up, up],
    ['a tilt takes up to north', 0, 1, 0, up, north],
    ['a tilt leaves east alone', 0, 1, 0, east, east],
    ['a tilt takes south to up', 0, 1, 0, south, up],
    ['a roll takes up to east', 0, 0, 1, up, east],
    ['a roll leaves north alone', 0, 0, 1, north, north],
    ['a roll takes west to up', 0, 0, 1, west, up],
  ] as const)('by 90 degrees: %s (abs 1e-15)', (_, turn, tilt, roll, from, to) => {
    const placed = rigidFromTurns([0, 0, 0], turn * quarter, tilt * quarter, roll * quarter);
    expect(apart(transformDirection(placed, from as Vec3), to as Vec3)).toBeLessThanOrEqual(1e-15);
  });

  it('applies roll first, then tilt, then turn (abs 1e-12)', () => {
    const [turn, tilt, roll] = [0.7, -0.4, 1.1];
    const all = rigidFromTurns([1, 2, 3], turn, tilt, roll);
    const origin: Vec3 = [0, 0, 0];
    const one = (...turns: [number, number, number]) => rigidFromTurns(origin, ...turns);
    const steps = composeRigid(one(turn, 0, 0), composeRigid(one(0, tilt, 0), one(0, 0, roll)));
    for (const p of [
      [1, 0, 0],
      [0, 1, 0],
      [0.3, -2, 5],
    ] as const) {
      const expected = transformPoint(steps, p);
      expect(apart(transformPoint(all, p), [expected[0] + 1, expected[1] + 2, expected[2] + 3])).toBeLessThanOrEqual(
        1e-12,
      );
    }
    expect(apart(transformPoint(all, [0, 0, 0]), [1, 2, 3])).toBe(0);
  });

  it('keeps lengths, angles and handedness for any turns (abs 1e-12, seed 5)', () => {
    const random = seededRandom(5);
    const any = () => (random() - 0.5) * 4 * Math.PI;
    for (let n = 0; n < 200; n++) {
      const m: Rigid = rigidFromTurns([any(), any(), any()], any(), any(), any());
      const [a, b]: Vec3[] = [
        [any(), any(), any()],
        [any(), any(), any()],
      ] as [Vec3, Vec3];
      const moved = distance(transformPoint(m, a as Vec3), transformPoint(m, b as Vec3));
      expect(Math.abs(moved - distance(a as Vec3, b as Vec3))).toBeLessThanOrEqual(1e-12);
      expect(Math.abs(dot(cross(m.x, m.y), m.z) - 1)).toBeLessThanOrEqual(1e-12);
    }
  });
});

describe('composeRigid', () => {
  it('is outer after inner (abs 1e-12)', () => {
    const outer = rigidFromTurns([1, -2, 0.5], 0.3, 0.2, -0.9);
    const inner = rigidFromTurns([-4, 0, 2], -1.3, 0.8, 0.1);
    const p: Vec3 = [0.2, 1.7, -3];
    const both = transformPoint(composeRigid(outer, inner), p);
    expect(apart(both, transformPoint(outer, transformPoint(inner, p)))).toBeLessThanOrEqual(1e-12);
  });
});

describe('MeshBuilder', () => {
  it('drops triangles without area and keeps the rest with their face normal', () => {
    const builder = new MeshBuilder();
    builder.triangle([0, 0, 0], [1, 0, 0], [2, 0, 0]);
    builder.triangle([0, 0, 0], [1, 0, 0], [0, 1, 0]);
    const mesh = builder.build();
    expect(mesh.positions.length).toBe(9);
    expect([...mesh.normals]).toEqual([0, 0, 1, 0, 0, 1, 0, 0, 1]);
  });
});

import { describe, expect, it } from 'vitest';
import type { Vec3 } from '../../../core/geometry/vec.ts';
import { body, bodyAlong, bodyBehind, bodyOutline, isInTheWay } from '../../../core/walk/body.ts';

describe('bodyBehind', () => {
  it('stands 0.45 m behind the lamp, opposite its aim on the level, however steep the aim', () => {
    // 3, 4, 5: the aim lies 3 m east and 4 m south of the lamp
    for (const up of [0, 5, -1]) {
      const [x, y, z] = bodyBehind([1, 1.2, 2], [4, up, 6]);
      expect([x, y, z]).toEqual([1 - 0.45 * 0.6, 1.2, 2 - 0.45 * 0.8].map((v) => expect.closeTo(v, 12)));
    }
  });
  it('stands to the south of a lamp that points straight up or down', () => {
    expect(bodyBehind([1, 2, 3], [1, 9, 3])).toEqual([1, 2, 3.45]);
  });
});

describe('isInTheWay', () => {
  const feet: Vec3 = [0, 0, 0];
  it.each([
    [[-2, 1, 0.24], [2, 1, 0.24], true],
    [[-2, 1, 0.26], [2, 1, 0.26], false],
    // over the head, 1.75 m, and under it
    [[-2, 1.76, 0], [2, 1.76, 0], false],
    [[-2, 1.74, 0], [2, 1.74, 0], true],
    // the cap is round: 0.2 m aside the top lies 1.5 + sqrt(0.25² - 0.2²) = 1.65 m up
    [[-2, 1.64, 0.2], [2, 1.64, 0.2], true],
    [[-2, 1.66, 0.2], [2, 1.66, 0.2], false],
    // ends before it, begins behind it, runs along its axis
    [[-2, 1, 0], [-0.26, 1, 0], false],
    [[-2, 1, 0], [-0.24, 1, 0], true],
    [[0.3, 1, 0], [4, 1, 0], false],
    [[0.1, 9, 0], [0.1, -9, 0], true],
    [[0.3, 9, 0], [0.3, -9, 0], false],
  ] as const)('from %j to %j: %s (radius 0.25 m, height 1.75 m)', (from, to, isBarred) => {
    expect(isInTheWay(feet, from, to)).toBe(isBarred);
    expect(isInTheWay(feet, to, from)).toBe(isBarred);
  });
});

describe('bodyAlong', () => {
  const feet: Vec3 = [2, 0.5, -1];
  // 0.1 m aside the round caps, of 0.25 m, stand sqrt(0.25² - 0.1²) over and under their middles
  const cap = Math.sqrt(0.25 ** 2 - 0.1 ** 2);
  it('straight from above and from below meets the round ends', () => {
    const down = bodyAlong(feet, [2.1, 10, -1], [0, -1, 0]);
    expect(down?.t).toBeCloseTo(10 - (0.5 + 1.5 + cap), 12);
    expect(down?.normal).toEqual([0.1 / 0.25, cap / 0.25, 0].map((v) => expect.closeTo(v, 12)));
    const up = bodyAlong(feet, [2.1, -3, -1], [0, 1, 0]);
    expect(up?.t).toBeCloseTo(3 + 0.5 + 0.25 - cap, 12);
    expect(up?.normal).toEqual([0.1 / 0.25, -cap / 0.25, 0].map((v) => expect.closeTo(v, 12)));
    expect(bodyAlong(feet, [2.26, 10, -1], [0, -1, 0])).toBeNull();
    expect(bodyAlong(feet, [2.1, 10, -1], [0, 1, 0])).toBeNull();
  });
  it('is not seen from within', () => {
    for (const height of [0.6, 1.5, 2.2])
      for (const way of [
        [1, 0, 0],
        [0, 1, 0],
        [0, -1, 0],
      ] as const)
        expect(bodyAlong(feet, [2, height, -1], way)).toBeNull();
  });
});

describe('bodyOutline', () => {
  const { heightMetres: h, radiusMetres: r } = body;
  it('covers the area of the capsule’s outline, 2 r (h − 2 r) + π r² (1 %)', () => {
    const cell = 0.01;
    const { cells } = bodyOutline([0, 0, 0], [0, 1, 10], cell);
    const area = 2 * r * (h - 2 * r) + Math.PI * r * r;
    expect(Math.abs(cells.length * cell * cell - area) / area).toBeLessThan(0.01);
  });
  it('faces the eye: square to the way there, on the level, standing on the feet', () => {
    const { cells, across } = bodyOutline([3, 0.5, 4], [0, 2, 0], 0.1);
    expect(across[0] * 3 + across[2] * 4).toBeCloseTo(0, 12);
    for (const [x, y, z] of cells) {
      expect((x - 3) * 3 + (z - 4) * 4).toBeCloseTo(0, 12);
      expect(y).toBeGreaterThan(0.5);
      expect(y).toBeLessThan(0.5 + h);
    }
  });
  it('from straight above, where all sides are alike, is turned east to west', () => {
    const { cells, across } = bodyOutline([3, 0, 4], [3, 9, 4], 0.1);
    expect(across).toEqual([1, 0, 0]);
    expect(cells.length).toBeGreaterThan(0);
    for (const [, , z] of cells) expect(z).toBe(4);
  });
});

import { describe, expect, it } from 'vitest';
import { guessUnitAndUp } from '../../../../app/web/scans/guess-placing.ts';
import { type Placing, placeScan, type UpAxis } from '../../../../app/web/scans/place-scan.ts';
import { measureMesh } from './measure.ts';
import { boxOfMesh, lumpyMesh } from './raw-meshes.ts';

const plain: Placing = { unit: 'm', upAxis: 'y', turnDegrees: 0 };
/** A box 2 wide in x, 3 in y, 5 in z, away from the origin. */
const box = boxOfMesh([10, 20, 30], [2, 3, 5]);
const sides = (placing: Placing) => {
  const { low, high } = measureMesh(placeScan(box, placing));
  return { low, size: high.map((value, k) => value - (low[k] ?? 0)) };
};

describe('placeScan', () => {
  it.each([
    ['y', [2, 3, 5]],
    ['-y', [2, 3, 5]],
    ['z', [2, 5, 3]],
    ['-z', [2, 5, 3]],
    ['x', [3, 2, 5]],
    ['-x', [3, 2, 5]],
  ] as const)('with %s up stands a box 2 by 3 by 5 as %j on the ground, its middle over the origin', (upAxis, size) => {
    const placed = sides({ ...plain, upAxis });
    for (const [k, side] of size.entries()) expect(placed.size[k]).toBeCloseTo(side, 12);
    expect(placed.low[1]).toBeCloseTo(0, 12);
    expect(placed.low[0]).toBeCloseTo(-size[0] / 2, 12);
    expect(placed.low[2]).toBeCloseTo(-size[2] / 2, 12);
  });

  it.each(['x', 'y', 'z', '-x', '-y', '-z'] as const)(
    'with %s up brings that way of the file up, and mirrors nothing',
    (upAxis: UpAxis) => {
      const placed = placeScan(box, { ...plain, upAxis });
      // the volume of a closed body keeps its sign under turns, and loses it under reflections
      expect(measureMesh(placed).volume).toBeCloseTo(30, 9);
      const axis = ['x', 'y', 'z'].indexOf(upAxis.slice(-1));
      const sign = upAxis.startsWith('-') ? -1 : 1;
      for (let i = 0; i < box.positions.length; i += 3)
        for (let j = 0; j < box.positions.length; j += 3) {
          const rise = (placed.positions[i + 1] ?? 0) - (placed.positions[j + 1] ?? 0);
          expect(rise).toBeCloseTo(sign * ((box.positions[i + axis] ?? 0) - (box.positions[j + axis] ?? 0)), 9);
        }
    },
  );

  it.each([
    ['m', 1],
    ['cm', 0.01],
    ['mm', 0.001],
    ['ft', 0.3048],
    ['in', 0.0254],
  ] as const)('takes a unit of %s as %f m', (unit, metres) => {
    expect(sides({ ...plain, unit }).size[1]).toBeCloseTo(3 * metres, 12);
    expect(sides({ ...plain, unit, scale: 2.5 }).size[2]).toBeCloseTo(12.5 * metres, 12);
  });

  it('turns clockwise seen from above: a quarter turn brings what points north to the east', () => {
    // a spike from the origin to the north (z = -1) beside a small base
    const spike = {
      positions: Float64Array.of(0, 0, -1, -0.1, 0, 0, 0.1, 0, 0, 0, 0.1, 0),
      indices: Uint32Array.of(0, 1, 2, 0, 2, 3),
      colours: null,
    };
    const { positions } = placeScan(spike, { ...plain, turnDegrees: 90 });
    const east = [0, 3, 6].map((i) => positions[i] ?? 0);
    expect(east[0]).toBeGreaterThan(Math.max(east[1] ?? 0, east[2] ?? 0) + 0.9);
    expect(positions[2]).toBeCloseTo(0, 12);
  });
});

describe('guessUnitAndUp', () => {
  it('knows glTF: metres, y up', () => {
    expect(guessUnitAndUp(lumpyMesh(8, 1), 'gltf')).toMatchObject({ unit: 'm', upAxis: 'y', isGuess: false });
  });

  it.each(['x', 'y', 'z', '-x', '-y', '-z'] as const)(
    'guesses %s up from ground that is open below, and says that it guesses',
    (upAxis) => {
      const ground = lumpyMesh(8, 2);
      const axis = ['x', 'y', 'z'].indexOf(upAxis.slice(-1));
      const [u, v] = [(axis + 1) % 3, (axis + 2) % 3];
      const sign = upAxis.startsWith('-') ? -1 : 1;
      // the ground is x, y up, z: a turn of its axes, and for negative ones also half a turn
      const positions = ground.positions.map((_, i) => {
        const [x, y, z] = ground.positions.subarray(i - (i % 3), i - (i % 3) + 3);
        const out = [0, 0, 0];
        out[axis] = sign * (y ?? 0);
        out[u] = z ?? 0;
        out[v] = sign * (x ?? 0);
        return out[i % 3] ?? 0;
      });
      expect(guessUnitAndUp({ ...ground, positions }, 'ply')).toMatchObject({ upAxis, isGuess: true });
    },
  );

  it.each([
    [1, 'm'],
    [30, 'm'],
    [400, 'cm'],
    [4000, 'mm'],
  ] as const)('takes ground %f times 4 wide for %s', (times, unit) => {
    const ground = lumpyMesh(8, 3);
    const positions = ground.positions.map((value) => value * times);
    expect(guessUnitAndUp({ ...ground, positions }, 'obj').unit).toBe(unit);
  });

  it('takes y for up where a closed body does not tell', () => {
    expect(guessUnitAndUp(box, 'obj').upAxis).toBe('y');
  });
});

import { describe, expect, it } from 'vitest';
import { stretchedPath } from '../../../core/passes/stretch-path.ts';
import type { Waypoint } from '../../../core/setup/schema/setup.ts';
import { placeOnPath } from '../../../core/world/world.ts';

describe('stretchedPath', () => {
  const path: Waypoint[] = [
    { time: 0, position: [0, 0, 1], aim: [0, 5, 1] },
    { time: 3, position: [3, 0, 2], aim: [1, 5, 1] },
    { time: 8, position: [3, 4, 1], aim: [2, 5, 0] },
  ];
  const along = (waypoints: readonly Waypoint[], seconds: number) =>
    placeOnPath(
      waypoints.map(({ time, position, aim }) => ({ seconds: time, position, aim })),
      seconds,
    );

  it.each([
    [
      [1, 6],
      [0, 2],
    ],
    [
      [0, 8],
      [4, 30],
    ],
    [
      [2, 12],
      [1, 2],
    ],
  ] as const)('on from %j to %j: the same places at the same shares of the on-time (abs 1e-9 m)', (before, after) => {
    const stretched = stretchedPath(path, before, after) as Waypoint[];
    expect(stretched.every((w, i) => i === 0 || w.time > (stretched[i - 1] as Waypoint).time)).toBe(true);
    for (let share = 0; share <= 1; share += 1 / 16) {
      const old = along(path, before[0] + share * (before[1] - before[0]));
      const now = along(stretched, after[0] + share * (after[1] - after[0]));
      for (const what of ['position', 'aim'] as const)
        now[what].forEach((v, i) => {
          expect(v).toBeCloseTo(old[what][i] as number, 9);
        });
    }
  });

  it('is none where a cut would leave the lamp on its own aim', () => {
    const through: Waypoint[] = [
      { time: 0, position: [0, 0, 1], aim: [2, 0, 1] },
      { time: 4, position: [4, 0, 1], aim: [2, 0, 1] },
    ];
    expect(stretchedPath(through, [2, 4], [0, 1])).toBeNull();
  });
});

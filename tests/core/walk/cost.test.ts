import { describe, expect, it } from 'vitest';
import type { GroundPoint } from '../../../core/geometry/hull.ts';
import { seededRandom } from '../../../core/geometry/random.ts';
import { footprintOf, shortestWalk } from '../../../core/walk/walk.ts';

const post = (east: number, north: number, radius: number, sides: number): GroundPoint[] =>
  Array.from({ length: sides }, (_, k) => {
    const turn = (2 * Math.PI * k) / sides;
    return [east + radius * Math.cos(turn), north + radius * Math.sin(turn)];
  });

/** The least of several runs: what others do on the machine only adds to it. */
const leastMilliseconds = (run: () => void): number =>
  Math.min(
    ...Array.from({ length: 9 }, () => {
      const start = performance.now();
      run();
      return performance.now() - start;
    }),
  );

describe('shortestWalk, what it costs', () => {
  const random = seededRandom(3);
  const wood = Array.from({ length: 300 }, () =>
    post(60 * random() - 30, 60 * random() - 30, 0.15 + 0.3 * random(), 24),
  );
  const wall = Array.from({ length: 300 }, (_, k) => post((k / 299) * 12 - 6 + 0.2 * random(), 0.5 * random(), 0.3, 4));
  const thicket = Array.from({ length: 300 }, () => post(12 * random() - 6, 12 * random() - 6, 0.15, 12));
  // hundreds of parts take under about 20 ms on a machine that does nothing else; ten times that fails
  it.each([
    ['a wood of 300 trunks', wood, [-32, -31], [32, 30], 200],
    ['a wall of 300 stones', wall, [0, -4], [0.3, 4], 200],
    ['a maze of 300 stems, the worst that was found', thicket, [-8, -7], [8, 7], 600],
  ] as const)('%s', (name, hulls, from, to, most) => {
    const footprints = hulls.map(footprintOf);
    let metres = 0;
    const milliseconds = leastMilliseconds(() => {
      metres = shortestWalk(from, to, footprints, null)?.metres ?? 0;
    });
    console.info(`${name}: ${metres.toFixed(1)} m in ${milliseconds.toFixed(1)} ms`);
    expect(metres).toBeGreaterThan(Math.hypot(to[0] - from[0], to[1] - from[1]));
    expect(milliseconds).toBeLessThan(most);
  });
});

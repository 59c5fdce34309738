import { buildRayTree, type RayTree } from '../../core/geometry/ray-tree.ts';
import { refitRayTree } from '../../core/geometry/refit-ray-tree.ts';
import { buildStage } from '../../core/world/stage.ts';
import { pebbleSetup } from '../core/support/pebble-setup.ts';

/** Times in milliseconds, least of several rounds. */
export interface TreeTimes {
  readonly triangles: number;
  /** The tree over all triangles. */
  readonly buildMs: number;
  /** The same tree after the subjects moved, and after everything did. */
  readonly refitSomeMs: number;
  readonly refitAllMs: number;
}

/** Issue bar: refit or rebuild for 30,000 triangles. */
const mostMs = 60;

const leastMs = (rounds: number, work: () => void): number => {
  let least = Number.POSITIVE_INFINITY;
  for (let round = 0; round < rounds; round++) {
    const start = performance.now();
    work();
    least = Math.min(least, performance.now() - start);
  }
  return least;
};

/** Corners in the order in which they went in. */
const sourcePositions = ({ corners, sourceTriangle }: RayTree): Float64Array => {
  const positions = new Float64Array(corners.length);
  sourceTriangle.forEach((source, t) => {
    positions.set(corners.subarray(t * 9, t * 9 + 9), source * 9);
  });
  return positions;
};

export const treeTimes = (): TreeTimes[] =>
  [3000, 30_000, 300_000].map((size) => {
    const { ground, subjects } = pebbleSetup(size, 'finer');
    const { tree, subjectOfTriangle } = buildStage(ground, subjects);
    const positions = sourcePositions(tree);
    // subjects come last in the mesh
    const firstTriangle = tree.sourceTriangle.length - subjectOfTriangle.filter((subject) => subject >= 0).length;
    const some = [{ firstTriangle, positions: positions.slice(firstTriangle * 9) }];
    const rounds = size > 100_000 ? 5 : 15;
    return {
      triangles: tree.sourceTriangle.length,
      buildMs: leastMs(rounds, () => buildRayTree(positions, tree.apart)),
      refitSomeMs: leastMs(rounds, () => refitRayTree(tree, some)),
      refitAllMs: leastMs(rounds, () => refitRayTree(tree, [{ firstTriangle: 0, positions }])),
    };
  });

export const treeLines = (times: readonly TreeTimes[]): string =>
  times
    .map(
      ({ triangles, buildMs, refitSomeMs, refitAllMs }) =>
        `tree of ${triangles} triangles: ${buildMs.toFixed(1)} ms to build, ${refitSomeMs.toFixed(1)} ms to refit after the ` +
        `subjects moved, ${refitAllMs.toFixed(1)} ms after everything did (bar at 30,000: ${mostMs} ms)`,
    )
    .join('\n');

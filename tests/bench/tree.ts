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
  /** The whole stage built from nothing, relief known, and from the stage before it when a subject was dragged. */
  readonly stageMs: number;
  readonly draggedMs: number;
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
    const stage = buildStage(ground, subjects);
    const { tree, subjectOfTriangle } = stage;
    const positions = sourcePositions(tree);
    // subjects come last in the mesh
    const firstTriangle = tree.sourceTriangle.length - subjectOfTriangle.filter((subject) => subject >= 0).length;
    const some = [{ firstTriangle, positions: positions.slice(firstTriangle * 9) }];
    const dragged: typeof subjects = subjects.map((subject, s) =>
      s === 0 ? { ...subject, position: [0.3, 8, 0] } : subject,
    );
    const rounds = size > 100_000 ? 5 : 15;
    return {
      triangles: tree.sourceTriangle.length,
      buildMs: leastMs(rounds, () => buildRayTree(positions, tree.apart)),
      refitSomeMs: leastMs(rounds, () => refitRayTree(tree, some)),
      refitAllMs: leastMs(rounds, () => refitRayTree(tree, [{ firstTriangle: 0, positions }])),
      stageMs: leastMs(rounds, () => buildStage(ground, subjects)),
      draggedMs: leastMs(rounds, () => buildStage(ground, dragged, undefined, stage)),
    };
  });

export const treeLines = (times: readonly TreeTimes[]): string => {
  const row = (what: string, of: (time: TreeTimes) => number) =>
    `  ${what.padEnd(40)} ${times.map((time) => of(time).toFixed(1).padStart(7)).join(' ')}`;
  return [
    `tree of ${times.map(({ triangles }) => triangles).join(', ')} triangles, ms`,
    row('to build', ({ buildMs }) => buildMs),
    row('to refit, subjects moved', ({ refitSomeMs }) => refitSomeMs),
    `${row('to refit, everything moved', ({ refitAllMs }) => refitAllMs)}   (bar at 30,000, refit or build: ${mostMs} ms)`,
    row('the whole stage, built', ({ stageMs }) => stageMs),
    row('the whole stage, one subject dragged', ({ draggedMs }) => draggedMs),
  ].join('\n');
};

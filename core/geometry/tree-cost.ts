import type { RayTree } from './ray-tree.ts';

/** What a triangle costs against a look at two boxes; common practice. */
const triangleCost = 1.25;

/**
 * What a ray costs to take through a tree, by the surface area heuristic (MacDonald and Booth 1990): boxes and triangles
 * are met as often as their surface is large. A sum of areas, in square metres times looks: only to be compared with the
 * cost of another tree over the same triangles. What stands apart (`RayTree.apart`) is left out: next to a ground that
 * reaches to the horizon nothing else would count.
 */
export const treeCost = ({ nodes, apart }: RayTree): number => {
  const costOf = (node: number): number => {
    const n = node * 8;
    const link = nodes[n + 3] as number;
    const count = nodes[n + 7] as number;
    const dx = (nodes[n + 4] as number) - (nodes[n] as number);
    const dy = (nodes[n + 5] as number) - (nodes[n + 1] as number);
    const dz = (nodes[n + 6] as number) - (nodes[n + 2] as number);
    const area = 2 * (dx * dy + dy * dz + dz * dx);
    return count > 0 ? area * triangleCost * count : area + costOf(link) + costOf(link + 1);
  };
  return costOf(apart > 0 ? (nodes[3] as number) + 1 : 0);
};

import { fitBoxes } from './fit-boxes.ts';
import { TriangleSplitter } from './split-triangles.ts';

/**
 * A bounding volume tree laid out flat, the same on the CPU and in float textures on the GPU.
 *
 * Node k is eight numbers: min x, y, z, `link`, max x, y, z, `count`. A leaf has count > 0 and `link` is its first
 * triangle; an inner node has count 0 and its children are `link` and `link` + 1, side by side, so that one look fetches
 * both. Node 0 is the root, node 1 is not used, parents come before their children. Triangles are stored in leaf order.
 * Links stay below 2^24, so 32-bit floats hold them exactly.
 */
export interface RayTree {
  readonly nodes: Float32Array;
  /** Nine numbers a triangle, corners a, b, c, in leaf order, metres, rounded to 32 bits as the GPU will see them. */
  readonly corners: Float32Array;
  /** For each triangle in leaf order, its place in the mesh that went in. */
  readonly sourceTriangle: Uint32Array;
  /** So many triangles, the first here and in the mesh, are all that the root's first child holds; 0 = none are apart. */
  readonly apart: number;
  readonly depth: number;
}

/** Most levels a traversal stack holds, here and in the shaders. */
export const maxTreeDepth = 60;

/** Most triangles in a leaf: the shaders keep link and count of a leaf in one integer. */
export const maxLeafTriangles = 32;

/** Most levels that are split by surface area; a leaf that is still too large there is halved until it fits. */
const maxSplitDepth = 40;

/**
 * Builds the tree over a triangle soup with the surface area heuristic.
 *
 * @param positions nine numbers a triangle, metres, at least one triangle
 * @param apart so many triangles at the start of `positions` get a branch of their own. For a ground that reaches to the
 *   horizon: its boxes are flat, so rays that rise from it are done with it after one look, and the rest stays tight.
 */
export const buildRayTree = (positions: Float64Array, apart = 0): RayTree => {
  const count = positions.length / 9;
  const soup = new Float32Array(positions);
  const splitter = new TriangleSplitter(soup);
  const isApart = apart > 0 && apart < count;
  const { nodes, depth } = splitAll(splitter, count, isApart ? apart : 0);
  const sourceTriangle = splitter.order;
  const corners = new Float32Array(count * 9);
  for (let t = 0; t < count; t++) {
    const source = (sourceTriangle[t] as number) * 9;
    for (let i = 0; i < 9; i++) corners[t * 9 + i] = soup[source + i] as number;
  }
  fitBoxes(nodes, corners);
  return { nodes, corners, sourceTriangle, apart: isApart ? apart : 0, depth };
};

/** Links and counts of all nodes, boxes left empty. Triangles that stand apart have a child of node 0 to themselves. */
const splitAll = (splitter: TriangleSplitter, triangles: number, apart: number) => {
  // at most one leaf a triangle, one inner node fewer than leaves, and the empty place of node 1
  const nodes = new Float32Array(triangles * 16);
  let used = 2;
  let deepest = 0;
  /** Makes a node an inner one; gives the place of its children. */
  const open = (node: number): number => {
    nodes[node * 8 + 3] = used;
    used += 2;
    return used - 2;
  };
  const put = (node: number, depth: number, from: number, to: number): void => {
    const count = to - from;
    const middle = depth < maxSplitDepth ? splitter.split(from, to) : null;
    if (middle === null && count <= maxLeafTriangles) {
      nodes[node * 8 + 3] = from;
      nodes[node * 8 + 7] = count;
      deepest = Math.max(deepest, depth);
      return;
    }
    const between = middle ?? from + (count >> 1);
    const children = open(node);
    put(children, depth + 1, from, between);
    put(children + 1, depth + 1, between, to);
  };
  if (apart > 0) {
    const children = open(0);
    put(children, 1, 0, apart);
    put(children + 1, 1, apart, triangles);
  } else put(0, 0, 0, triangles);
  return { nodes: nodes.slice(0, used * 8), depth: deepest + 1 };
};

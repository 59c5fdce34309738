import { BufferAttribute, BufferGeometry } from 'three';
import { MeshBVH, SAH } from 'three-mesh-bvh';
import { fitBoxes } from './fit-boxes.ts';

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
 * Builds the tree over a triangle soup with the surface area heuristic of three-mesh-bvh.
 *
 * @param positions nine numbers a triangle, metres, at least one triangle
 * @param apart so many triangles at the start of `positions` get a branch of their own. For a ground that reaches to the
 *   horizon: its boxes are flat, so rays that rise from it are done with it after one look, and the rest stays tight.
 */
export const buildRayTree = (positions: Float64Array, apart = 0): RayTree => {
  const count = positions.length / 9;
  const soup = new Float32Array(positions);
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(soup, 3));
  const isApart = apart > 0 && apart < count;
  if (isApart) {
    geometry.addGroup(0, apart * 3);
    geometry.addGroup(apart * 3, (count - apart) * 3);
  }
  const bvh = new MeshBVH(geometry, { strategy: SAH, maxDepth: maxSplitDepth, targetLeafSize: 4, verbose: false });
  const index = (geometry.index as BufferAttribute).array;
  const sourceTriangle = new Uint32Array(count);
  const corners = new Float32Array(count * 9);
  for (let t = 0; t < count; t++) {
    const source = (index[3 * t] as number) / 3;
    sourceTriangle[t] = source;
    for (let i = 0; i < 9; i++) corners[t * 9 + i] = soup[source * 9 + i] as number;
  }
  const { nodes, depth } = flatten(bvh, count, isApart ? apart : 0);
  fitBoxes(nodes, corners);
  return { nodes, corners, sourceTriangle, apart: isApart ? apart : 0, depth };
};

/** Links and counts of all nodes, boxes left empty. With triangles that stand apart there are two roots, and node 0 becomes their parent. */
const flatten = (bvh: MeshBVH, triangles: number, apart: number): { nodes: Float32Array; depth: number } => {
  // at most one leaf a triangle, one inner node fewer than leaves, and the empty place of node 1
  const nodes = new Float32Array(triangles * 16);
  let used = 2;
  let deepest = 0;
  const roots = apart > 0 ? 2 : 1;
  /** Makes a node an inner one; gives the place of its children. */
  const open = (node: number): number => {
    nodes[node * 8 + 3] = used;
    used += 2;
    return used - 2;
  };
  const putLeaf = (node: number, depth: number, first: number, count: number): void => {
    if (count > maxLeafTriangles) {
      const half = count >> 1;
      const children = open(node);
      putLeaf(children, depth + 1, first, half);
      putLeaf(children + 1, depth + 1, first + half, count - half);
      return;
    }
    nodes[node * 8 + 3] = first;
    nodes[node * 8 + 7] = count;
    deepest = Math.max(deepest, depth);
  };
  const rootPair = roots > 1 ? open(0) : 0;
  for (let root = 0; root < roots; root++) {
    // the walk is depth first, first child first: each level remembers where its next node belongs
    const next = [rootPair + root];
    let last: { node: number; depth: number; first: number } | null = null;
    const endLast = (end: number): void => {
      if (last) putLeaf(last.node, last.depth, last.first, end - last.first);
    };
    bvh.traverse((depth, isLeaf, _bounds, firstOrSplit) => {
      const node = next[depth] as number;
      next[depth] = node + 1;
      if (isLeaf) {
        // a leaf goes on to where the next begins: its own count has 16 bits, too few for a heap in one place
        endLast(firstOrSplit);
        last = { node, depth: depth + roots - 1, first: firstOrSplit };
      } else next[depth + 1] = open(node);
    }, root);
    endLast(roots > 1 && root === 0 ? apart : triangles);
  }
  return { nodes: nodes.slice(0, used * 8), depth: deepest + 1 };
};

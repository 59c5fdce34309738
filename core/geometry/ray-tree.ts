import { BufferAttribute, BufferGeometry } from 'three';
import { MeshBVH, SAH } from 'three-mesh-bvh';

/**
 * A bounding volume tree laid out flat, the same on the CPU and in float textures on the GPU.
 *
 * Node k is eight numbers: min x, y, z, `link`, max x, y, z, `count`. A leaf has count > 0 and `link` is its first
 * triangle; an inner node has count 0, its near child in memory is k + 1 and `link` is the other. Triangles are stored in
 * leaf order. Links stay below 2^24, so 32-bit floats hold them exactly.
 */
export interface RayTree {
  readonly nodes: Float32Array;
  /** Nine numbers a triangle, corners a, b, c, in leaf order, metres, rounded to 32 bits as the GPU will see them. */
  readonly corners: Float32Array;
  /** For each triangle in leaf order, its place in the mesh that went in. */
  readonly sourceTriangle: Uint32Array;
  readonly depth: number;
}

/** Most levels a traversal stack holds, here and in the shaders. */
export const maxTreeDepth = 60;

/**
 * Builds the tree over a triangle soup with the surface area heuristic of three-mesh-bvh.
 *
 * @param positions nine numbers a triangle, metres, at least one triangle
 */
export const buildRayTree = (positions: Float64Array): RayTree => {
  const count = positions.length / 9;
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(Float32Array.from(positions), 3));
  geometry.setIndex(
    new BufferAttribute(
      Uint32Array.from({ length: count * 3 }, (_, i) => i),
      1,
    ),
  );
  const bvh = new MeshBVH(geometry, { strategy: SAH, maxDepth: maxTreeDepth - 2, targetLeafSize: 4 });
  const index = (geometry.index as BufferAttribute).array;
  const sourceTriangle = Uint32Array.from({ length: count }, (_, t) => (index[3 * t] as number) / 3);
  const corners = new Float32Array(count * 9);
  sourceTriangle.forEach((source, t) => {
    corners.set(positions.subarray(source * 9, source * 9 + 9), t * 9);
  });
  return { ...flatten(bvh), corners, sourceTriangle };
};

const flatten = (bvh: MeshBVH): { nodes: Float32Array; depth: number } => {
  const nodes: number[] = [];
  const open: number[] = [];
  let deepest = 0;
  bvh.traverse((depth, isLeaf, bounds, offsetOrSplit, count) => {
    const me = nodes.length / 8;
    // the walk is depth first, first child first: coming back up to `depth` means this node is a second child
    if (open.length > depth) nodes[(open[depth - 1] as number) * 8 + 3] = me;
    open.length = depth;
    open.push(me);
    deepest = Math.max(deepest, depth);
    const [x0, y0, z0, x1, y1, z1] = bounds as unknown as [number, number, number, number, number, number];
    nodes.push(x0, y0, z0, isLeaf ? offsetOrSplit : 0, x1, y1, z1, isLeaf ? count : 0);
  });
  return { nodes: Float32Array.from(nodes), depth: deepest + 1 };
};

import { fitBoxes } from './fit-boxes.ts';
import type { RayTree } from './ray-tree.ts';

/** New corners for a run of triangles. */
export interface MovedTriangles {
  /** The first of them, as its place in the mesh that the tree was built over. */
  readonly firstTriangle: number;
  /** Nine numbers a triangle, metres. */
  readonly positions: Float64Array;
}

const placesOf = new WeakMap<Uint32Array, Uint32Array>();

/** For each triangle of the mesh that went in, its place in leaf order. Kept as long as the order stays. */
export const leafPlaces = ({ sourceTriangle }: RayTree): Uint32Array => {
  const known = placesOf.get(sourceTriangle);
  if (known) return known;
  const places = new Uint32Array(sourceTriangle.length);
  for (let t = 0; t < sourceTriangle.length; t++) places[sourceTriangle[t] as number] = t;
  placesOf.set(sourceTriangle, places);
  return places;
};

/**
 * The tree after some triangles moved: the same splits with new boxes. Rays meet in it exactly what they meet in a tree
 * that is built anew; they only take longer where triangles that lie together in the tree have moved apart (`treeCost`).
 *
 * @returns a new tree that shares `sourceTriangle` with the old one, which stays as it was
 */
export const refitRayTree = (tree: RayTree, moved: readonly MovedTriangles[]): RayTree => {
  const corners = tree.corners.slice();
  const nodes = tree.nodes.slice();
  const hasMoved = new Uint8Array(tree.sourceTriangle.length);
  const places = leafPlaces(tree);
  for (const { firstTriangle, positions } of moved)
    for (let k = 0; k < positions.length / 9; k++) {
      const t = places[firstTriangle + k] as number;
      hasMoved[t] = 1;
      for (let i = 0; i < 9; i++) corners[t * 9 + i] = positions[k * 9 + i] as number;
    }
  fitBoxes(nodes, corners, hasMoved);
  return { ...tree, nodes, corners };
};

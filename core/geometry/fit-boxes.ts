/**
 * Slack in the corner weights that closes hairline cracks between triangles: a ray within a millionth of an edge's length
 * meets the triangle. Used by the walks here and in the shaders.
 */
export const edgeSlack = 1e-6;

/** How far a triangle reaches over its corners by that slack, in shares of its extent, and the rounding of 32-bit numbers. */
const overhang = 2 * edgeSlack;
const rounding = 1.2e-7;

/**
 * Works out the boxes of a tree (layout: ray-tree.ts) from its triangles, leaves first.
 *
 * A leaf's box holds all that counts as its triangles, edge slack included; so no ray meets a triangle outside its boxes,
 * and what a ray meets does not depend on how the tree was split. Flat leaves at zero stay exactly flat.
 *
 * @param nodes boxes are written in place; a box that would not change is not touched
 * @param corners nine numbers a triangle, in leaf order
 * @param hasMoved not zero for each triangle (in leaf order) that moved; all count as moved when left out
 */
export const fitBoxes = (nodes: Float32Array, corners: Float32Array, hasMoved?: Uint8Array): void => {
  const isStale = new Uint8Array(nodes.length / 8);
  for (let node = isStale.length - 1; node >= 0; node--) {
    const link = nodes[node * 8 + 3] as number;
    const count = nodes[node * 8 + 7] as number;
    if (count > 0) {
      if (hasMoved && !anyOf(hasMoved, link, count)) continue;
      fitLeaf(nodes, node, corners, link, count);
    } else if (link > 0) {
      if (!isStale[link] && !isStale[link + 1]) continue;
      fitInner(nodes, node, link);
    }
    isStale[node] = 1;
  }
};

const anyOf = (flags: Uint8Array, first: number, count: number): boolean => {
  for (let i = first; i < first + count; i++) if (flags[i]) return true;
  return false;
};

const fitLeaf = (nodes: Float32Array, node: number, corners: Float32Array, first: number, count: number): void => {
  for (let axis = 0; axis < 3; axis++) {
    let low = Number.POSITIVE_INFINITY;
    let high = Number.NEGATIVE_INFINITY;
    for (let i = first * 9 + axis; i < (first + count) * 9; i += 3) {
      const value = corners[i] as number;
      if (value < low) low = value;
      if (value > high) high = value;
    }
    const over = overhang * (high - low);
    nodes[node * 8 + axis] = low - over - rounding * Math.abs(low);
    nodes[node * 8 + 4 + axis] = high + over + rounding * Math.abs(high);
  }
};

const fitInner = (nodes: Float32Array, node: number, children: number): void => {
  const [a, b] = [children * 8, children * 8 + 8];
  for (let i = 0; i < 3; i++) {
    nodes[node * 8 + i] = Math.min(nodes[a + i] as number, nodes[b + i] as number);
    nodes[node * 8 + 4 + i] = Math.max(nodes[a + 4 + i] as number, nodes[b + 4 + i] as number);
  }
};

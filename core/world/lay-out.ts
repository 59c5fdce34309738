import { buildRayTree, type RayTree } from '../geometry/ray-tree.ts';
import { leafPlaces, refitRayTree } from '../geometry/refit-ray-tree.ts';
import { treeCost } from '../geometry/tree-cost.ts';
import type { SoupEntry } from './soup.ts';

/** A tree over all triangles of a soup, and what belongs to each of them, in the tree's order. */
export interface Layout {
  readonly tree: RayTree;
  readonly normals: Float32Array;
  readonly tints: Float32Array | null;
  readonly finishOfTriangle: Uint16Array;
  readonly subjectOfTriangle: Int16Array;
  readonly isSolidTriangle: Uint8Array;
}

/** A layout with what it was made of, from which that of a soup with moved meshes can be had. */
export interface LaidOut {
  readonly layout: Layout;
  readonly entries: readonly SoupEntry[];
  /** `treeCost` when the tree was last built. */
  readonly builtCost: number;
}

/** How much more than a freshly built tree one may cost that was refitted, before it is built anew. */
export const mostCostGrowth = 1.5;

const trianglesOf = ({ mesh }: SoupEntry): number => mesh.positions.length / 9;

/** Three numbers a triangle, in leaf order. */
const inLeafOrder = (triples: Float32Array, sourceTriangle: Uint32Array): Float32Array => {
  const sorted = new Float32Array(triples.length);
  for (let t = 0; t < sourceTriangle.length; t++)
    for (let i = 0; i < 3; i++) sorted[t * 3 + i] = triples[(sourceTriangle[t] as number) * 3 + i] as number;
  return sorted;
};

/** Builds the tree; the first entry is the ground, which gets a branch of its own. */
const build = (entries: readonly SoupEntry[]): Layout => {
  const count = entries.reduce((sum, entry) => sum + trianglesOf(entry), 0);
  const positions = new Float64Array(count * 9);
  const normals = new Float32Array(count * 9);
  const finish = new Uint16Array(count);
  const subject = new Int16Array(count);
  const isSolid = new Uint8Array(count);
  const tints = entries.some((entry) => entry.tints) ? new Float32Array(count * 3).fill(1) : null;
  let at = 0;
  for (const entry of entries) {
    const next = at + trianglesOf(entry);
    positions.set(entry.mesh.positions, at * 9);
    normals.set(entry.mesh.normals, at * 9);
    finish.fill(entry.finish, at, next);
    subject.fill(entry.subject, at, next);
    isSolid.fill(entry.isSolid ? 1 : 0, at, next);
    if (tints && entry.tints) tints.set(entry.tints, at * 3);
    at = next;
  }
  const tree = buildRayTree(positions, trianglesOf(entries[0] as SoupEntry));
  const { sourceTriangle } = tree;
  const sortedNormals = new Float32Array(count * 9);
  for (let t = 0; t < count; t++)
    for (let i = 0; i < 9; i++) sortedNormals[t * 9 + i] = normals[(sourceTriangle[t] as number) * 9 + i] as number;
  return {
    tree,
    normals: sortedNormals,
    tints: tints && inLeafOrder(tints, sourceTriangle),
    finishOfTriangle: finish.map((_, t) => finish[sourceTriangle[t] as number] as number),
    subjectOfTriangle: subject.map((_, t) => subject[sourceTriangle[t] as number] as number),
    isSolidTriangle: isSolid.map((_, t) => isSolid[sourceTriangle[t] as number] as number),
  };
};

const isLaidOutAlike = (a: SoupEntry, b: SoupEntry | undefined): boolean =>
  b !== undefined &&
  trianglesOf(a) === trianglesOf(b) &&
  a.finish === b.finish &&
  a.subject === b.subject &&
  a.isSolid === b.isSolid &&
  a.tints === b.tints;

/** The layout before with the meshes that are others now put in their places; null where more than corners differ. */
const moved = (entries: readonly SoupEntry[], before: LaidOut): Layout | null => {
  if (entries.length !== before.entries.length) return null;
  if (!entries.every((entry, i) => isLaidOutAlike(entry, before.entries[i]))) return null;
  const runs: { firstTriangle: number; entry: SoupEntry }[] = [];
  let firstTriangle = 0;
  entries.forEach((entry, i) => {
    if (entry.mesh !== before.entries[i]?.mesh) runs.push({ firstTriangle, entry });
    firstTriangle += trianglesOf(entry);
  });
  if (runs.length === 0) return before.layout;
  const tree = refitRayTree(
    before.layout.tree,
    runs.map(({ firstTriangle, entry }) => ({ firstTriangle, positions: entry.mesh.positions })),
  );
  const normals = before.layout.normals.slice();
  const places = leafPlaces(tree);
  for (const { firstTriangle, entry } of runs)
    for (let k = 0; k < trianglesOf(entry); k++)
      for (let i = 0; i < 9; i++)
        normals[(places[firstTriangle + k] as number) * 9 + i] = entry.mesh.normals[k * 9 + i] as number;
  return { ...before.layout, tree, normals };
};

/**
 * Lays a soup out: its first entry is the ground. Where only corners and normals differ from the soup before, its tree is
 * refitted, unless that would make rays slower than `mostCostGrowth`; what rays meet is the same either way.
 */
export const layOut = (entries: readonly SoupEntry[], before: LaidOut | null): LaidOut => {
  const layout = before && moved(entries, before);
  if (before && layout && treeCost(layout.tree) <= mostCostGrowth * before.builtCost)
    return { layout, entries, builtCost: before.builtCost };
  const fresh = build(entries);
  return { layout: fresh, entries, builtCost: treeCost(fresh.tree) };
};

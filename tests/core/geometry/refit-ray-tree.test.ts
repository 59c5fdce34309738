import { describe, expect, it } from 'vitest';
import { anyHit, closestHit, forEachHit } from '../../../core/geometry/cast-ray.ts';
import type { Mesh } from '../../../core/geometry/mesh.ts';
import { buildRayTree, type RayTree } from '../../../core/geometry/ray-tree.ts';
import { type MovedTriangles, refitRayTree } from '../../../core/geometry/refit-ray-tree.ts';
import { treeCost } from '../../../core/geometry/tree-cost.ts';
import type { Vec3 } from '../../../core/geometry/vec.ts';
import { crossings, mixedMeshes, numbersFrom, shots, soupOf, strewn } from '../support/rays.ts';

const seed = 20261129;
const before = mixedMeshes(seed, 60);
const apart = 2;

/** Moves some meshes anywhere, far ones too; one collapses to a point. */
const moveSome = (meshes: readonly Mesh[], round: number): { after: Mesh[]; moved: MovedTriangles[] } => {
  const any = numbersFrom(seed + round);
  const moved: MovedTriangles[] = [];
  let firstTriangle = 0;
  const after = meshes.map((mesh, m) => {
    const stays = m === 0 || any(0, 1) < 0.5;
    const placed = stays ? mesh : strewn(mesh, any, any(0, 1) < 0.2 ? 100 : 3);
    const now = m === round ? { ...placed, positions: placed.positions.map(() => 0.5) } : placed;
    if (now !== mesh) moved.push({ firstTriangle, positions: now.positions });
    firstTriangle += mesh.positions.length / 9;
    return now;
  });
  return { after, moved };
};

/** Triangles along a ray, as their places in the mesh. */
const along = (tree: RayTree, origin: Vec3, direction: Vec3): number[] => {
  const found: number[] = [];
  forEachHit(tree, origin, direction, (triangle) => found.push(tree.sourceTriangle[triangle] as number));
  return found.sort((a, b) => a - b);
};

describe(`refitRayTree, seed ${seed}`, () => {
  let meshes: readonly Mesh[] = before;
  let tree = buildRayTree(soupOf(before), apart);

  it.each([1, 2, 3])(
    'round %i of moves: meets what a tree built anew meets, exactly, and what a plain loop does',
    (round) => {
      const { after, moved } = moveSome(meshes, round);
      const old = { nodes: tree.nodes.slice(), corners: tree.corners.slice() };
      const refitted = refitRayTree(tree, moved);
      // the tree before stays as it was
      expect(tree.nodes).toEqual(old.nodes);
      expect(tree.corners).toEqual(old.corners);
      const soup = soupOf(after);
      const built = buildRayTree(soup, apart);
      const rounded = Float32Array.from(soup);
      let hits = 0;
      shots(seed + 100 * round, 3000).forEach(({ origin, direction, limit }) => {
        const ours = closestHit(refitted, origin, direction);
        expect(ours?.t).toBe(closestHit(built, origin, direction)?.t);
        expect(anyHit(refitted, origin, direction, limit)).toBe(anyHit(built, origin, direction, limit));
        const met = along(refitted, origin, direction);
        expect(met).toEqual(along(built, origin, direction));
        if (ours) hits++;
        const crossed = crossings(rounded, origin, direction);
        if (crossed.some(({ edge }) => Math.abs(edge) < 1e-5)) return;
        expect(met).toEqual(crossed.filter(({ edge }) => edge > 0).map(({ triangle }) => triangle));
      });
      expect(hits).toBeGreaterThan(1000);
      [meshes, tree] = [after, refitted];
    },
  );

  it('gives every box that a tree fitted from nothing over the same splits has', () => {
    const { after } = moveSome(before, 7);
    const { moved } = moveSome(before, 7);
    const built = buildRayTree(soupOf(before), apart);
    const some = refitRayTree(built, moved);
    const all = refitRayTree(built, [{ firstTriangle: 0, positions: soupOf(after) }]);
    expect(some.nodes).toEqual(all.nodes);
    expect(some.corners).toEqual(all.corners);
    // and one that moves back is what it was
    expect(refitRayTree(some, [{ firstTriangle: 0, positions: soupOf(before) }]).nodes).toEqual(built.nodes);
  });
});

describe('treeCost', () => {
  it('is the sum of surfaces, a triangle at 1.25 (one leaf: by hand)', () => {
    // boxes reach a few millionths over their corners
    const one = buildRayTree(Float64Array.from([0, 0, 0, 2, 0, 0, 0, 3, 4]));
    expect(treeCost(one)).toBeCloseTo(1.25 * 2 * (2 * 3 + 3 * 4 + 4 * 2), 2);
  });

  it('stays when all move together, and grows when neighbours part', () => {
    const built = buildRayTree(soupOf(before), apart);
    const shifted = soupOf(before).map((v, i) => (i >= 18 && i % 3 === 0 ? v + 3 : v));
    const together = refitRayTree(built, [{ firstTriangle: 0, positions: shifted }]);
    expect(treeCost(together) / treeCost(built)).toBeCloseTo(1, 3);
    // every other triangle goes far off
    const torn = soupOf(before).map((v, i) => (i >= 18 && i % 3 === 0 && Math.floor(i / 9) % 2 ? v + 50 : v));
    const parted = refitRayTree(built, [{ firstTriangle: 0, positions: torn }]);
    expect(treeCost(parted)).toBeGreaterThan(3 * treeCost(buildRayTree(torn, apart)));
  });
});

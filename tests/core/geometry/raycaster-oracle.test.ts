import {
  BufferAttribute,
  BufferGeometry,
  DoubleSide,
  MeshBasicMaterial,
  Raycaster,
  Mesh as ThreeMesh,
  Vector3,
} from 'three';
import { describe, expect, it } from 'vitest';
import { closestHit } from '../../../core/geometry/cast-ray.ts';
import { buildRayTree } from '../../../core/geometry/ray-tree.ts';
import { crossings, mixedMeshes, shots, soupOf } from '../support/rays.ts';

const seed = 20261128;
const rays = 20_000;
const meshes = mixedMeshes(seed, 150);
const tree = buildRayTree(soupOf(meshes), 2);
const count = tree.corners.length / 9;

/** three's caster without any tree: it tries every triangle. */
const castByThree = (() => {
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(tree.corners, 3));
  const body = new ThreeMesh(geometry, new MeshBasicMaterial({ side: DoubleSide }));
  const caster = new Raycaster();
  return (origin: readonly [number, number, number], direction: readonly [number, number, number]) => {
    caster.set(new Vector3(...origin), new Vector3(...direction));
    return caster.intersectObject(body)[0]?.distance ?? null;
  };
})();

/** Shares of an edge's length: our walk takes rays in that pass a triangle within this (`edgeSlack`), three does not. */
const edgeWeight = 2e-6;

describe(`closestHit against three’s Raycaster: ${meshes.length} parts, ${count} triangles, ${rays} rays, seed ${seed}`, () => {
  it('meets the same or nothing, at the same distance (rel 1e-9), but for rays that run along an edge', () => {
    const faults: string[] = [];
    let [hits, misses, alongEdges] = [0, 0, 0];
    shots(seed + 1, rays).forEach(({ origin, direction }, n) => {
      const theirs = castByThree(origin, direction);
      const ours = closestHit(tree, origin, direction)?.t ?? null;
      if (ours === null && theirs === null) misses++;
      else if (ours !== null && theirs !== null && Math.abs(ours / theirs - 1) <= 1e-9) hits++;
      else if (crossings(tree.corners, origin, direction).some(({ edge }) => Math.abs(edge) <= edgeWeight))
        alongEdges++;
      else faults.push(`ray ${n}: ${ours} m, three says ${theirs} m`);
    });
    expect(faults).toEqual([]);
    expect(hits + misses + alongEdges).toBe(rays);
    // both kinds of answer are common, and edges are met by chance as often as they are wide: hardly ever
    expect(hits).toBeGreaterThan(rays / 3);
    expect(misses).toBeGreaterThan(rays / 10);
    expect(alongEdges).toBeLessThanOrEqual(rays / 2000);
  });
});

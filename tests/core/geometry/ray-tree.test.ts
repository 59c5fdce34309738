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
import { anyHit, closestHit } from '../../../core/geometry/cast-ray.ts';
import type { Mesh } from '../../../core/geometry/mesh.ts';
import { rigidFromTurns } from '../../../core/geometry/mesh.ts';
import { planeMesh } from '../../../core/geometry/parts/plane.ts';
import { seededRandom } from '../../../core/geometry/random.ts';
import { buildRayTree, maxTreeDepth } from '../../../core/geometry/ray-tree.ts';
import { normalize, sub, type Vec3 } from '../../../core/geometry/vec.ts';
import { placeMesh } from '../../../core/world/part-mesh.ts';
import { closedMeshes } from '../support/meshes.ts';

const seed = 20261009;
const rays = 20_000;

/** A mixed scene: ground, and the coarser parts strewn and turned, some through each other. */
const scene = (() => {
  const random = seededRandom(seed);
  const any = (low: number, high: number) => low + (high - low) * random();
  const wanted = ['sharp box', 'tapered box', 'tapered cylinder', 'cone', 'flattened sphere', 'coarse sphere'];
  const parts = closedMeshes.filter(([name]) => wanted.includes(name)).map(([, mesh]) => mesh);
  const strewn: Mesh[] = [...parts, ...parts].map((mesh) =>
    placeMesh(mesh, rigidFromTurns([any(-4, 4), any(0, 2), any(-4, 4)], any(0, 6), any(-1, 1), any(-1, 1))),
  );
  const meshes = [planeMesh(30, 30), ...strewn];
  return Float64Array.from(meshes.flatMap(({ positions }) => [...positions]));
})();
const tree = buildRayTree(scene);
const count = tree.corners.length / 9;

const shoot = (() => {
  const random = seededRandom(seed + 1);
  const near = (): Vec3 => [12 * random() - 6, 4 * random() - 0.2, 12 * random() - 6];
  return Array.from({ length: rays }, () => {
    const [origin, aim] = [near(), near()];
    return { origin, direction: normalize(sub(aim, origin)), limit: 6 * random() };
  });
})();

/** Six times the volume that a direction spans with two corners seen from the ray's start. */
const spanned = (d: Vec3, p: Vec3, q: Vec3) =>
  d[0] * (p[1] * q[2] - p[2] * q[1]) + d[1] * (p[2] * q[0] - p[0] * q[2]) + d[2] * (p[0] * q[1] - p[1] * q[0]);
const corner = (i: number): Vec3 => [tree.corners[i], tree.corners[i + 1], tree.corners[i + 2]] as unknown as Vec3;
const triangles = Array.from(
  { length: count },
  (_, k) => [corner(9 * k), corner(9 * k + 3), corner(9 * k + 6)] as const,
);

/** A ray meets a triangle when it passes all three edges on one side (Pluecker). Nothing is shared with the core. */
const distancesAlong = (origin: Vec3, d: Vec3): { t: number; edge: number; triangle: number }[] => {
  const found: { t: number; edge: number; triangle: number }[] = [];
  triangles.forEach(([p, q, r], triangle) => {
    const [a, b, c] = [sub(p, origin), sub(q, origin), sub(r, origin)];
    const [u, w, s] = [spanned(d, b, c), spanned(d, c, a), spanned(d, a, b)];
    const total = u + w + s;
    if (total === 0) return;
    const edge = Math.min(u / total, w / total, s / total);
    if (edge < -1e-4) return;
    const along = (i: 0 | 1 | 2) => ((u * a[i] + w * b[i] + s * c[i]) / total) * d[i];
    const t = along(0) + along(1) + along(2);
    if (t > 0) found.push({ t, edge, triangle });
  });
  return found;
};

describe('buildRayTree', () => {
  it('keeps every triangle once, in a tree that the stacks can walk', () => {
    expect(new Set(tree.sourceTriangle).size).toBe(scene.length / 9);
    expect(tree.depth).toBeLessThanOrEqual(maxTreeDepth);
    const inLeafOrder = [...tree.sourceTriangle].flatMap((source) => [...scene.subarray(9 * source, 9 * source + 9)]);
    expect([...tree.corners]).toEqual(inLeafOrder.map(Math.fround));
  });
});

describe(`closestHit and anyHit over ${count} triangles, ${rays} rays, seed ${seed}`, () => {
  it('agree with a plain loop over all triangles (t rel 1e-9, edges apart)', () => {
    let [hits, blocked, onEdges] = [0, 0, 0];
    const faults: string[] = [];
    const near = (a: number, b: number) => Math.abs(a / b - 1) <= 1e-9;
    const odd = (triangle: number) => triangle % 2 === 1;
    shoot.forEach(({ origin, direction, limit }, n) => {
      const all = distancesAlong(origin, direction);
      // where a ray runs within 1e-5 of an edge either answer is right
      if (all.some(({ edge }) => Math.abs(edge) < 1e-5)) {
        onEdges++;
        return;
      }
      const crossed = all.filter(({ edge }) => edge > 0);
      const nearest = crossed.reduce((least, { t }) => Math.min(least, t), Number.POSITIVE_INFINITY);
      const check = (what: string, isRight: boolean) => {
        if (!isRight) faults.push(`ray ${n}: ${what}`);
      };
      const hit = closestHit(tree, origin, direction);
      check('hit or miss', (hit === null) === (nearest === Number.POSITIVE_INFINITY));
      if (hit) {
        hits++;
        check('distance', near(hit.t, nearest));
        check(
          'triangle',
          crossed.some(({ t, triangle }) => triangle === hit.triangle && near(t, hit.t)),
        );
      }
      const any = anyHit(tree, origin, direction, limit);
      if (any) blocked++;
      check('any within the limit', any === nearest < limit);
      const oddCrossed = crossed.some(({ t, triangle }) => odd(triangle) && t < limit);
      check('any that counts', anyHit(tree, origin, direction, limit, odd) === oddCrossed);
      check('closest within the limit', (closestHit(tree, origin, direction, limit) === null) === nearest >= limit);
    });
    expect(faults).toEqual([]);
    expect(hits).toBeGreaterThan(rays / 3);
    expect(blocked).toBeGreaterThan(rays / 10);
    expect(blocked).toBeLessThan(hits);
    expect(onEdges).toBeLessThan(rays / 100);
  });

  it('agree with three’s own Raycaster (t rel 1e-9; at most 1 ray in 1000 apart, at edges)', () => {
    const geometry = new BufferGeometry();
    geometry.setAttribute('position', new BufferAttribute(tree.corners, 3));
    const body = new ThreeMesh(geometry, new MeshBasicMaterial({ side: DoubleSide }));
    const caster = new Raycaster();
    let [same, apart] = [0, 0];
    for (const { origin, direction } of shoot) {
      caster.set(new Vector3(...origin), new Vector3(...direction));
      const theirs = caster.intersectObject(body)[0]?.distance ?? Number.POSITIVE_INFINITY;
      const ours = closestHit(tree, origin, direction)?.t ?? Number.POSITIVE_INFINITY;
      if (ours === theirs || Math.abs(ours / theirs - 1) <= 1e-9) same++;
      else apart++;
    }
    expect(same + apart).toBe(rays);
    expect(apart).toBeLessThanOrEqual(rays / 1000);
  });
});

import { describe, expect, it } from 'vitest';
import { anyHit, closestHit, forEachHit } from '../../../core/geometry/cast-ray.ts';
import { edgeSlack } from '../../../core/geometry/fit-boxes.ts';
import { buildRayTree, maxLeafTriangles, maxTreeDepth, type RayTree } from '../../../core/geometry/ray-tree.ts';
import { treeCost } from '../../../core/geometry/tree-cost.ts';
import { buildStage } from '../../../core/world/stage.ts';
import { pebbleSetup } from '../support/pebble-setup.ts';
import { crossings, mixedMeshes, shots, soupOf } from '../support/rays.ts';

const seed = 20261009;
const rays = 20_000;
const scene = soupOf(mixedMeshes(seed, 60));
const apart = 2;
const tree = buildRayTree(scene, apart);
const count = tree.corners.length / 9;
const shot = shots(seed + 1, rays);

/** The triangles of each branch that hangs at the root, and the deepest level, by following the links. */
const branches = ({ nodes }: RayTree) => {
  let deepest = 0;
  const seen = new Set<number>();
  const trianglesUnder = (node: number, depth: number): number[] => {
    expect(seen.has(node)).toBe(false);
    seen.add(node);
    deepest = Math.max(deepest, depth);
    const [link, leaf] = [nodes[node * 8 + 3] as number, nodes[node * 8 + 7] as number];
    expect(leaf).toBeLessThanOrEqual(maxLeafTriangles);
    if (leaf > 0) return Array.from({ length: leaf }, (_, i) => link + i);
    expect(link).toBeGreaterThan(node);
    return [...trianglesUnder(link, depth + 1), ...trianglesUnder(link + 1, depth + 1)];
  };
  const all = trianglesUnder(0, 1);
  const first = nodes[3] as number;
  seen.clear();
  const ofFirst = nodes[7] === 0 ? trianglesUnder(first, 2) : [];
  return { all, ofFirst, deepest };
};

describe('buildRayTree', () => {
  it('keeps every triangle once, in a tree that the stacks can walk', () => {
    expect(new Set(tree.sourceTriangle).size).toBe(scene.length / 9);
    const { all, deepest } = branches(tree);
    expect([...all].sort((a, b) => a - b)).toEqual(Array.from({ length: count }, (_, t) => t));
    expect(tree.depth).toBe(deepest);
    expect(tree.depth).toBeLessThanOrEqual(maxTreeDepth);
    const inLeafOrder = [...tree.sourceTriangle].flatMap((source) => [...scene.subarray(9 * source, 9 * source + 9)]);
    expect([...tree.corners]).toEqual(inLeafOrder.map(Math.fround));
  });

  it.each([65_536, 65_537, 131_072])(
    'keeps each of %i triangles that lie in one place, beside a ground and a post',
    (count) => {
      const one = [0, 0, 0, 1, 0, 0, 0, 0, 1];
      const soup = new Float64Array((count + 2) * 9);
      for (let t = 0; t < count + 2; t++) soup.set(t < count + 1 ? one : one.map((v) => v + 40), t * 9);
      const heap = buildRayTree(soup, 1);
      const { all, deepest } = branches(heap);
      expect(all.length).toBe(count + 2);
      expect(new Set(all).size).toBe(count + 2);
      expect(deepest).toBeLessThanOrEqual(maxTreeDepth);
      expect(treeCost(heap)).toBeGreaterThan(0);
    },
  );

  it('of 120 triangles, each half as large and as far off as the one before, is one that the stacks can walk', () => {
    // every split parts the largest from the rest, so that splits alone would go down 120 levels
    const shrinking = Float64Array.from(
      Array.from({ length: 120 }, (_, t) => [1, 0, 0, 1.2, 0.1, 0, 1, 0.1, 0.2].map((v) => v * 2 ** -t)).flat(),
    );
    const heap = buildRayTree(shrinking);
    const { all, deepest } = branches(heap);
    expect(deepest).toBeLessThanOrEqual(maxTreeDepth);
    expect([...all].sort((a, b) => a - b)).toEqual(Array.from({ length: 120 }, (_, t) => t));
    for (const t of [0, 1, 5, 20]) {
      const middle = [1.05, 0.06, 0.05].map((v) => v * 2 ** -t) as [number, number, number];
      const hit = closestHit(heap, [middle[0], 9, middle[2]], [0, -1, 0]);
      expect(heap.sourceTriangle[hit?.triangle ?? -1]).toBe(t);
    }
  });

  it('gives what is to stand apart a branch of its own', () => {
    expect(branches(tree).ofFirst.sort((a, b) => a - b)).toEqual(Array.from({ length: apart }, (_, t) => t));
    expect([...tree.sourceTriangle.subarray(0, apart)].sort()).toEqual([0, 1]);
  });

  it('takes a single triangle, and a thousand that lie in one place', () => {
    const one = [0, 0, 0, 1, 0, 0, 0, 0, 1];
    const alone = buildRayTree(Float64Array.from(one), 1);
    expect(anyHit(alone, [0.2, 1, 0.2], [0, -1, 0], 2)).toBe(true);
    expect(anyHit(alone, [0.8, 1, 0.8], [0, -1, 0], 2)).toBe(false);
    const heap = buildRayTree(Float64Array.from(Array.from({ length: 1000 }, () => one).flat()));
    expect(branches(heap).all.length).toBe(1000);
    expect(heap.depth).toBeLessThanOrEqual(maxTreeDepth);
    let met = 0;
    forEachHit(heap, [0.2, 1, 0.2], [0, -1, 0], () => met++);
    expect(met).toBe(1000);
  });
});

describe(`closestHit and anyHit over ${count} triangles, ${rays} rays, seed ${seed}`, () => {
  it('agree with a plain loop over all triangles (t rel 1e-9, edges apart)', () => {
    let [hits, blocked, onEdges] = [0, 0, 0];
    const faults: string[] = [];
    const near = (a: number, b: number) => Math.abs(a / b - 1) <= 1e-9;
    const odd = (triangle: number) => triangle % 2 === 1;
    shot.forEach(({ origin, direction, limit }, n) => {
      const all = crossings(tree.corners, origin, direction);
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
    expect(onEdges).toBeLessThan(rays / 50);
  });
});

describe('edgeSlack', () => {
  it('lets rays in that pass half of it outside an edge, where no box of bare corners reaches, and none twice as far', () => {
    const alone = buildRayTree(Float64Array.from([0, 0, 0, 1, 0, 0, 0, 0, 1]));
    const isMet = (x: number, z: number) => anyHit(alone, [x, 1, z], [0, -1, 0], 2);
    for (const along of [0.1, 0.5, 0.9]) {
      expect(isMet(-0.5 * edgeSlack, along * 0.9)).toBe(true);
      expect(isMet(along * 0.9, -0.5 * edgeSlack)).toBe(true);
      expect(isMet(-2 * edgeSlack, along * 0.9)).toBe(false);
      expect(isMet(along * 0.9, -2 * edgeSlack)).toBe(false);
      expect(isMet(along, 1 - along + 0.5 * edgeSlack)).toBe(true);
      expect(isMet(along, 1 - along + 2 * edgeSlack)).toBe(false);
    }
  });
});

describe('growth', () => {
  /** Nodes that a walk visits, counted where it reads the last number of a node, which it does once a visit. */
  const visits = (of: RayTree, walk: (counted: RayTree) => void): number => {
    let count = 0;
    const nodes = new Proxy(of.nodes, {
      get: (target, key) => {
        if (Number(key) % 8 === 7) count++;
        return Reflect.get(target, key);
      },
    });
    walk({ ...of, nodes });
    return count;
  };

  it('ten times the pebbles on a ground as full add no more looks than two and a half for each level that the tree grows by', () => {
    const looks = [1000, 10_000, 100_000].map((size) => {
      const { ground, subjects } = pebbleSetup(size, 'finer');
      const stage = buildStage(ground, subjects);
      // from above onto the pebbles, which lie about nine metres north, and from the ground toward a low lamp
      const downward = shots(seed, 1000).map(({ origin, direction }) => ({
        origin: [origin[0], Math.abs(origin[1]) + 0.1, origin[2] - 9] as const,
        direction: [direction[0], -Math.abs(direction[1]), direction[2]] as const,
      }));
      const closest = visits(stage.tree, (counted) => {
        for (const { origin, direction } of downward) closestHit(counted, origin, direction);
      });
      const shadow = visits(stage.tree, (counted) => {
        for (const { origin } of downward) anyHit(counted, [origin[0], 0.001, origin[2]], [0.4, 0.2, 0.3], 5);
      });
      return { triangles: stage.tree.sourceTriangle.length, closest: closest / 1000, shadow: shadow / 1000 };
    });
    expect(looks[0]?.closest).toBeGreaterThan(2);
    expect(looks[0]?.shadow).toBeGreaterThan(2);
    looks.slice(1).forEach(({ triangles, closest, shadow }, i) => {
      const before = looks[i] as (typeof looks)[number];
      const levels = Math.log2(triangles / before.triangles);
      expect(closest - before.closest).toBeLessThanOrEqual(2.5 * levels);
      expect(shadow - before.shadow).toBeLessThanOrEqual(2.5 * levels);
    });
  });
});

import { edgeSlack } from './fit-boxes.ts';
import { maxTreeDepth, type RayTree } from './ray-tree.ts';
import type { Vec3 } from './vec.ts';

/** A closest hit: distance along the ray in units of its direction, triangle in leaf order, weights of corners b and c. */
export interface RayHit {
  readonly t: number;
  readonly triangle: number;
  readonly u: number;
  readonly v: number;
}

/** Nodes still to be visited, and where the ray enters each. */
const stack = new Int32Array(maxTreeDepth);
const stackEntry = new Float64Array(maxTreeDepth);

/** A direction component never exactly zero, so that slab tests need no special case. */
const inverse = (d: number) => 1 / (Math.abs(d) < 1e-12 ? (d < 0 ? -1e-12 : 1e-12) : d);

/** One ray against one tree: the state of a walk, kept out of the loops below. Not re-entrant, and needs not be. */
const ray = { ox: 0, oy: 0, oz: 0, dx: 0, dy: 0, dz: 0, ix: 0, iy: 0, iz: 0 };
const found = { t: 0, u: 0, v: 0 };

const start = (origin: Vec3, direction: Vec3) => {
  [ray.ox, ray.oy, ray.oz] = origin;
  [ray.dx, ray.dy, ray.dz] = direction;
  [ray.ix, ray.iy, ray.iz] = [inverse(ray.dx), inverse(ray.dy), inverse(ray.dz)];
};

/** Entry distance into a node's box, or Infinity when missed before `limit`. */
const enterBox = (nodes: Float32Array, node: number, limit: number): number => {
  const n = node * 8;
  const ax = ((nodes[n] as number) - ray.ox) * ray.ix;
  const bx = ((nodes[n + 4] as number) - ray.ox) * ray.ix;
  const ay = ((nodes[n + 1] as number) - ray.oy) * ray.iy;
  const by = ((nodes[n + 5] as number) - ray.oy) * ray.iy;
  const az = ((nodes[n + 2] as number) - ray.oz) * ray.iz;
  const bz = ((nodes[n + 6] as number) - ray.oz) * ray.iz;
  const near = Math.max(Math.min(ax, bx), Math.min(ay, by), Math.min(az, bz), 0);
  const far = Math.min(Math.max(ax, bx), Math.max(ay, by), Math.max(az, bz), limit);
  return near <= far * 1.0000004 ? near : Number.POSITIVE_INFINITY;
};

/** Whether the ray meets a triangle within (0, limit); leaves t, u, v in `found`. Moller and Trumbore 1997. */
const meetsTriangle = (c: Float32Array, triangle: number, limit: number): boolean => {
  const i = triangle * 9;
  const [x, y, z] = [c[i] as number, c[i + 1] as number, c[i + 2] as number];
  const [ex, ey, ez] = [(c[i + 3] as number) - x, (c[i + 4] as number) - y, (c[i + 5] as number) - z];
  const [fx, fy, fz] = [(c[i + 6] as number) - x, (c[i + 7] as number) - y, (c[i + 8] as number) - z];
  const { dx, dy, dz } = ray;
  const [px, py, pz] = [dy * fz - dz * fy, dz * fx - dx * fz, dx * fy - dy * fx];
  const det = ex * px + ey * py + ez * pz;
  if (det === 0) return false;
  const inv = 1 / det;
  const [sx, sy, sz] = [ray.ox - x, ray.oy - y, ray.oz - z];
  const u = (sx * px + sy * py + sz * pz) * inv;
  if (u < -edgeSlack || u > 1 + edgeSlack) return false;
  const [qx, qy, qz] = [sy * ez - sz * ey, sz * ex - sx * ez, sx * ey - sy * ex];
  const v = (dx * qx + dy * qy + dz * qz) * inv;
  if (v < -edgeSlack || u + v > 1 + edgeSlack) return false;
  const t = (fx * qx + fy * qy + fz * qz) * inv;
  if (!(t > 0 && t < limit)) return false;
  found.t = t;
  found.u = u;
  found.v = v;
  return true;
};

/** What a walk is after; all triangles count and the nearest is wanted where nothing is said. */
interface Quest {
  /** Whether the first triangle met will do. */
  readonly first?: boolean;
  /** Restricts the walk to some triangles. */
  readonly counts?: ((triangle: number) => boolean) | undefined;
  /** Is told of every triangle met, in no order; none then cuts the walk short. */
  readonly each?: (triangle: number, t: number) => void;
}

const seekNearest: Quest = {};
const seekFirst: Quest = { first: true };

/** Walks the tree, nearer child first. The triangle that was sought, or -1; its t, u, v are left in `found`. */
const walk = (tree: RayTree, limit: number, { first, counts, each }: Quest): number => {
  const { nodes, corners } = tree;
  if (enterBox(nodes, 0, limit) === Number.POSITIVE_INFINITY) return -1;
  let bound = limit;
  let best = -1;
  let node = 0;
  let top = 0;
  for (;;) {
    const link = nodes[node * 8 + 3] as number;
    const count = nodes[node * 8 + 7] as number;
    if (count === 0) {
      const one = enterBox(nodes, link, bound);
      const other = enterBox(nodes, link + 1, bound);
      const isOneNear = one <= other;
      if ((isOneNear ? one : other) < Number.POSITIVE_INFINITY) {
        const far = isOneNear ? other : one;
        if (far < Number.POSITIVE_INFINITY) {
          stack[top] = isOneNear ? link + 1 : link;
          stackEntry[top++] = far;
        }
        node = isOneNear ? link : link + 1;
        continue;
      }
    }
    for (let triangle = link; triangle < link + count; triangle++) {
      if ((counts && !counts(triangle)) || !meetsTriangle(corners, triangle, bound)) continue;
      if (first) return triangle;
      if (each) {
        each(triangle, found.t);
        continue;
      }
      bound = found.t;
      best = triangle;
    }
    // on to what waits, unless something nearer was met meanwhile
    do {
      if (top === 0) return best;
      node = stack[--top] as number;
    } while ((stackEntry[top] as number) > bound);
  }
};

/** Nearest triangle along a ray within (0, limit), or null. Both sides of a triangle count. */
export const closestHit = (
  tree: RayTree,
  origin: Vec3,
  direction: Vec3,
  limit = Number.POSITIVE_INFINITY,
): RayHit | null => {
  start(origin, direction);
  const triangle = walk(tree, limit, seekNearest);
  return triangle < 0 ? null : { t: found.t, triangle, u: found.u, v: found.v };
};

/** Calls back for every triangle along a ray, in no order. */
export const forEachHit = (
  tree: RayTree,
  origin: Vec3,
  direction: Vec3,
  each: (triangle: number, t: number) => void,
): void => {
  start(origin, direction);
  walk(tree, Number.POSITIVE_INFINITY, { each });
};

/**
 * Whether anything stands within (0, limit) of a ray.
 *
 * @param counts restricts the question to some triangles (in leaf order); all count when left out
 */
export const anyHit = (
  tree: RayTree,
  origin: Vec3,
  direction: Vec3,
  limit: number,
  counts?: (triangle: number) => boolean,
): boolean => {
  start(origin, direction);
  return walk(tree, limit, counts ? { first: true, counts } : seekFirst) >= 0;
};

import type { Mesh } from '../../../core/geometry/mesh.ts';
import { rigidFromTurns } from '../../../core/geometry/mesh.ts';
import { planeMesh } from '../../../core/geometry/parts/plane.ts';
import { seededRandom } from '../../../core/geometry/random.ts';
import { normalize, sub, type Vec3 } from '../../../core/geometry/vec.ts';
import { placeMesh } from '../../../core/world/part-mesh.ts';
import { closedMeshes } from './closed-meshes.ts';

/** Numbers between two bounds, from a seed. */
export const numbersFrom = (seed: number): ((low: number, high: number) => number) => {
  const random = seededRandom(seed);
  return (low, high) => low + (high - low) * random();
};

/** A mesh anywhere within a few metres, turned any way. */
export const strewn = (mesh: Mesh, any: (low: number, high: number) => number, reachMetres = 4): Mesh =>
  placeMesh(
    mesh,
    rigidFromTurns(
      [any(-reachMetres, reachMetres), any(0, 2), any(-reachMetres, reachMetres)],
      any(0, 6),
      any(-1, 1),
      any(-1, 1),
    ),
  );

/** The parts of at most so many triangles, strewn and turned, some through each other, on a piece of ground. */
export const mixedMeshes = (seed: number, mostTriangles: number): Mesh[] => {
  const any = numbersFrom(seed);
  const parts = closedMeshes.map(([, mesh]) => mesh).filter((mesh) => mesh.positions.length <= 9 * mostTriangles);
  return [planeMesh(30, 30), ...parts.map((mesh) => strewn(mesh, any))];
};

/** All triangles of some meshes, one after another. */
export const soupOf = (meshes: readonly Mesh[]): Float64Array =>
  Float64Array.from(meshes.flatMap(({ positions }) => [...positions]));

export interface Shot {
  readonly origin: Vec3;
  /** Unit. */
  readonly direction: Vec3;
  /** A distance, metres, to ask within. */
  readonly limit: number;
}

/** Rays from places about a scene of a few metres to others. */
export const shots = (seed: number, count: number): Shot[] => {
  const any = numbersFrom(seed);
  const near = (): Vec3 => [any(-6, 6), any(-0.2, 3.8), any(-6, 6)];
  return Array.from({ length: count }, () => {
    const [origin, aim] = [near(), near()];
    return { origin, direction: normalize(sub(aim, origin)), limit: any(0, 6) };
  });
};

/** Where a ray crosses the plane of a triangle; `edge` is its least corner weight: below 0 it passes outside. */
export interface Crossing {
  readonly t: number;
  readonly edge: number;
  readonly triangle: number;
}

/** Six times the volume that a direction spans with two corners seen from the ray's start. */
const spanned = (d: Vec3, p: Vec3, q: Vec3) =>
  d[0] * (p[1] * q[2] - p[2] * q[1]) + d[1] * (p[2] * q[0] - p[0] * q[2]) + d[2] * (p[0] * q[1] - p[1] * q[0]);

/**
 * All triangles that a ray meets or passes within 1e-4 of an edge's length, by a plain loop: a ray meets a triangle when
 * it passes all three edges on one side (Pluecker). Nothing is shared with the core.
 *
 * @param corners nine numbers a triangle
 */
export const crossings = (corners: ArrayLike<number>, origin: Vec3, d: Vec3): Crossing[] => {
  const found: Crossing[] = [];
  const corner = (i: number): Vec3 => [
    (corners[i] as number) - origin[0],
    (corners[i + 1] as number) - origin[1],
    (corners[i + 2] as number) - origin[2],
  ];
  for (let triangle = 0; triangle < corners.length / 9; triangle++) {
    const [a, b, c] = [corner(9 * triangle), corner(9 * triangle + 3), corner(9 * triangle + 6)];
    const [u, w, s] = [spanned(d, b, c), spanned(d, c, a), spanned(d, a, b)];
    const total = u + w + s;
    const edge = Math.min(u / total, w / total, s / total);
    if (!(edge >= -1e-4)) continue;
    const along = (i: 0 | 1 | 2) => ((u * a[i] + w * b[i] + s * c[i]) / total) * d[i];
    const t = along(0) + along(1) + along(2);
    if (t > 0) found.push({ t, edge, triangle });
  }
  return found;
};

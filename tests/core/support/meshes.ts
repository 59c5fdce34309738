import type { Mesh } from '../../../core/geometry/mesh.ts';
import { type BoxShape, boxMesh } from '../../../core/geometry/parts/box.ts';
import { capsuleMesh, cylinderMesh, sphereMesh } from '../../../core/geometry/parts/round.ts';
import { cross, dot, length, scale, sub, type Vec3 } from '../../../core/geometry/vec.ts';

const triple = (a: Float64Array, i: number): Vec3 => [a[i] as number, a[i + 1] as number, a[i + 2] as number];

export const trianglesOf = ({ positions }: Mesh): (readonly [Vec3, Vec3, Vec3])[] =>
  Array.from({ length: positions.length / 9 }, (_, t) => [
    triple(positions, 9 * t),
    triple(positions, 9 * t + 3),
    triple(positions, 9 * t + 6),
  ]);

/** Edges that do not meet exactly one neighbour running the other way; places count as one within a micrometre. */
export const openEdges = (mesh: Mesh): number => {
  const name = (p: Vec3) => p.map((v) => Math.round(v * 1e6) + 0).join();
  const runs = new Map<string, number>();
  for (const corners of trianglesOf(mesh))
    for (let k = 0; k < 3; k++) {
      const edge = `${name(corners[k] as Vec3)}>${name(corners[(k + 1) % 3] as Vec3)}`;
      runs.set(edge, (runs.get(edge) ?? 0) + 1);
    }
  let open = 0;
  for (const [edge, count] of runs) {
    const [a, b] = edge.split('>') as [string, string];
    if (count !== 1 || runs.get(`${b}>${a}`) !== 1) open++;
  }
  return open;
};

/** Largest departure of a corner normal from length 1, and smallest cosine between a corner normal and its own face. */
export const normalErrors = (mesh: Mesh): { readonly fromUnit: number; readonly leastCosine: number } => {
  let [fromUnit, leastCosine] = [0, 1];
  trianglesOf(mesh).forEach(([a, b, c], t) => {
    const face = cross(sub(b, a), sub(c, a));
    const flat = scale(face, 1 / length(face));
    for (const k of [0, 3, 6]) {
      const normal = triple(mesh.normals, 9 * t + k);
      fromUnit = Math.max(fromUnit, Math.abs(length(normal) - 1));
      leastCosine = Math.min(leastCosine, dot(normal, flat));
    }
  });
  return { fromUnit, leastCosine };
};

export const plainBox: BoxShape = {
  widthMetres: 1.3,
  heightMetres: 2.1,
  depthMetres: 0.7,
  roundMetres: 0,
  topShare: 1,
  dimples: { count: 0, radiusMetres: 1, depthMetres: 0, seed: 0 },
};
const dimples = { count: 30, radiusMetres: 0.2, depthMetres: 0.03, seed: 7 };

/** One closed mesh of every kind of part. */
export const closedMeshes: readonly (readonly [name: string, mesh: Mesh])[] = [
  ['sharp box', boxMesh(plainBox)],
  ['tapered box', boxMesh({ ...plainBox, topShare: 0.6 })],
  ['flared box', boxMesh({ ...plainBox, topShare: 1.5 })],
  ['rounded box', boxMesh({ ...plainBox, roundMetres: 0.15 })],
  ['fully rounded box', boxMesh({ ...plainBox, roundMetres: 5 })],
  ['rounded tapered box', boxMesh({ ...plainBox, roundMetres: 0.15, topShare: 0.7 })],
  ['dimpled box', boxMesh({ ...plainBox, dimples })],
  ['rounded, tapered, dimpled box', boxMesh({ ...plainBox, roundMetres: 0.2, topShare: 0.8, dimples })],
  [
    'small rounded box',
    boxMesh({ ...plainBox, widthMetres: 0.05, heightMetres: 0.02, depthMetres: 0.03, roundMetres: 0.004 }),
  ],
  ['cylinder', cylinderMesh(0.4, 0.4, 1.2, 32)],
  ['tapered cylinder', cylinderMesh(0.4, 0.15, 1.2, 17)],
  ['three-sided cylinder', cylinderMesh(0.4, 0.4, 1.2, 3)],
  ['cone', cylinderMesh(0.4, 0, 1.2, 32)],
  ['sphere', sphereMesh(0.5, 0.5, 32)],
  ['flattened sphere', sphereMesh(0.5, 0.2, 15)],
  ['coarse sphere', sphereMesh(0.5, 0.5, 3)],
  ['capsule', capsuleMesh(0.25, 1.75, 24)],
  ['capsule as high as wide', capsuleMesh(0.25, 0.5, 24)],
];

/** Volume in cubic metres enclosed by a closed mesh (divergence theorem); for tests and for telling inside out. */
export const enclosedVolume = ({ positions }: Mesh): number => {
  let six = 0;
  const at = (i: number): Vec3 => [positions[i] as number, positions[i + 1] as number, positions[i + 2] as number];
  for (let i = 0; i < positions.length; i += 9) six += dot(at(i), cross(at(i + 3), at(i + 6)));
  return six / 6;
};

/** Surface area in square metres. */
export const surfaceArea = ({ positions }: Mesh): number => {
  let twice = 0;
  const at = (i: number): Vec3 => [positions[i] as number, positions[i + 1] as number, positions[i + 2] as number];
  for (let i = 0; i < positions.length; i += 9) twice += length(cross(sub(at(i + 3), at(i)), sub(at(i + 6), at(i))));
  return twice / 2;
};

import type { z } from 'zod';
import type { Mesh } from '../../../core/geometry/mesh.ts';
import { cross, dot, length, scale, sub, type Vec3 } from '../../../core/geometry/vec.ts';
import { part } from '../../../core/setup/schema/part.ts';
import type { Part } from '../../../core/setup/schema/setup.ts';
import { localMesh } from '../../../core/world/local-mesh.ts';

const triple = (a: Float64Array, i: number): Vec3 => [a[i] as number, a[i + 1] as number, a[i + 2] as number];

export const trianglesOf = ({ positions }: Mesh): (readonly [Vec3, Vec3, Vec3])[] =>
  Array.from({ length: positions.length / 9 }, (_, t) => [
    triple(positions, 9 * t),
    triple(positions, 9 * t + 3),
    triple(positions, 9 * t + 6),
  ]);

/** Numbers places: those with the same three numbers get the same. */
const numberer = () => {
  const byX = new Map<number, Map<number, Map<number, number>>>();
  let count = 0;
  const inner = <V>(map: Map<number, V>, key: number, make: () => V): V => {
    const known = map.get(key);
    if (known !== undefined) return known;
    const made = make();
    map.set(key, made);
    return made;
  };
  return ([x, y, z]: Vec3): number => {
    const byY = inner(byX, x, () => new Map<number, Map<number, number>>());
    return inner(
      inner(byY, y, () => new Map<number, number>()),
      z,
      () => count++,
    );
  };
};

/** Edges that do not meet exactly one neighbour running the other way; places that `of` makes the same are one. */
const edgesOpenBy = (mesh: Mesh, of: (v: number) => number): number => {
  const numberOf = numberer();
  const most = 2 ** 26;
  const runs = new Map<number, number>();
  for (const corners of trianglesOf(mesh)) {
    // adding 0 makes -0 and 0 one
    const [a, b, c] = corners.map(([x, y, z]) => numberOf([of(x) + 0, of(y) + 0, of(z) + 0])) as [
      number,
      number,
      number,
    ];
    for (const edge of [a * most + b, b * most + c, c * most + a]) runs.set(edge, (runs.get(edge) ?? 0) + 1);
  }
  let open = 0;
  for (const [edge, count] of runs) {
    const [from, to] = [Math.floor(edge / most), edge % most];
    if (count !== 1 || runs.get(to * most + from) !== 1) open++;
  }
  return open;
};

/** Edges that do not meet exactly one neighbour running the other way; places count as one within a micrometre. */
export const openEdges = (mesh: Mesh): number => edgesOpenBy(mesh, (v) => Math.round(v * 1e6));

/** The same with places that are one only to the last digit, for parts of any size. */
export const exactOpenEdges = (mesh: Mesh): number => edgesOpenBy(mesh, (v) => v);

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

type Parts = z.input<typeof part>;
export type Solid = Exclude<Parts, { kind: 'scan' }>;

/** Triangles of a part as the document writes it, what it leaves out filled in. */
export const meshOf = (solid: Solid): Mesh => localMesh(part.parse(solid) as Exclude<Part, { kind: 'scan' }>);

/** Points of a circle, counter-clockwise. */
export const circle = (points: number, radius: number, [u, v] = [0, 0] as readonly [number, number]) =>
  Array.from({ length: points }, (_, i): [number, number] => {
    const turn = (2 * Math.PI * i) / points;
    return [u + radius * Math.cos(turn), v + radius * Math.sin(turn)];
  });

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

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

export const plainBox = { kind: 'box', widthMetres: 1.3, heightMetres: 2.1, depthMetres: 0.7 } as const;

const dimples = { count: 30, radiusMetres: 0.2, depthMetres: 0.03, seed: 7 };
const post = { kind: 'cylinder', radiusMetres: 0.4, heightMetres: 1.2 } as const;
const cone = { kind: 'cone', radiusMetres: 0.4, heightMetres: 1.2 } as const;
const ball = { kind: 'sphere', radiusMetres: 0.5 } as const;
const arch = { kind: 'ring', radiusMetres: 2, tubeRadiusMetres: 0.3 } as const;
const rough = { heightMetres: 0.05, sizeMetres: 0.3, seed: 3 };

/** Points of a circle, counter-clockwise. */
export const circle = (points: number, radius: number, [u, v] = [0, 0] as readonly [number, number]) =>
  Array.from({ length: points }, (_, i): [number, number] => {
    const turn = (2 * Math.PI * i) / points;
    return [u + radius * Math.cos(turn), v + radius * Math.sin(turn)];
  });

const corner: [number, number][] = [
  [0, 0],
  [2, 0],
  [2, 1],
  [1, 1],
  [1, 2],
  [0, 2],
];
const hull = [0, 1.5, 3, 4].map((northMetres, s) => ({
  northMetres,
  outline: circle(12, [0.3, 0.9, 1, 0.5][s] as number).map(([u, v]): [number, number] => [u, 0.6 * v + 1]),
}));
const bottle: [number, number][] = [
  [0.5, 0],
  [0.6, 0.4],
  [0.5, 0.8],
  [0.15, 1],
  [0.15, 1.3],
];
const rim: [number, number][] = [
  [0.7, 0],
  [1, 0],
  [1, 0.6],
  [0.7, 0.6],
];
const openings = [
  { acrossMetres: 0.5, sillMetres: 0, widthMetres: 1, heightMetres: 2.2, head: 'round' },
  { acrossMetres: -3, sillMetres: 1, widthMetres: 0.5, heightMetres: 1.6, head: 'pointed' },
  { acrossMetres: -2, sillMetres: 1, widthMetres: 0.5, heightMetres: 1.6, head: 'flat' },
  { acrossMetres: 3, sillMetres: 1, widthMetres: 0.5, heightMetres: 1.6, head: 'round' },
  { acrossMetres: 4.2, sillMetres: 0, widthMetres: 0.6, heightMetres: 2, head: 'flat' },
] as const;
const wall = { kind: 'wall', widthMetres: 10, thicknessMetres: 0.7, heightMetres: 4 } as const;

/** Every kind of part, and whatever makes it another mesh, as documents write them. */
export const solids: Readonly<Record<string, Solid>> = {
  'sharp box': plainBox,
  'tapered box': { ...plainBox, topShare: 0.6 },
  'flared box': { ...plainBox, topShare: 1.5 },
  'rounded box': { ...plainBox, roundMetres: 0.15 },
  'fully rounded box': { ...plainBox, roundMetres: 5 },
  'rounded tapered box': { ...plainBox, roundMetres: 0.15, topShare: 0.7 },
  'dimpled box': { ...plainBox, dimples },
  'rounded, tapered, dimpled box': { ...plainBox, roundMetres: 0.2, topShare: 0.8, dimples },
  'rough box': { ...plainBox, rough },
  'rough, rounded, dimpled box': { ...plainBox, roundMetres: 0.2, dimples, rough },
  'small rounded box': { kind: 'box', widthMetres: 0.05, heightMetres: 0.02, depthMetres: 0.03, roundMetres: 0.004 },
  wedge: { kind: 'wedge', widthMetres: 2, depthMetres: 3, heightMetres: 1 },
  'ramp up to the north': { kind: 'wedge', widthMetres: 2, depthMetres: 3, heightMetres: 1, ridgeShare: 1 },
  'ramp up to the south': { kind: 'wedge', widthMetres: 2, depthMetres: 3, heightMetres: 1, ridgeShare: 0 },
  cylinder: post,
  'tapered cylinder': { ...post, topRadiusMetres: 0.15, sides: 17 },
  'three-sided cylinder': { ...post, sides: 3 },
  'rough cylinder': { ...post, rough },
  'rough five-sided cylinder': { ...post, sides: 5, rough },
  cone,
  'rough cone': { ...cone, rough },
  sphere: ball,
  'flattened sphere': { ...ball, heightMetres: 0.4, sides: 15 },
  'coarse sphere': { ...ball, sides: 3 },
  egg: { ...ball, radiusNorthMetres: 0.3, heightMetres: 1.4 },
  'rough egg': { ...ball, radiusNorthMetres: 0.3, heightMetres: 1.4, rough },
  'rough faceted sphere': { ...ball, sides: 6, rough },
  capsule: { kind: 'capsule', radiusMetres: 0.25, heightMetres: 1.75, sides: 24 },
  'capsule as high as wide': { kind: 'capsule', radiusMetres: 0.25, heightMetres: 0.5, sides: 24 },
  'rough capsule': { kind: 'capsule', radiusMetres: 0.25, heightMetres: 1.75, rough },
  'rough capsule as high as wide': { kind: 'capsule', radiusMetres: 0.25, heightMetres: 0.5, rough },
  arch,
  'arch thin at the top': { ...arch, topShare: 0.4 },
  'square arch': { ...arch, sides: 4 },
  'low arch': { ...arch, arcDegrees: 70 },
  'high arch': { ...arch, arcDegrees: 300 },
  'whole ring': { ...arch, arcDegrees: 360, topShare: 1.4 },
  'rough arch': { ...arch, rough },
  'rough square arch': { ...arch, sides: 4, rough },
  'rough whole ring': { ...arch, arcDegrees: 360, rough },
  'turned bottle': { kind: 'turned', profile: bottle },
  'turned bottle drawn from the top': { kind: 'turned', profile: [...bottle].reverse() },
  'turned six-sided bottle': { kind: 'turned', profile: bottle, sides: 6 },
  'turned rim': { kind: 'turned', profile: rim, closed: true },
  'turned rim the other way round': { kind: 'turned', profile: [...rim].reverse(), closed: true },
  'rough turned bottle': { kind: 'turned', profile: bottle, rough },
  'rough turned rim': { kind: 'turned', profile: rim, closed: true, rough },
  prism: { kind: 'prism', outline: corner, heightMetres: 0.5 },
  'prism drawn clockwise': { kind: 'prism', outline: [...corner].reverse(), heightMetres: 0.5 },
  'prism with holes in a row': {
    kind: 'prism',
    outline: circle(40, 3),
    holes: [circle(12, 0.5, [1, 0]), circle(12, 0.5, [-1, 0]).reverse(), circle(4, 0.2), circle(4, 0.2, [0, 1])],
    heightMetres: 0.5,
  },
  loft: { kind: 'loft', sections: hull },
  'loft of sections drawn either way round': {
    kind: 'loft',
    sections: hull.map((s, i) =>
      i % 2 ? s : { ...s, outline: [...s.outline.slice(0, 1), ...s.outline.slice(1).reverse()] },
    ),
  },
  'rough loft': { kind: 'loft', sections: hull, rough },
  'blind wall': wall,
  'gable wall with openings': { ...wall, gableMetres: 3.5, openings: [...openings] },
};

/** One closed mesh of every kind of part, and of whatever makes it another one. */
export const closedMeshes: readonly (readonly [name: string, mesh: Mesh])[] = Object.entries(solids).map(
  ([name, solid]) => [name, meshOf(solid)],
);

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

import type { Mesh } from '../../../core/geometry/mesh.ts';
import { circle, meshOf, type Solid } from './meshes.ts';

export const plainBox = { kind: 'box', widthMetres: 1.3, heightMetres: 2.1, depthMetres: 0.7 } as const;

const dimples = { count: 30, radiusMetres: 0.2, depthMetres: 0.03, seed: 7 };
const post = { kind: 'cylinder', radiusMetres: 0.4, heightMetres: 1.2 } as const;
const cone = { kind: 'cone', radiusMetres: 0.4, heightMetres: 1.2 } as const;
const ball = { kind: 'sphere', radiusMetres: 0.5 } as const;
const arch = { kind: 'ring', radiusMetres: 2, tubeRadiusMetres: 0.3 } as const;
const rough = { heightMetres: 0.05, sizeMetres: 0.3, seed: 3 };

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

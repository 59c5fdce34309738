import type { Mesh } from '../mesh.ts';
import { seededRandom } from '../random.ts';
import { type Rough, roughCreaseRadians, roughened } from '../roughen.ts';
import { meshOfSkin } from '../skin.ts';
import { add, distance, normalize, scale, sub, type Vec3 } from '../vec.ts';
import { latticeSkin, roundedLines } from './lattice.ts';

/** A box standing on the origin: x across, y up, z deep. */
export interface BoxShape {
  readonly widthMetres: number;
  readonly heightMetres: number;
  readonly depthMetres: number;
  /** Radius of the edges; 0 gives a sharp box. */
  readonly roundMetres: number;
  /** Width and depth at the top over those at the foot; 1 = upright sides. */
  readonly topShare: number;
  /** Shallow round hollows over the surface. */
  readonly dimples: {
    readonly count: number;
    readonly radiusMetres: number;
    readonly depthMetres: number;
    readonly seed: number;
  };
  readonly rough: Rough | null;
  /** Into how many pieces width, height and depth are divided; 1 for a sharp, even box. At least 6 where edges are round. */
  readonly divisions: readonly [width: number, height: number, depth: number];
}

type Sign = -1 | 0 | 1;
/** Outward normals of the faces in the order in which hollows are scattered, with the two directions along them. */
const faces: readonly (readonly [normal: readonly [Sign, Sign, Sign], u: Vec3, v: Vec3])[] = [
  [
    [1, 0, 0],
    [0, 0, -1],
    [0, 1, 0],
  ],
  [
    [-1, 0, 0],
    [0, 0, 1],
    [0, 1, 0],
  ],
  [
    [0, 1, 0],
    [1, 0, 0],
    [0, 0, -1],
  ],
  [
    [0, -1, 0],
    [1, 0, 0],
    [0, 0, 1],
  ],
  [
    [0, 0, 1],
    [1, 0, 0],
    [0, 1, 0],
  ],
  [
    [0, 0, -1],
    [-1, 0, 0],
    [0, 1, 0],
  ],
];

/** Edges rounded by less are sharp. */
const leastRoundMetres = 1e-4;

/** Hollows are shallower than this, edges sharper. */
const dimpleCreaseRadians = Math.PI / 3;

/** Point of the surface over a point of the sharp box, before hollows. */
const roundedPoint = (p: Vec3, half: Vec3, radius: number): Vec3 => {
  if (radius <= 0) return p;
  const clamp = (v: number, h: number) => Math.min(Math.max(v, radius - h), h - radius);
  const inner: Vec3 = [clamp(p[0], half[0]), clamp(p[1], half[1]), clamp(p[2], half[2])];
  return add(inner, scale(normalize(sub(p, inner)), radius));
};

/** Middles of the hollows, scattered over the faces. */
const hollowsOf = ({ dimples }: BoxShape, half: Vec3, radius: number): Vec3[] => {
  const random = seededRandom(dimples.seed);
  return Array.from({ length: dimples.count }, () => {
    const [normal, u, v] = faces[Math.floor(random() * 6)] as (typeof faces)[number];
    const [s, t] = [random() * 2 - 1, random() * 2 - 1];
    const at = (axis: 0 | 1 | 2) => half[axis] * (normal[axis] + s * u[axis] + t * v[axis]);
    return roundedPoint([at(0), at(1), at(2)], half, radius);
  });
};

/** Triangles of a box: 12 when sharp and even, else divided. */
export const boxMesh = (shape: BoxShape): Mesh => {
  const half: Vec3 = [shape.widthMetres / 2, shape.heightMetres / 2, shape.depthMetres / 2];
  const least = Math.min(...half);
  const radius = shape.roundMetres < leastRoundMetres ? 0 : Math.min(shape.roundMetres, least);
  const { dimples, rough, divisions } = shape;
  /** From the box about its middle to the box on its foot, narrowed toward the top. */
  const stand = (p: Vec3): Vec3 => {
    const narrow = 1 + (shape.topShare - 1) * (p[1] / half[1] + 1) * 0.5;
    return [p[0] * narrow, p[1] + half[1], p[2] * narrow];
  };
  const hollows = hollowsOf(shape, half, radius);
  // deeper hollows would come out on the other side
  const depth = Math.min(dimples.depthMetres, 0.45 * least);
  const outward = (p: Vec3): Vec3 => normalize([p[0] / half[0] ** 4, p[1] / half[1] ** 4, p[2] / half[2] ** 4]);
  const surface = (block: Vec3): Vec3 => {
    const p = roundedPoint(block, half, radius);
    const deepest = hollows.reduce((most, centre) => {
      const x = Math.min(distance(p, centre) / dimples.radiusMetres, 1);
      return Math.max(most, depth * (1 - x * x) ** 2);
    }, 0);
    return stand(deepest > 0 ? sub(p, scale(outward(p), deepest)) : p);
  };
  const [w, h, d] = divisions;
  const lines = [
    roundedLines(half[0], radius, w),
    roundedLines(half[1], radius, h),
    roundedLines(half[2], radius, d),
  ] as const;
  const skin = latticeSkin(lines, surface);
  if (!rough && dimples.count === 0 && radius <= 0) return meshOfSkin(skin, 0);
  // round edges are one surface with the sides; sharp ones stay sharp among hollows
  if (!rough) return meshOfSkin(skin, radius > 0 ? Math.PI : dimpleCreaseRadians);
  const cell = Math.max((2 * half[0]) / w, (2 * half[1]) / h, (2 * half[2]) / d);
  const thickness = 0.7 * least * Math.min(shape.topShare, 1);
  return meshOfSkin(
    roughened(skin, rough, cell, () => thickness, true),
    roughCreaseRadians,
  );
};

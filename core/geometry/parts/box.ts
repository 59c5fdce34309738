import { type Mesh, MeshBuilder } from '../mesh.ts';
import { seededRandom } from '../random.ts';
import { add, cross, distance, normalize, scale, sub, type Vec3 } from '../vec.ts';
import { weldCorners } from '../weld.ts';

/** A box standing on the origin: x across, y up, z deep. Rounded or dimpled ones are finely divided and smooth. */
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
}

const divisionMetres = 0.06;
const faces: readonly (readonly [normal: Vec3, u: Vec3, v: Vec3])[] = [
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

const along = (half: Vec3, axis: Vec3) => Math.abs(half[0] * axis[0] + half[1] * axis[1] + half[2] * axis[2]);

/** Point of the surface over a point of the sharp box, before hollows. */
const roundedPoint = (p: Vec3, half: Vec3, radius: number): Vec3 => {
  if (radius <= 0) return p;
  const clamp = (v: number, h: number) => Math.min(Math.max(v, radius - h), h - radius);
  const inner: Vec3 = [clamp(p[0], half[0]), clamp(p[1], half[1]), clamp(p[2], half[2])];
  return add(inner, scale(normalize(sub(p, inner)), radius));
};

/** Triangles of a box; 12 when sharp, else divided about every 6 cm with normals taken from the surface itself. */
export const boxMesh = (shape: BoxShape): Mesh => {
  const half: Vec3 = [shape.widthMetres / 2, shape.heightMetres / 2, shape.depthMetres / 2];
  const radius = Math.min(shape.roundMetres, ...half);
  /** From the box about its middle to the box on its foot, narrowed toward the top. */
  const stand = (p: Vec3): Vec3 => {
    const narrow = 1 + (shape.topShare - 1) * (p[1] / half[1] + 1) * 0.5;
    return [p[0] * narrow, p[1] + half[1], p[2] * narrow];
  };
  const plain = radius <= 0 && shape.dimples.count === 0;
  const onFace = ([normal, u, v]: (typeof faces)[number], s: number, t: number): Vec3 =>
    add(scale(normal, along(half, normal)), add(scale(u, s * along(half, u)), scale(v, t * along(half, v))));
  const random = seededRandom(shape.dimples.seed);
  const hollows = Array.from({ length: shape.dimples.count }, () => {
    const face = faces[Math.floor(random() * 6)] as (typeof faces)[number];
    return roundedPoint(onFace(face, random() * 2 - 1, random() * 2 - 1), half, radius);
  });
  const outward = (p: Vec3): Vec3 => normalize([p[0] / half[0] ** 4, p[1] / half[1] ** 4, p[2] / half[2] ** 4]);
  const surface = (face: (typeof faces)[number], s: number, t: number): Vec3 => {
    const p = roundedPoint(onFace(face, s, t), half, radius);
    const deepest = hollows.reduce((most, centre) => {
      const x = Math.min(distance(p, centre) / shape.dimples.radiusMetres, 1);
      return Math.max(most, shape.dimples.depthMetres * (1 - x * x) ** 2);
    }, 0);
    return stand(deepest > 0 ? sub(p, scale(outward(p), deepest)) : p);
  };
  return plain ? sharpBox((face, s, t) => stand(onFace(face, s, t))) : dividedBox(half, surface);
};

const sharpBox = (corner: (face: (typeof faces)[number], s: number, t: number) => Vec3): Mesh => {
  const builder = new MeshBuilder();
  for (const face of faces)
    builder.quad(corner(face, -1, -1), corner(face, 1, -1), corner(face, 1, 1), corner(face, -1, 1));
  return builder.build();
};

/** Grids over the six faces, normals averaged over triangles that share a place, so that seams do not show. */
const dividedBox = (half: Vec3, surface: (face: (typeof faces)[number], s: number, t: number) => Vec3): Mesh => {
  const flat = new MeshBuilder();
  for (const face of faces) {
    const [, u, v] = face;
    const nu = Math.min(Math.max(Math.ceil((2 * along(half, u)) / divisionMetres), 6), 64);
    const nv = Math.min(Math.max(Math.ceil((2 * along(half, v)) / divisionMetres), 6), 64);
    const grid = Array.from({ length: (nu + 1) * (nv + 1) }, (_, k) =>
      surface(face, (2 * (k % (nu + 1))) / nu - 1, (2 * Math.floor(k / (nu + 1))) / nv - 1),
    );
    const at = (i: number, j: number) => grid[j * (nu + 1) + i] as Vec3;
    for (let i = 0; i < nu; i++)
      for (let j = 0; j < nv; j++) flat.quad(at(i, j), at(i + 1, j), at(i + 1, j + 1), at(i, j + 1));
  }
  return smoothNormals(flat.build());
};

/** The same triangles with normals averaged, weighted by area, over corners that share a place. */
const smoothNormals = ({ positions }: Mesh): Mesh => {
  const { groupOfCorner, groupCount } = weldCorners(positions, 1e-4);
  const sums = new Float64Array(groupCount * 3);
  const corner = (i: number): Vec3 => [positions[i] as number, positions[i + 1] as number, positions[i + 2] as number];
  for (let i = 0; i < positions.length; i += 9) {
    const n = cross(sub(corner(i + 3), corner(i)), sub(corner(i + 6), corner(i)));
    for (let c = 0; c < 3; c++) {
      const group = groupOfCorner[i / 3 + c] as number;
      n.forEach((v, axis) => {
        sums[group * 3 + axis] = (sums[group * 3 + axis] as number) + v;
      });
    }
  }
  const normals = new Float64Array(positions.length);
  groupOfCorner.forEach((group, c) => {
    const at = group * 3;
    normals.set(normalize([sums[at] as number, sums[at + 1] as number, sums[at + 2] as number]), c * 3);
  });
  return { positions, normals };
};

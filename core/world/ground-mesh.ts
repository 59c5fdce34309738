import { type Mesh, MeshBuilder, rigidFromTurns } from '../geometry/mesh.ts';
import { seededRandom } from '../geometry/random.ts';
import { add, cross, normalize, sub, type Vec3 } from '../geometry/vec.ts';
import type { Relief } from '../setup/schema/setup.ts';
import { placeMesh } from './part-mesh.ts';

/**
 * Lines along which the ground is divided, metres. Small in the middle, where 32-bit numbers must be exact; the farthest
 * beyond the places a setup may use, so that the horizon lies a hundredth of a degree low.
 */
const groundLines = [-6000, -800, -100, 100, 800, 6000];

type Strewn = Extract<Relief, { count: number }>;

/** A stone of unit height: an icosahedron whose corners are pushed about, flat-faced, a fifth of it in the ground. */
const stoneMesh = (random: () => number): Mesh => {
  const g = (1 + Math.sqrt(5)) / 2;
  const corners: Vec3[] = [];
  for (const [a, b] of [
    [1, g],
    [1, -g],
    [-1, g],
    [-1, -g],
  ] as const)
    corners.push([a, b, 0], [0, a, b], [b, 0, a]);
  const shaped = corners.map((corner): Vec3 => {
    const [x, y, z] = normalize(corner);
    const swell = 0.8 + 0.4 * random();
    return [x * swell * 0.8, y * swell * 0.55 + 0.4, z * swell * 0.8];
  });
  const builder = new MeshBuilder();
  const edge = 2;
  const near = (i: number, j: number) =>
    Math.abs(Math.hypot(...sub(corners[i] as Vec3, corners[j] as Vec3)) - edge) < 1e-6;
  for (let i = 0; i < 12; i++)
    for (let j = i + 1; j < 12; j++)
      for (let k = j + 1; k < 12; k++) {
        if (!near(i, j) || !near(j, k) || !near(i, k)) continue;
        const [a, b, c] = [corners[i], corners[j], corners[k]] as [Vec3, Vec3, Vec3];
        const outward = cross(sub(b, a), sub(c, a));
        const out = add(a, add(b, c));
        const flip = outward[0] * out[0] + outward[1] * out[1] + outward[2] * out[2] < 0;
        const [p, q, r] = (flip ? [i, k, j] : [i, j, k]).map((n) => shaped[n] as Vec3) as [Vec3, Vec3, Vec3];
        builder.triangle(p, q, r);
      }
  return builder.build();
};

/** A tuft of unit height: seven three-sided blades that lean apart. */
const tuftMesh = (random: () => number): Mesh => {
  const builder = new MeshBuilder();
  for (let blade = 0; blade < 7; blade++) {
    const around = (2 * Math.PI * (blade + random())) / 7;
    const [c, s] = [Math.cos(around), Math.sin(around)];
    const spread = 0.1 + 0.35 * random();
    const tip: Vec3 = [c * spread, 0.6 + 0.4 * random(), s * spread];
    const foot = (turn: number): Vec3 => [c * 0.06 + 0.045 * Math.cos(turn), 0, s * 0.06 + 0.045 * Math.sin(turn)];
    for (let side = 0; side < 3; side++)
      builder.triangle(foot((-2 * Math.PI * side) / 3), foot((-2 * Math.PI * (side + 1)) / 3), tip);
  }
  return builder.build();
};

const scaled = (mesh: Mesh, factor: number): Mesh => ({ ...mesh, positions: mesh.positions.map((v) => v * factor) });

/** Things strewn evenly over a circle, each with its own size and turn; the same seed gives the same ground. */
const strew = (relief: Strewn): Mesh[] => {
  const random = seededRandom(relief.seed);
  const [low, high] = relief.heightMetres;
  const [east, north] = relief.centre;
  return Array.from({ length: relief.count }, () => {
    const away = relief.radiusMetres * Math.sqrt(random());
    const turn = 2 * Math.PI * random();
    // small ones are commoner than large ones
    const height = low * (high / low) ** (random() ** 1.5);
    const origin: Vec3 = [east + away * Math.cos(turn), 0, -(north + away * Math.sin(turn))];
    const mesh = relief.kind === 'stones' ? stoneMesh(random) : tuftMesh(random);
    return placeMesh(scaled(mesh, height), rigidFromTurns(origin, 2 * Math.PI * random(), 0, 0));
  });
};

const strewn = new WeakMap<Relief, Mesh[]>();

/** The meshes of one kind of relief, kept as long as its entry in the document. */
export const reliefMeshes = (relief: Relief): Mesh[] => {
  const meshes = strewn.get(relief) ?? ('count' in relief ? strew(relief) : []);
  strewn.set(relief, meshes);
  return meshes;
};

/** The bare ground, facing up. */
export const groundMesh = (): Mesh => {
  const builder = new MeshBuilder();
  groundLines.slice(1).forEach((east, i) => {
    const west = groundLines[i] as number;
    groundLines.slice(1).forEach((near, j) => {
      const far = groundLines[j] as number;
      builder.quad([west, 0, near], [east, 0, near], [east, 0, far], [west, 0, far]);
    });
  });
  return builder.build();
};

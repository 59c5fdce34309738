import { type Mesh, MeshBuilder } from '../mesh.ts';
import { seededRandom } from '../random.ts';
import type { Vec3 } from '../vec.ts';
import { evenColumns, zipColumns } from './columns.ts';
import { naturalOutline, type Warp } from './outline.ts';
import { divideWater } from './reach.ts';
import { type SheetShape, sheetLiftMetres, smoothstep } from './sheet.ts';
import { smoothMesh } from './smooth-mesh.ts';

/** Waves lower than this are none, metres. */
const flatMetres = 1e-5;

/** The shore slopes from the water's level to the ground over this share of a pool, and at most over so many metres. */
const shore = { share: 0.05, mostMetres: 0.04 } as const;

/** Still water: one level face, a narrow slope round it. Its normals are exactly upright, so it mirrors without a flaw. */
const stillMesh = (radiusMetres: number, warp: Warp): Mesh => {
  const builder = new MeshBuilder();
  const sides = 180;
  const inner = 1 - Math.min(shore.share, shore.mostMetres / radiusMetres);
  const at = (side: number, share: number, up: number): Vec3 => {
    const turn = (2 * Math.PI * side) / sides;
    const [u, v] = warp(radiusMetres * share * Math.cos(turn), radiusMetres * share * Math.sin(turn));
    return [v, up, -u];
  };
  const upright: Vec3 = [0, 1, 0];
  for (let side = 0; side < sides; side++) {
    const [a, b] = [at(side + 1, inner, sheetLiftMetres), at(side, inner, sheetLiftMetres)];
    builder.triangle([0, sheetLiftMetres, 0], a, b, [upright, upright, upright]);
    builder.quad(at(side, 1, 0), b, a, at(side + 1, 1, 0));
  }
  return builder.build();
};

/** Height of small crossed waves, 0 to 1: five trains whose lengths and ways differ a little, mostly along u. */
export const waveField = (spacingMetres: number, seed: number): ((u: number, v: number) => number) => {
  const random = seededRandom(seed);
  const trains = Array.from({ length: 5 }, (_, n) => {
    const turn = (n - 2) * 0.28 + 0.2 * (random() - 0.5);
    const length = spacingMetres * (0.75 + 0.7 * random());
    const k = (2 * Math.PI) / length;
    return {
      ku: k * Math.cos(turn),
      kv: k * Math.sin(turn),
      start: 2 * Math.PI * random(),
      size: 0.7 + 0.6 * random(),
    };
  });
  const whole = trains.reduce((sum, { size }) => sum + size, 0);
  return (u, v) => {
    let sum = 0;
    for (const { ku, kv, start, size } of trains) sum += size * Math.sin(ku * u + kv * v + start);
    return 0.5 + (0.5 * Math.tanh((1.6 * sum) / whole)) / Math.tanh(1.6);
  };
};

/**
 * Standing water of a natural outline, a few millimetres over the ground plane. Waves run along u; without any it is a
 * mirror. Waves that its triangles could not draw are drawn longer.
 *
 * @returns corners [v, up, -u], metres, about the middle of the sheet
 */
export const poolMesh = (shape: SheetShape): Mesh => {
  const warp = naturalOutline(shape.radiusMetres, 0.3, 5, shape.seed);
  if (shape.heightMetres < flatMetres) return stillMesh(shape.radiusMetres, warp);
  const { stepMetres, spacingMetres } = divideWater(shape);
  const columns = evenColumns(shape.radiusMetres, stepMetres, stepMetres);
  const field = waveField(spacingMetres, shape.seed);
  const beach = Math.max(Math.min(shore.share, shore.mostMetres / shape.radiusMetres), stepMetres / shape.radiusMetres);
  const calm = Math.max(0.1, spacingMetres / shape.radiusMetres);
  const points: number[] = [];
  for (const { v, u } of columns)
    for (const at of u) {
      const away = Math.sqrt(at * at + v * v) / shape.radiusMetres;
      const open = 1 - smoothstep(1 - Math.min(beach, 0.5), 1, away);
      // waves die away toward the shore
      const high = shape.heightMetres * (1 - smoothstep(1 - Math.min(calm, 0.6), 1, away));
      const [x, y] = warp(at, v);
      points.push(y, open * (sheetLiftMetres + high * field(at, v)), -x);
    }
  return smoothMesh({ points: Float64Array.from(points), triangles: zipColumns(columns) });
};

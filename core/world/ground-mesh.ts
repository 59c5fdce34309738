import { type Mesh, MeshBuilder } from '../geometry/mesh.ts';
import { cracksMesh } from '../geometry/relief/cracks.ts';
import { driftsMesh } from '../geometry/relief/drifts.ts';
import { poolMesh } from '../geometry/relief/pool.ts';
import { ripplesMesh } from '../geometry/relief/ripples.ts';
import type { SheetShape } from '../geometry/relief/sheet.ts';
import { strewnMesh } from '../geometry/relief/strew.ts';
import type { Vec3 } from '../geometry/vec.ts';
import { largeEvery, maxSheetTriangles } from '../setup/relief-detail.ts';
import type { Relief } from '../setup/schema/setup.ts';
import { radiansFromDegrees } from '../units/angle.ts';
import { worldFromDocument } from './axes.ts';

/**
 * Lines along which the ground is divided, metres. Small in the middle, where 32-bit numbers must be exact; the farthest
 * beyond the places a setup may use, so that the horizon lies a hundredth of a degree low.
 */
const groundLines = [-6000, -800, -100, 100, 800, 6000];

type SheetRelief = Exclude<Relief, { count: number }>;

const sheetMeshes: Readonly<Record<SheetRelief['kind'], (shape: SheetShape) => Mesh>> = {
  ripples: (shape) => ripplesMesh(shape),
  drifts: driftsMesh,
  cracks: cracksMesh,
  pool: poolMesh,
};

/** A mesh turned about the vertical, clockwise seen from above, and moved. Written out, for it runs over 90,000 corners. */
const placed = ({ positions, normals }: Mesh, turnRadians: number, [x, y, z]: Vec3): Mesh => {
  const [c, s] = [Math.cos(turnRadians), Math.sin(turnRadians)];
  const turned = (from: Float64Array, ox: number, oy: number, oz: number): Float64Array => {
    const to = new Float64Array(from.length);
    for (let i = 0; i < from.length; i += 3) {
      const [px, pz] = [from[i] as number, from[i + 2] as number];
      to[i] = c * px - s * pz + ox;
      to[i + 1] = (from[i + 1] as number) + oy;
      to[i + 2] = s * px + c * pz + oz;
    }
    return to;
  };
  return { positions: turned(positions, x, y, z), normals: turned(normals, 0, 0, 0) };
};

const makeMesh = (relief: Relief): Mesh => {
  const [east, north] = relief.centre;
  const origin = worldFromDocument([east, north, 0]);
  if ('count' in relief) {
    const largeCount = Math.floor(relief.count / largeEvery);
    return placed(strewnMesh({ ...relief, largeCount }), 0, origin);
  }
  const mesh = sheetMeshes[relief.kind]({ ...relief, maxTriangles: maxSheetTriangles });
  return placed(mesh, radiansFromDegrees(relief.bearingDegrees), origin);
};

const meshes = new WeakMap<Relief, Mesh>();

/** The mesh of one kind of relief in world axes, kept as long as its entry in the document. */
export const reliefMesh = (relief: Relief): Mesh => {
  const mesh = meshes.get(relief) ?? makeMesh(relief);
  meshes.set(relief, mesh);
  return mesh;
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

import { type Mesh, MeshBuilder, rigidFromTurns } from '../geometry/mesh.ts';
import { cracksMesh } from '../geometry/relief/cracks.ts';
import { driftsMesh } from '../geometry/relief/drifts.ts';
import { poolMesh } from '../geometry/relief/pool.ts';
import { ripplesMesh } from '../geometry/relief/ripples.ts';
import type { SheetShape } from '../geometry/relief/sheet.ts';
import { strewnMesh } from '../geometry/relief/strew.ts';
import { largeEvery, maxSheetTriangles } from '../setup/relief-detail.ts';
import type { Relief } from '../setup/schema/setup.ts';
import { radiansFromDegrees } from '../units/angle.ts';
import { worldFromDocument } from './axes.ts';
import { placeMesh } from './part-mesh.ts';

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

const makeMesh = (relief: Relief): Mesh => {
  const [east, north] = relief.centre;
  const origin = worldFromDocument([east, north, 0]);
  if ('count' in relief) {
    const largeCount = Math.floor(relief.count / largeEvery);
    return placeMesh(strewnMesh({ ...relief, largeCount }), rigidFromTurns(origin, 0, 0, 0));
  }
  const mesh = sheetMeshes[relief.kind]({ ...relief, maxTriangles: maxSheetTriangles });
  return placeMesh(mesh, rigidFromTurns(origin, radiansFromDegrees(relief.bearingDegrees), 0, 0));
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

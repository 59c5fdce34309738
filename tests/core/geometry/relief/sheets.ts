import type { Mesh } from '../../../../core/geometry/mesh.ts';
import { cracksMesh } from '../../../../core/geometry/relief/cracks.ts';
import { driftsMesh } from '../../../../core/geometry/relief/drifts.ts';
import { poolMesh } from '../../../../core/geometry/relief/pool.ts';
import { ripplesMesh } from '../../../../core/geometry/relief/ripples.ts';
import type { SheetShape } from '../../../../core/geometry/relief/sheet.ts';

export const maxTriangles = 30_000;

export const sheetShape: SheetShape = {
  heightMetres: 0.03,
  spacingMetres: 0.25,
  radiusMetres: 5,
  seed: 7,
  maxTriangles,
};

/** Every kind of sheet; those named smooth hang together as one surface. */
export const sheets: readonly (readonly [name: string, make: (shape: SheetShape) => Mesh])[] = [
  ['ripples', (shape) => ripplesMesh(shape)],
  ['drifts', driftsMesh],
  ['pool', poolMesh],
  ['cracks', cracksMesh],
];
export const smoothSheets = sheets.filter(([name]) => name !== 'cracks');

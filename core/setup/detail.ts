import type { Part, Relief, Scan, Setup } from './schema/setup.ts';

/** Most triangles that a setup may ask for in all, so that neither a hostile file nor a careless one fills the memory. */
export const maxTriangles = 1_000_000;

/** A divided box has a line about every 6 cm, from 6 to 64 of them a side. */
const divisions = (lengthMetres: number): number => Math.min(Math.max(Math.ceil(lengthMetres / 0.06), 6), 64);

/** Triangles that a part becomes; `tests/core/setup/detail.test.ts` holds it to the meshes. Drawing leaves out those without area. */
export const trianglesOfPart = (part: Part, scans: readonly Scan[] = []): number => {
  switch (part.kind) {
    case 'box': {
      if (part.roundMetres <= 0 && (part.dimples?.count ?? 0) === 0) return 12;
      const [w, d, h] = [divisions(part.widthMetres), divisions(part.depthMetres), divisions(part.heightMetres)];
      return 4 * (w * d + w * h + d * h);
    }
    case 'cylinder':
      return 4 * part.sides;
    case 'cone':
      return 2 * part.sides;
    case 'sphere':
      return 2 * part.sides * (Math.ceil(part.sides / 2) - 1);
    case 'capsule':
      return 4 * part.sides * Math.ceil(part.sides / 4);
    case 'plane':
      return 2;
    case 'scan':
      return scans.find(({ id }) => id === part.scanId)?.triangleCount ?? 0;
    case 'wedge':
    case 'ring':
    case 'turned':
    case 'prism':
    case 'loft':
    case 'wall':
      // stand-ins, until their meshes are made
      return 12;
  }
};

/** Most triangles of a sheet of relief. */
export const maxSheetTriangles = 30_000;

/** Most triangles that a relief becomes: a stone has 20 faces, a tuft seven blades of three. */
export const trianglesOfRelief = (relief: Relief): number =>
  'count' in relief ? relief.count * (relief.kind === 'stones' ? 20 : 21) : maxSheetTriangles;

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

/** Most triangles of a setup's subjects and of its relief. */
export const trianglesOfSetup = ({
  subjects,
  ground,
  scans,
}: Setup): { readonly subjects: number; readonly relief: number } => ({
  subjects: sum(subjects.flatMap(({ parts }) => parts.map((part) => trianglesOfPart(part, scans)))),
  relief: sum(ground.relief.map(trianglesOfRelief)),
});

import type { Mesh } from '../geometry/mesh.ts';
import { boxMesh } from '../geometry/parts/box.ts';
import { capsuleMesh, cylinderMesh, planeMesh, sphereMesh } from '../geometry/parts/round.ts';
import type { Part } from '../setup/schema/setup.ts';

const noDimples = { count: 0, radiusMetres: 1, depthMetres: 0, seed: 0 };

/** A block of a metre for kinds whose meshes are not made yet. */
const standIn = (): Mesh =>
  boxMesh({ widthMetres: 1, heightMetres: 1, depthMetres: 1, roundMetres: 0, topShare: 1, dimples: noDimples });

/** Triangles of a part about its own foot. */
export const localMesh = (part: Exclude<Part, { kind: 'scan' }>): Mesh => {
  switch (part.kind) {
    case 'box':
      return boxMesh({ ...part, dimples: part.dimples ?? noDimples });
    case 'cylinder':
      return cylinderMesh(part.radiusMetres, part.topRadiusMetres ?? part.radiusMetres, part.heightMetres, part.sides);
    case 'cone':
      return cylinderMesh(part.radiusMetres, 0, part.heightMetres, part.sides);
    case 'sphere':
      return sphereMesh(part.radiusMetres, (part.heightMetres ?? 2 * part.radiusMetres) / 2, part.sides);
    case 'capsule':
      return capsuleMesh(part.radiusMetres, part.heightMetres, part.sides);
    case 'plane':
      return planeMesh(part.widthMetres, part.depthMetres);
    case 'wedge':
    case 'ring':
    case 'turned':
    case 'prism':
    case 'loft':
    case 'wall':
      return standIn();
  }
};

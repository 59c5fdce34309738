import {
  composeRigid,
  type Mesh,
  type Rigid,
  rigidFromTurns,
  transformDirection,
  transformPoint,
} from '../geometry/mesh.ts';
import { boxMesh } from '../geometry/parts/box.ts';
import { capsuleMesh, cylinderMesh, planeMesh, sphereMesh } from '../geometry/parts/round.ts';
import type { Vec3 } from '../geometry/vec.ts';
import type { Part, Subject } from '../setup/schema/setup.ts';
import { radiansFromDegrees } from '../units/angle.ts';
import { worldFromDocument } from './axes.ts';

const noDimples = { count: 0, radiusMetres: 1, depthMetres: 0, seed: 0 };

/** Triangles of a part about its own foot. */
const localMesh = (part: Part): Mesh => {
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
  }
};

/** A mesh moved and turned. */
export const placeMesh = (mesh: Mesh, worldFromLocal: Rigid): Mesh => {
  const positions = new Float64Array(mesh.positions.length);
  const normals = new Float64Array(mesh.normals.length);
  const triple = (a: Float64Array, i: number): Vec3 => [a[i] as number, a[i + 1] as number, a[i + 2] as number];
  for (let i = 0; i < positions.length; i += 3) {
    positions.set(transformPoint(worldFromLocal, triple(mesh.positions, i)), i);
    normals.set(transformDirection(worldFromLocal, triple(mesh.normals, i)), i);
  }
  return { positions, normals };
};

/** Meshes of parts, kept as long as the part itself: moving a subject makes none of them again. */
const localMeshes = new WeakMap<Part, Mesh>();

const localMeshOf = (part: Part): Mesh => {
  const mesh = localMeshes.get(part) ?? localMesh(part);
  localMeshes.set(part, mesh);
  return mesh;
};

/** Triangles of one part of a subject in world axes. */
export const partMesh = (subject: Subject, part: Part): Mesh => {
  const turns = [part.turnDegrees, part.tiltDegrees, part.rollDegrees].map(radiansFromDegrees) as [
    number,
    number,
    number,
  ];
  const subjectFromPart = rigidFromTurns(worldFromDocument(part.position), ...turns);
  const worldFromSubject = rigidFromTurns(
    worldFromDocument(subject.position),
    radiansFromDegrees(subject.turnDegrees),
    0,
    0,
  );
  return placeMesh(localMeshOf(part), composeRigid(worldFromSubject, subjectFromPart));
};

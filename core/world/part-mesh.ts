import {
  composeRigid,
  type Mesh,
  type Rigid,
  rigidFromTurns,
  transformDirection,
  transformPoint,
} from '../geometry/mesh.ts';
import type { Vec3 } from '../geometry/vec.ts';
import type { Part, PartOf, Position, Scan, Subject } from '../setup/schema/setup.ts';
import { radiansFromDegrees } from '../units/angle.ts';
import { worldFromDocument } from './axes.ts';
import { localMesh } from './local-mesh.ts';

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

/** Waits for `core/scan`. */
const scanOfPart = (_part: PartOf<'scan'>, _scans: readonly Scan[]): { mesh: Mesh; tints: Float32Array | null } => {
  throw new Error('scans are not unpacked yet');
};

const localMeshOf = (part: Part, scans: readonly Scan[]): Mesh => {
  const known = localMeshes.get(part);
  if (known) return known;
  const mesh = part.kind === 'scan' ? scanOfPart(part, scans).mesh : localMesh(part);
  localMeshes.set(part, mesh);
  return mesh;
};

/** What the triangles of a part are tinted with, three numbers a triangle; null where nothing is. */
export const tintsOfPart = (part: Part, scans: readonly Scan[]): Float32Array | null =>
  part.kind === 'scan' ? scanOfPart(part, scans).tints : null;

interface Turned {
  readonly position: Position;
  readonly turnDegrees: number;
  readonly tiltDegrees: number;
  readonly rollDegrees: number;
}

const placement = ({ position, turnDegrees, tiltDegrees, rollDegrees }: Turned): Rigid =>
  rigidFromTurns(
    worldFromDocument(position),
    radiansFromDegrees(turnDegrees),
    radiansFromDegrees(tiltDegrees),
    radiansFromDegrees(rollDegrees),
  );

/** East and west exchanged. A reflection, so triangles placed with it turn the other way round. */
const mirror: Rigid = { x: [-1, 0, 0], y: [0, 1, 0], z: [0, 0, 1], origin: [0, 0, 0] };

/** The same triangles with corners the other way round. */
const flipped = ({ positions, normals }: Mesh): Mesh => {
  const swap = (values: Float64Array) => {
    const out = values.slice();
    for (let i = 0; i < values.length; i += 9) {
      out.set(values.subarray(i + 3, i + 6), i + 6);
      out.set(values.subarray(i + 6, i + 9), i + 3);
    }
    return out;
  };
  return { positions: swap(positions), normals: swap(normals) };
};

/** From a part's own axes to the world's. A reflection where the subject is mirrored. */
export const worldFromPart = (subject: Subject, part: Part): Rigid => {
  const worldFromSubject = placement(subject);
  const worldFromParts = subject.mirrored ? composeRigid(worldFromSubject, mirror) : worldFromSubject;
  return composeRigid(worldFromParts, placement(part));
};

/** Triangles of one part of a subject in world axes. */
export const partMesh = (subject: Subject, part: Part, scans: readonly Scan[] = []): Mesh => {
  const placed = placeMesh(localMeshOf(part, scans), worldFromPart(subject, part));
  return subject.mirrored ? flipped(placed) : placed;
};

import { composeRigid, type Mesh, type Rigid, rigidFromTurns } from '../geometry/mesh.ts';
import type { Vec3 } from '../geometry/vec.ts';
import { scanMesh } from '../scan/scan-mesh.ts';
import type { Part, PartOf, Position, Scan, Subject } from '../setup/schema/setup.ts';
import { radiansFromDegrees } from '../units/angle.ts';
import { worldFromDocument } from './axes.ts';
import { localMesh } from './local-mesh.ts';

/** A mesh moved and turned. */
export const placeMesh = (mesh: Mesh, { x, y, z, origin }: Rigid): Mesh => {
  const turned = (from: Float64Array, [ox, oy, oz]: Vec3): Float64Array => {
    const to = new Float64Array(from.length);
    for (let i = 0; i < from.length; i += 3) {
      const [a, b, c] = [from[i] as number, from[i + 1] as number, from[i + 2] as number];
      to[i] = x[0] * a + y[0] * b + z[0] * c + ox;
      to[i + 1] = x[1] * a + y[1] * b + z[1] * c + oy;
      to[i + 2] = x[2] * a + y[2] * b + z[2] * c + oz;
    }
    return to;
  };
  return { positions: turned(mesh.positions, origin), normals: turned(mesh.normals, [0, 0, 0]) };
};

/** The scan that a part shows; `checkReferences` has seen that it is there. */
const scanOfPart = ({ scanId }: PartOf<'scan'>, scans: readonly Scan[]): Scan =>
  scans.find(({ id }) => id === scanId) as Scan;

/** Triangles of a scan at a part's scale. */
const scaledScan = ({ scale }: PartOf<'scan'>, scan: Scan): Mesh => {
  const { mesh } = scanMesh(scan);
  return scale === 1 ? mesh : { ...mesh, positions: mesh.positions.map((v) => v * scale) };
};

/** Meshes of parts, kept as long as the part itself: moving a subject makes none of them again. */
const localMeshes = new WeakMap<Part, { readonly scan: Scan | null; readonly mesh: Mesh }>();

const localMeshOf = (part: Part, scans: readonly Scan[]): Mesh => {
  // the same part shows another mesh once another scan has its id, as after the only scan was replaced
  const scan = part.kind === 'scan' ? scanOfPart(part, scans) : null;
  const known = localMeshes.get(part);
  if (known?.scan === scan) return known.mesh;
  const mesh = part.kind === 'scan' ? scaledScan(part, scan as Scan) : localMesh(part);
  localMeshes.set(part, { scan, mesh });
  return mesh;
};

/** What the triangles of a part are tinted with, three numbers a triangle; null where nothing is. */
export const tintsOfPart = (part: Part, scans: readonly Scan[]): Float32Array | null =>
  part.kind === 'scan' ? scanMesh(scanOfPart(part, scans)).tints : null;

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

/** Where a subject stands, and how. */
export type Standing = Pick<Subject, keyof Turned | 'mirrored'>;

/** From a part's own axes to the world's. A reflection where the subject is mirrored. */
export const worldFromPart = (subject: Standing, part: Part): Rigid => {
  const worldFromSubject = placement(subject);
  const worldFromParts = subject.mirrored ? composeRigid(worldFromSubject, mirror) : worldFromSubject;
  return composeRigid(worldFromParts, placement(part));
};

/** Triangles of one part of a subject in world axes. */
export const partMesh = (subject: Standing, part: Part, scans: readonly Scan[] = []): Mesh => {
  const placed = placeMesh(localMeshOf(part, scans), worldFromPart(subject, part));
  return subject.mirrored ? flipped(placed) : placed;
};

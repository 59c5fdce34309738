import type { Mesh } from '../../../../core/geometry/mesh.ts';
import type { Vec3 } from '../../../../core/geometry/vec.ts';
import type { Part, Scan, Subject } from '../../../../core/setup/schema/setup.ts';
import { partMesh, type Standing } from '../../../../core/world/part-mesh.ts';

/** A box along the world's axes. */
export interface Box {
  readonly low: Vec3;
  readonly high: Vec3;
}

const infinite = Number.POSITIVE_INFINITY;

/** The box round some meshes; a point at the origin where there is nothing. */
export const boxOfMeshes = (meshes: readonly Pick<Mesh, 'positions'>[]): Box => {
  const low: [number, number, number] = [infinite, infinite, infinite];
  const high: [number, number, number] = [-infinite, -infinite, -infinite];
  for (const { positions } of meshes)
    for (let i = 0; i < positions.length; i++) {
      const axis = i % 3;
      const v = positions[i] as number;
      if (v < (low[axis] as number)) low[axis] = v;
      if (v > (high[axis] as number)) high[axis] = v;
    }
  return low[0] <= high[0] ? { low, high } : { low: [0, 0, 0], high: [0, 0, 0] };
};

/** A subject at the origin, unturned: its parts' own axes are the world's. */
const bare: Standing = { position: [0, 0, 0], turnDegrees: 0, tiltDegrees: 0, rollDegrees: 0, mirrored: false };

/** The mesh of a part in its subject's own axes: x east, y up, z south. */
export const meshOfOwnPart = (part: Part, scans: readonly Scan[]): Mesh => partMesh(bare, part, scans);

/** The meshes of a subject where it stands, world axes. */
export const meshesOf = (of: Subject, scans: readonly Scan[]): Mesh[] =>
  of.parts.map((part) => partMesh(of, part, scans));

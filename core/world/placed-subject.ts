import type { Mesh } from '../geometry/mesh.ts';
import { weldCorners } from '../geometry/weld.ts';
import type { Scan, Subject } from '../setup/schema/setup.ts';
import { partMesh, tintsOfPart } from './part-mesh.ts';
import type { TintedMesh } from './soup.ts';

/** A subject as the stage knows it: the same object on every stage that it stands on unchanged. */
export interface StageSubject {
  readonly id: string;
  readonly name: string;
  /** Highest point, metres over the ground. */
  readonly topMetres: number;
  /** Its distinct corners in world axes, three numbers each, double precision. */
  readonly points: Float64Array;
  /** The corners of each of its parts, in world axes, three numbers each. */
  readonly cornersOfParts: readonly Mesh['positions'][];
}

/** A subject's triangles in world axes, part by part, and what the stage knows of it. */
export interface PlacedSubject {
  readonly parts: readonly TintedMesh[];
  readonly onStage: StageSubject;
}

/** Corners less than this apart count as one place, metres. */
const weldMetres = 1e-5;

const joined = (meshes: readonly Mesh[]): Float64Array => {
  const all = new Float64Array(meshes.reduce((sum, { positions }) => sum + positions.length, 0));
  let at = 0;
  for (const { positions } of meshes) {
    all.set(positions, at);
    at += positions.length;
  }
  return all;
};

interface Distinct {
  readonly scans: readonly Scan[];
  readonly mirrored: boolean;
  readonly firstCorner: Int32Array;
}
const distinctOfParts = new WeakMap<Subject['parts'], Distinct>();

/**
 * Which corners of a subject's parts are the first at their place. Found where the subject's own axes are the world's, so
 * that it hangs on nothing but the parts, and kept as long as they are.
 */
const distinctCorners = (subject: Subject, scans: readonly Scan[]): Int32Array => {
  const { parts, mirrored } = subject;
  const known = distinctOfParts.get(parts);
  if (known && known.scans === scans && known.mirrored === mirrored) return known.firstCorner;
  const upright: Subject = { ...subject, position: [0, 0, 0], turnDegrees: 0, tiltDegrees: 0, rollDegrees: 0 };
  const { firstCorner } = weldCorners(joined(parts.map((part) => partMesh(upright, part, scans))), weldMetres);
  distinctOfParts.set(parts, { scans, mirrored, firstCorner });
  return firstCorner;
};

/** Places a subject. */
export const placeSubject = (subject: Subject, scans: readonly Scan[]): PlacedSubject => {
  const parts = subject.parts.map((part) => ({
    mesh: partMesh(subject, part, scans),
    tints: tintsOfPart(part, scans),
  }));
  const all = joined(parts.map(({ mesh }) => mesh));
  const firstCorner = distinctCorners(subject, scans);
  const points = new Float64Array(firstCorner.length * 3);
  let topMetres = Number.NEGATIVE_INFINITY;
  for (let group = 0; group < firstCorner.length; group++) {
    const corner = (firstCorner[group] as number) * 3;
    for (let axis = 0; axis < 3; axis++) points[group * 3 + axis] = all[corner + axis] as number;
    topMetres = Math.max(topMetres, all[corner + 1] as number);
  }
  const cornersOfParts = parts.map(({ mesh }) => mesh.positions);
  return { parts, onStage: { id: subject.id, name: subject.name, topMetres, points, cornersOfParts } };
};

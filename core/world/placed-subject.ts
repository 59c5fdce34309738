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
  /** The distinct corners of its parts in world axes, part after part, three numbers each, double precision. */
  readonly points: Float64Array;
  /** Where each part's numbers begin in `points`, and after the last where they end. */
  readonly partStarts: readonly number[];
}

/** A subject's triangles in world axes, part by part, and what the stage knows of it. */
export interface PlacedSubject {
  readonly parts: readonly TintedMesh[];
  readonly onStage: StageSubject;
}

/** Corners less than this apart count as one place, metres. */
const weldMetres = 1e-5;

interface Distinct {
  readonly scans: readonly Scan[];
  readonly mirrored: boolean;
  /** For each part. */
  readonly firstCorners: readonly Int32Array[];
}
const distinctOfParts = new WeakMap<Subject['parts'], Distinct>();

/**
 * Which corners of each of a subject's parts are the first at their place. Found where the subject's own axes are the
 * world's, so that it hangs on nothing but the parts, and kept as long as they are.
 */
const distinctCorners = (subject: Subject, scans: readonly Scan[]): readonly Int32Array[] => {
  const { parts, mirrored } = subject;
  const known = distinctOfParts.get(parts);
  if (known && known.scans === scans && known.mirrored === mirrored) return known.firstCorners;
  const upright: Subject = { ...subject, position: [0, 0, 0], turnDegrees: 0, tiltDegrees: 0, rollDegrees: 0 };
  const firstCorners = parts.map(
    (part) => weldCorners(partMesh(upright, part, scans).positions, weldMetres).firstCorner,
  );
  distinctOfParts.set(parts, { scans, mirrored, firstCorners });
  return firstCorners;
};

/** Places a subject. */
export const placeSubject = (subject: Subject, scans: readonly Scan[]): PlacedSubject => {
  const parts = subject.parts.map((part) => ({
    mesh: partMesh(subject, part, scans),
    tints: tintsOfPart(part, scans),
  }));
  const firstCorners = distinctCorners(subject, scans);
  const partStarts = [0];
  for (const { length } of firstCorners) partStarts.push((partStarts.at(-1) as number) + 3 * length);
  const points = new Float64Array(partStarts.at(-1) as number);
  let at = 0;
  firstCorners.forEach((firstCorner, p) => {
    const { positions } = (parts[p] as TintedMesh).mesh;
    for (const corner of firstCorner)
      for (let axis = 0; axis < 3; axis++) points[at++] = positions[3 * corner + axis] as number;
  });
  let topMetres = Number.NEGATIVE_INFINITY;
  for (let up = 1; up < points.length; up += 3) topMetres = Math.max(topMetres, points[up] as number);
  return { parts, onStage: { id: subject.id, name: subject.name, topMetres, points, partStarts } };
};

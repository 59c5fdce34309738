import { latheDivisions, latheTriangles, postProfile, turnedTriangles } from './lathe-divisions.ts';
import { loftDivisions, loftTriangles } from './loft-divisions.ts';
import {
  ballDivisions,
  blockTriangles,
  boxDivisions,
  capsuleDivisions,
  capsuleTriangles,
  planeDivisions,
  ringDivisions,
  ringTriangles,
} from './part-divisions.ts';
import { trianglesOfRelief } from './relief-detail.ts';
import { roughOf } from './rough-pieces.ts';
import type { Part, PartOf, Scan, Setup } from './schema/setup.ts';
import { wallOutline } from './wall-outline.ts';

/** Most triangles that a setup may ask for in all, so that neither a hostile file nor a careless one fills the memory. */
export const maxTriangles = 1_000_000;

/** Triangles of a solid drawn out of an outline: two lids, and two a stretch of every rim. */
const extrudedTriangles = (outline: readonly unknown[], holes: readonly (readonly unknown[])[]): number => {
  const points = holes.reduce((count, hole) => count + hole.length, outline.length);
  return 2 * (points - 2 + 2 * holes.length) + 2 * points;
};

/** Triangles of an even or uneven post. */
const postTriangles = (part: PartOf<'cylinder'> | PartOf<'cone'>, topRadius: number): number => {
  const profile = postProfile(part.radiusMetres, topRadius, part.heightMetres);
  const rough = roughOf(part);
  return rough
    ? latheDivisions(profile, false, part.sides, rough).triangles
    : latheTriangles(profile, false, part.sides);
};

/**
 * Triangles that a part becomes, worked out from the document alone, so that a file can be refused before anything is
 * made of it. `tests/core/setup/detail.test.ts` holds it to the meshes.
 */
export const trianglesOfPart = (part: Part, scans: readonly Scan[] = []): number => {
  switch (part.kind) {
    case 'box':
      return blockTriangles(boxDivisions(part));
    case 'wedge':
      return 8;
    case 'cylinder':
      return postTriangles(part, part.topRadiusMetres ?? part.radiusMetres);
    case 'cone':
      return postTriangles(part, 0);
    case 'sphere': {
      const rough = roughOf(part);
      return rough ? 12 * ballDivisions(part, rough) ** 2 : 2 * part.sides * (Math.ceil(part.sides / 2) - 1);
    }
    case 'capsule': {
      const rough = roughOf(part);
      if (!rough) return capsuleTriangles(part);
      const [across, up] = capsuleDivisions(part, rough);
      return blockTriangles([across, up, across]);
    }
    case 'plane': {
      const rough = roughOf(part);
      if (!rough) return 2;
      const [across, deep] = planeDivisions(part, rough);
      return 2 * across * deep;
    }
    case 'ring':
      return ringTriangles(part, ringDivisions(part));
    case 'turned':
      return turnedTriangles(part);
    case 'prism':
      return extrudedTriangles(part.outline, part.holes);
    case 'loft': {
      const rough = roughOf(part);
      const divisions = rough && loftDivisions(part, rough);
      if (divisions) return loftTriangles(total(divisions.round), total(divisions.spans));
      return loftTriangles(
        (part.sections[0] as (typeof part.sections)[number]).outline.length,
        part.sections.length - 1,
      );
    }
    case 'wall': {
      const { outline, windows } = wallOutline(part);
      return extrudedTriangles(outline, windows);
    }
    case 'scan':
      return (scans.find(({ id }) => id === part.scanId) as Scan).triangleCount;
  }
};

const total = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);

/** Most triangles of a setup's subjects and of its relief. */
export const trianglesOfSetup = ({
  subjects,
  ground,
  scans,
}: Setup): { readonly subjects: number; readonly relief: number } => ({
  subjects: total(subjects.flatMap(({ parts }) => parts.map((part) => trianglesOfPart(part, scans)))),
  relief: total(ground.relief.map(trianglesOfRelief)),
});

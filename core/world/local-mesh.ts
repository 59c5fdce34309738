import type { Mesh } from '../geometry/mesh.ts';
import { roughBallMesh, roughCapsuleMesh } from '../geometry/parts/blob.ts';
import { boxMesh } from '../geometry/parts/box.ts';
import { latheMesh } from '../geometry/parts/lathe.ts';
import { loftMesh, roughLoftMesh } from '../geometry/parts/loft.ts';
import { planeMesh, roughPlaneMesh } from '../geometry/parts/plane.ts';
import { prismMesh } from '../geometry/parts/prism.ts';
import { ringMesh, roughRingMesh } from '../geometry/parts/ring.ts';
import { roughLatheMesh } from '../geometry/parts/rough-lathe.ts';
import { capsuleMesh, sphereMesh } from '../geometry/parts/round.ts';
import { wallMesh } from '../geometry/parts/wall.ts';
import { wedgeMesh } from '../geometry/parts/wedge.ts';
import { latheDivisions, postProfile } from '../setup/lathe-divisions.ts';
import { loftDivisions } from '../setup/loft-divisions.ts';
import {
  ballDivisions,
  boxDivisions,
  capsuleDivisions,
  isWholeRing,
  planeDivisions,
  ringDivisions,
} from '../setup/part-divisions.ts';
import { loftSections, turnedProfile, turnedStretches } from '../setup/part-outlines.ts';
import { roughOf } from '../setup/rough-pieces.ts';
import type { Part, PartOf } from '../setup/schema/setup.ts';
import { wallOutline } from '../setup/wall-outline.ts';
import { radiansFromDegrees } from '../units/angle.ts';
import { fewestRoundSides } from '../units/round-sides.ts';

const noDimples = { count: 0, radiusMetres: 1, depthMetres: 0, seed: 0 };

/** Sides that are too few to look round stay flat. */
const isFaceted = ({ sides }: { readonly sides: number }): boolean => sides < fewestRoundSides;

/** Something turned about the vertical, even or uneven. */
const turned = (
  profile: ReturnType<typeof turnedProfile>,
  isClosed: boolean,
  part: PartOf<'cylinder'> | PartOf<'cone'> | PartOf<'turned'>,
  creaseRadians: number,
): Mesh => {
  const rough = roughOf(part);
  const stretches = turnedStretches(profile, isClosed);
  if (!rough) return latheMesh(stretches, part.sides, creaseRadians);
  const divisions = latheDivisions(profile, isClosed, part.sides, rough);
  return roughLatheMesh(stretches, part.sides, creaseRadians, rough, divisions);
};

const post = (part: PartOf<'cylinder'> | PartOf<'cone'>, topRadius: number): Mesh =>
  turned(postProfile(part.radiusMetres, topRadius, part.heightMetres), false, part, 0);

const ball = (part: PartOf<'sphere'>): Mesh => {
  const { radiusMetres, sides } = part;
  const [deep, half] = [part.radiusNorthMetres ?? radiusMetres, (part.heightMetres ?? 2 * radiusMetres) / 2];
  const rough = roughOf(part);
  if (!rough) return sphereMesh(radiusMetres, half, sides, deep);
  return roughBallMesh([radiusMetres, half, deep], rough, ballDivisions(part, rough), isFaceted(part));
};

const capsule = (part: PartOf<'capsule'>): Mesh => {
  const { radiusMetres, heightMetres, sides } = part;
  const rough = roughOf(part);
  if (!rough) return capsuleMesh(radiusMetres, heightMetres, sides);
  return roughCapsuleMesh(radiusMetres, heightMetres, rough, capsuleDivisions(part, rough), isFaceted(part));
};

const plane = (part: PartOf<'plane'>): Mesh => {
  const rough = roughOf(part);
  if (!rough) return planeMesh(part.widthMetres, part.depthMetres);
  return roughPlaneMesh(part.widthMetres, part.depthMetres, rough, planeDivisions(part, rough));
};

const ring = (part: PartOf<'ring'>): Mesh => {
  const shape = { ...part, arcRadians: isWholeRing(part) ? 2 * Math.PI : radiansFromDegrees(part.arcDegrees) };
  const divisions = ringDivisions(part);
  const rough = roughOf(part);
  return rough ? roughRingMesh(shape, rough, divisions) : ringMesh(shape, divisions[0]);
};

const loft = (part: PartOf<'loft'>): Mesh => {
  const crease = radiansFromDegrees(part.creaseDegrees);
  const rough = roughOf(part);
  const sections = loftSections(part);
  return rough ? roughLoftMesh(sections, crease, rough, loftDivisions(part, rough)) : loftMesh(sections, crease);
};

const wall = (part: PartOf<'wall'>): Mesh => {
  const { outline, windows } = wallOutline(part);
  return wallMesh(outline, windows, part.thicknessMetres);
};

/** Triangles of a part about its own foot: x east, y up, z south. How finely it is divided the document alone says. */
export const localMesh = (part: Exclude<Part, { kind: 'scan' }>): Mesh => {
  switch (part.kind) {
    case 'box':
      return boxMesh({
        ...part,
        dimples: part.dimples ?? noDimples,
        rough: roughOf(part),
        divisions: boxDivisions(part),
      });
    case 'wedge':
      return wedgeMesh(part.widthMetres, part.depthMetres, part.heightMetres, part.ridgeShare);
    case 'cylinder':
      return post(part, part.topRadiusMetres ?? part.radiusMetres);
    case 'cone':
      return post(part, 0);
    case 'sphere':
      return ball(part);
    case 'capsule':
      return capsule(part);
    case 'plane':
      return plane(part);
    case 'ring':
      return ring(part);
    case 'turned':
      return turned(turnedProfile(part), part.closed, part, radiansFromDegrees(part.creaseDegrees));
    case 'prism':
      return prismMesh(part.outline, part.holes, part.heightMetres, radiansFromDegrees(part.creaseDegrees));
    case 'loft':
      return loft(part);
    case 'wall':
      return wall(part);
  }
};

import type { Mesh } from '../mesh.ts';
import { type Rough, roughCreaseRadians, roughened } from '../roughen.ts';
import { meshOfSkin } from '../skin.ts';
import { add, normalize, scale, sub, type Vec3 } from '../vec.ts';
import { latticeSkin, roundedLines } from './lattice.ts';

/** Whether a rough round part keeps its facets. */
const creaseOf = (isFaceted: boolean): number => (isFaceted ? 0 : roughCreaseRadians);

/**
 * An uneven ball, egg or stone resting on the origin, divided like the six sides of a block blown up to a ball, so that
 * its triangles are alike all over.
 *
 * @param radii half its size along x, y and z, metres
 * @param divisions pieces along each side of the block
 */
export const roughBallMesh = (radii: Vec3, rough: Rough, divisions: number, isFaceted: boolean): Mesh => {
  const line = roundedLines(1, 1, divisions);
  const skin = latticeSkin([line, line, line], (p) => {
    const [x, y, z] = normalize(p);
    return [x * radii[0], (y + 1) * radii[1], z * radii[2]];
  });
  const cell = ((Math.PI / 2) * Math.max(...radii)) / divisions;
  const thickness = 0.7 * Math.min(...radii);
  return meshOfSkin(
    roughened(skin, rough, cell, () => thickness, true),
    creaseOf(isFaceted),
  );
};

/**
 * An uneven cylinder with round ends resting on the origin.
 *
 * @param divisions pieces along the sides of the block that it is blown up from: across, and upward
 */
export const roughCapsuleMesh = (
  radius: number,
  height: number,
  rough: Rough,
  [across, up]: readonly [across: number, up: number],
  isFaceted: boolean,
): Mesh => {
  const rise = height / 2 - radius;
  const line = roundedLines(radius, radius, across);
  const skin = latticeSkin([line, roundedLines(height / 2, radius, up), line], (p) => {
    const inner: Vec3 = [0, Math.min(Math.max(p[1], -rise), rise), 0];
    const [x, y, z] = add(inner, scale(normalize(sub(p, inner)), radius));
    return [x, y + height / 2, z];
  });
  const cell = Math.max(((Math.PI / 2) * radius) / across, (2 * rise) / up);
  return meshOfSkin(
    roughened(skin, rough, cell, () => 0.7 * radius, true),
    creaseOf(isFaceted),
  );
};

import type { Mesh } from '../mesh.ts';
import { meshOfSkin } from '../skin.ts';
import type { Point2 } from '../triangulate.ts';
import { extruded } from './extrude.ts';

/** Reveals of arches look curved; corners of sills, gables and the tips of pointed heads stay sharp. */
const creaseRadians = Math.PI / 6;

/**
 * An upright wall along east and west, its middle over the origin.
 *
 * @param outline of the wall seen from the south, [east, up] in metres, doorways notched out of its foot
 * @param windows outlines of the holes
 */
export const wallMesh = (
  outline: readonly Point2[],
  windows: readonly (readonly Point2[])[],
  thicknessMetres: number,
): Mesh =>
  meshOfSkin(
    extruded(outline, windows, [-thicknessMetres / 2, thicknessMetres / 2], (east, up, south) => [east, up, south]),
    creaseRadians,
  );

import type { Mesh } from '../mesh.ts';
import { meshOfSkin } from '../skin.ts';
import type { Point2 } from '../triangulate.ts';
import { extruded } from './extrude.ts';

/**
 * An outline on the ground drawn up, with holes through it.
 *
 * @param outline [east, north] in metres, either way round; holes likewise, inside it and apart
 * @param creaseRadians sides that meet at a smaller angle look curved
 */
export const prismMesh = (
  outline: readonly Point2[],
  holes: readonly (readonly Point2[])[],
  heightMetres: number,
  creaseRadians: number,
): Mesh =>
  meshOfSkin(
    extruded(outline, holes, [0, heightMetres], (east, north, up) => [east, up, -north]),
    creaseRadians,
  );

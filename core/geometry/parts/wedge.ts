import type { Mesh } from '../mesh.ts';
import { meshOfSkin, SkinBuilder } from '../skin.ts';

/**
 * A block that narrows to a ridge along east and west, its base on the origin.
 *
 * @param ridgeShare 0 = the ridge lies over the south edge, 1 = over the north edge
 */
export const wedgeMesh = (widthMetres: number, depthMetres: number, heightMetres: number, ridgeShare: number): Mesh => {
  const [x, z, ridge] = [widthMetres / 2, depthMetres / 2, depthMetres * (0.5 - ridgeShare)];
  const builder = new SkinBuilder();
  const southWest = builder.corner([-x, 0, z]);
  const southEast = builder.corner([x, 0, z]);
  const northEast = builder.corner([x, 0, -z]);
  const northWest = builder.corner([-x, 0, -z]);
  const ridgeWest = builder.corner([-x, heightMetres, ridge]);
  const ridgeEast = builder.corner([x, heightMetres, ridge]);
  builder.quad(southWest, northWest, northEast, southEast);
  builder.quad(southWest, southEast, ridgeEast, ridgeWest);
  builder.quad(northEast, northWest, ridgeWest, ridgeEast);
  builder.triangle(southEast, northEast, ridgeEast);
  builder.triangle(northWest, southWest, ridgeWest);
  return meshOfSkin(builder.build(), 0);
};

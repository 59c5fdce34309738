import { type CameraView, projectPoint, viewDirection } from '../camera/camera-view.ts';
import type { Vec3 } from '../geometry/vec.ts';
import { surfaceAlong } from '../trace/surface-point.ts';
import type { Stage } from '../world/stage.ts';

/** A place in the picture: 0 = left and top edge, 1 = right and bottom edge. */
export type PicturePlace = readonly [x: number, y: number];

/** Four corners in the picture, clockwise from the top left where the patch was drawn. */
export type PictureQuad = readonly [PicturePlace, PicturePlace, PicturePlace, PicturePlace];

/** Four corners in the scene, world metres. */
export type PatchCorners = readonly [Vec3, Vec3, Vec3, Vec3];

/** A rectangle of the picture as a quad. */
export const quadOfRectangle = (left: number, top: number, right: number, bottom: number): PictureQuad => [
  [left, top],
  [right, top],
  [right, bottom],
  [left, bottom],
];

/** Least turn at a corner, in shares of the picture squared: less and the quad is all but folded. */
const leastTurn = 1e-5;

/** Whether a quad is convex; one that is folded encloses nothing. Seen from its back it goes round the other way. */
export const isOpenQuad = (quad: PictureQuad): boolean => {
  const turns = quad.map((b, i) => {
    const [a, c] = [quad[(i + 3) % 4] as PicturePlace, quad[(i + 1) % 4] as PicturePlace];
    return (b[0] - a[0]) * (c[1] - b[1]) - (b[1] - a[1]) * (c[0] - b[0]);
  });
  return turns.every((turn) => turn > leastTurn) || turns.every((turn) => turn < -leastTurn);
};

/** Where the line of sight through a place of the picture meets a surface; null when it looks into the sky. */
export const surfacePlace = (stage: Stage, view: CameraView, [x, y]: PicturePlace): Vec3 | null =>
  surfaceAlong(stage, view.position, viewDirection(view, x, y))?.position ?? null;

/** The places in the scene behind the corners of a quad; null when one of them looks into the sky. */
export const patchCorners = (stage: Stage, view: CameraView, quad: PictureQuad): PatchCorners | null => {
  const places = quad.map((place) => surfacePlace(stage, view, place));
  return places.includes(null) ? null : (places as unknown as PatchCorners);
};

/** The corners as the camera sees them, whatever stands in front; null when one lies at or behind the lens. */
export const patchInPicture = (view: CameraView, corners: PatchCorners): PictureQuad | null => {
  const places = corners.map((corner) => projectPoint(view, corner));
  return places.includes(null) ? null : (places as unknown as PictureQuad);
};

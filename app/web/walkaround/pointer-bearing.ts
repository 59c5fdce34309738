import { type Camera, Plane, Raycaster, Vector2, Vector3 } from 'three';

/** Flatter than this to the level, a view does not tell where on it the pointer is: sine of the angle. */
const flattest = 0.15;

/** A place in the page, as events of the pointer have it. */
interface PagePlace {
  readonly clientX: number;
  readonly clientY: number;
}

/**
 * Bearing of the pointer round a place, on the level through it: radians from east, anticlockwise seen from above. null
 * where the view is too flat, or the pointer over the horizon.
 *
 * @param box the view in the page
 */
export const pointerBearing = (
  pointer: PagePlace,
  box: Pick<DOMRect, 'left' | 'top' | 'width' | 'height'>,
  camera: Camera,
  [x, y, z]: readonly [number, number, number],
): number | null => {
  const across = ((pointer.clientX - box.left) / box.width) * 2 - 1;
  const up = 1 - ((pointer.clientY - box.top) / box.height) * 2;
  const raycaster = new Raycaster();
  raycaster.setFromCamera(new Vector2(across, up), camera);
  if (Math.abs(raycaster.ray.direction.y) < flattest) return null;
  const place = raycaster.ray.intersectPlane(new Plane(new Vector3(0, 1, 0), -y), new Vector3());
  if (!place || Math.hypot(place.x - x, place.z - z) < 1e-6) return null;
  return Math.atan2(z - place.z, place.x - x);
};

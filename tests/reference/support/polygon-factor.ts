import { add, cross, dot, length, scale, sub, type Vec3 } from '../../../core/geometry/vec.ts';

/** The part of a polygon on the positive side of a plane through the origin; heights are distances from that plane. */
const aboveHorizon = (corners: readonly Vec3[], normal: Vec3): Vec3[] =>
  corners.flatMap((corner, i) => {
    const next = corners[(i + 1) % corners.length] as Vec3;
    const [height, nextHeight] = [dot(corner, normal), dot(next, normal)];
    const kept = height >= 0 ? [corner] : [];
    if (height * nextHeight >= 0) return kept;
    return [...kept, add(corner, scale(sub(next, corner), height / (height - nextHeight)))];
  });

/**
 * Configuration factor of a flat polygon: F = (1 / 2 pi) |sum of gamma n.(u x v) / |u x v||, with u and v the directions
 * to neighbouring corners and gamma the angle between them (Lambert 1760; Stark 2000, Univ. Utah UUCS-00-012). What lies
 * under the element's horizon is cut off first. Illuminance is pi L F.
 *
 * Both sides of the polygon count, so corners may run either way round. An element in the polygon's own plane gets 0
 * outside it; on its border the factor is not defined.
 *
 * @param corners in order, at least three, world metres
 * @param point the element
 * @param normal unit, the way the element faces
 * @returns 0 to 1
 */
export const polygonFactor = (corners: readonly Vec3[], point: Vec3, normal: Vec3): number => {
  const seen = aboveHorizon(
    corners.map((corner) => sub(corner, point)),
    normal,
  );
  const sum = seen.reduce((total, u, i) => {
    const v = seen[(i + 1) % seen.length] as Vec3;
    const square = cross(u, v);
    const size = length(square);
    return size === 0 ? total : total + (Math.atan2(size, dot(u, v)) * dot(normal, square)) / size;
  }, 0);
  return Math.abs(sum) / (2 * Math.PI);
};

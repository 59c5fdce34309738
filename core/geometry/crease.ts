import { type Faces, facesOf } from './faces.ts';
import { leastCosine, setUnit } from './held-to-faces.ts';

/** Beyond so many faces at one corner, each is held against their mean only, so that a fan of thousands takes no square of that. */
const manyFaces = 256;

/** Corners of triangles sorted by place: those of place p are `corners[start[p]]` to before `corners[start[p + 1]]`. */
const cornersByPlace = (triangles: Uint32Array, placeCount: number) => {
  const start = new Int32Array(placeCount + 1);
  for (let c = 0; c < triangles.length; c++) {
    const next = (triangles[c] as number) + 1;
    start[next] = (start[next] as number) + 1;
  }
  for (let p = 0; p < placeCount; p++) start[p + 1] = (start[p + 1] as number) + (start[p] as number);
  const filled = start.slice();
  const corners = new Int32Array(triangles.length);
  for (let c = 0; c < triangles.length; c++) {
    const place = triangles[c] as number;
    const at = filled[place] as number;
    corners[at] = c;
    filled[place] = at + 1;
  }
  return { start, corners };
};

/**
 * Corner normals of triangles that share places: at each corner the mean, weighted by the angles there, of the faces at
 * that place that lie within the crease angle of the corner's own face (Thürmer and Wüthrich 1998, Computing vertex
 * normals from polygonal facets). So a curved surface looks curved, an edge stays an edge, and it does not matter how a
 * flat face is cut into triangles.
 *
 * @param places three numbers a place, metres
 * @param triangles three places a triangle, counter-clockwise seen from outside
 * @param creaseRadians faces that meet at a greater angle keep an edge; 0 = all flat, pi = all smooth
 * @returns unit vectors, nine numbers a triangle; never more than about 84 degrees from their own face. Corners of a
 * triangle without area take the mean of what meets there, or up
 */
export const creasedNormals = (places: Float64Array, triangles: Uint32Array, creaseRadians: number): Float64Array => {
  const faces = facesOf(places, triangles);
  const placeCount = places.length / 3;
  const { start, corners } = cornersByPlace(triangles, placeCount);
  const out = new Float64Array(triangles.length * 3);
  const crease = Math.min(creaseRadians, Math.PI);
  // a hair more than the angle, so that flat neighbours count at 0
  const [least, leastHalf] = [Math.cos(crease) - 1e-9, Math.cos(crease / 2)];
  for (let place = 0; place < placeCount; place++) {
    const [from, to] = [start[place] as number, start[place + 1] as number];
    if (fillIfSmooth(out, faces, corners, from, to, leastHalf)) continue;
    if (to - from > manyFaces) fillByMean(out, faces, corners, from, to, least);
    else fillByNeighbours(out, faces, corners, from, to, least);
  }
  return out;
};

/** Sum of the normals of the faces at some corners, each by its angle there. */
const sum = { x: 0, y: 0, z: 0, length: 0 };

/** Leaves in `sum` what the faces within a cone about a direction add up to. */
const addUp = (
  { normals, angles }: Faces,
  corners: Int32Array,
  from: number,
  to: number,
  x: number,
  y: number,
  z: number,
  least: number,
): void => {
  let [sx, sy, sz] = [0, 0, 0];
  for (let k = from; k < to; k++) {
    const corner = corners[k] as number;
    const f = corner - (corner % 3);
    const [fx, fy, fz] = [normals[f] as number, normals[f + 1] as number, normals[f + 2] as number];
    if (fx * x + fy * y + fz * z < least) continue;
    const weight = angles[corner] as number;
    sx += weight * fx;
    sy += weight * fy;
    sz += weight * fz;
  }
  sum.x = sx;
  sum.y = sy;
  sum.z = sz;
  sum.length = Math.sqrt(sx * sx + sy * sy + sz * sz);
};

/** Where all faces lie within half the angle of their mean, each pair lies within the whole: they share one normal. */
const fillIfSmooth = (
  out: Float64Array,
  faces: Faces,
  corners: Int32Array,
  from: number,
  to: number,
  leastHalf: number,
): boolean => {
  const { normals } = faces;
  addUp(faces, corners, from, to, 0, 0, 0, -1);
  if (!(sum.length > 1e-12)) return false;
  const [x, y, z] = [sum.x / sum.length, sum.y / sum.length, sum.z / sum.length];
  const bound = Math.max(leastHalf, leastCosine);
  for (let k = from; k < to; k++) {
    const corner = corners[k] as number;
    const f = corner - (corner % 3);
    if (x * (normals[f] as number) + y * (normals[f + 1] as number) + z * (normals[f + 2] as number) < bound)
      return false;
  }
  for (let k = from; k < to; k++) {
    const at = 3 * (corners[k] as number);
    out[at] = x;
    out[at + 1] = y;
    out[at + 2] = z;
  }
  return true;
};

/** Gives each corner of a place the mean of the faces there within the angle of its own; of all where its own has no area. */
const fillByNeighbours = (
  out: Float64Array,
  faces: Faces,
  corners: Int32Array,
  from: number,
  to: number,
  least: number,
): void => {
  const { normals } = faces;
  for (let k = from; k < to; k++) {
    const corner = corners[k] as number;
    const f = corner - (corner % 3);
    const [x, y, z] = [normals[f] as number, normals[f + 1] as number, normals[f + 2] as number];
    addUp(faces, corners, from, to, x, y, z, x === 0 && y === 0 && z === 0 ? -1 : least);
    setUnit(out, corner * 3, sum.x, sum.y, sum.z, x, y, z);
  }
};

/** The same where very many faces meet: each is held against the mean of all, and stays flat where it lies off it. */
const fillByMean = (
  out: Float64Array,
  faces: Faces,
  corners: Int32Array,
  from: number,
  to: number,
  least: number,
): void => {
  const { normals } = faces;
  addUp(faces, corners, from, to, 0, 0, 0, -1);
  for (let k = from; k < to; k++) {
    const corner = corners[k] as number;
    const f = corner - (corner % 3);
    const [x, y, z] = [normals[f] as number, normals[f + 1] as number, normals[f + 2] as number];
    const isWithin = (x === 0 && y === 0 && z === 0) || sum.x * x + sum.y * y + sum.z * z >= least * sum.length;
    if (isWithin) setUnit(out, corner * 3, sum.x, sum.y, sum.z, x, y, z);
    else setUnit(out, corner * 3, x, y, z, x, y, z);
  }
};

import type { Mesh } from './mesh.ts';
import { type Welded, weldCorners } from './weld.ts';

/** Corners nearer than this are one place, metres. */
const sameMetres = 1e-6;

/** Beyond so many faces at one place, each is compared with their mean only, so that a fan of thousands takes no square of that. */
const manyFaces = 256;

/** A corner normal leans from its own face so far that this cosine is left, at most; farther would turn light off. */
const leastCosine = 0.1;

interface Faces {
  /** Unit normals, three numbers a triangle; zero where a triangle has no area. */
  readonly normals: Float64Array;
  /** The angle at each corner, radians. */
  readonly angles: Float64Array;
}

const facesOf = (positions: Float64Array): Faces => {
  const count = positions.length / 9;
  const normals = new Float64Array(count * 3);
  const angles = new Float64Array(count * 3);
  for (let t = 0; t < count; t++) {
    const i = 9 * t;
    const [ax, ay, az] = [positions[i] as number, positions[i + 1] as number, positions[i + 2] as number];
    const ux = (positions[i + 3] as number) - ax;
    const uy = (positions[i + 4] as number) - ay;
    const uz = (positions[i + 5] as number) - az;
    const vx = (positions[i + 6] as number) - ax;
    const vy = (positions[i + 7] as number) - ay;
    const vz = (positions[i + 8] as number) - az;
    const [x, y, z] = [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
    const twiceArea = Math.sqrt(x * x + y * y + z * z);
    if (!(twiceArea > 0)) continue;
    normals[3 * t] = x / twiceArea;
    normals[3 * t + 1] = y / twiceArea;
    normals[3 * t + 2] = z / twiceArea;
    // the angle at each corner from the sine (twice the area) and the cosine of the two edges that meet there
    const uu = ux * ux + uy * uy + uz * uz;
    const vv = vx * vx + vy * vy + vz * vz;
    const uv = ux * vx + uy * vy + uz * vz;
    const second = Math.atan2(twiceArea, uu - uv);
    const third = Math.atan2(twiceArea, vv - uv);
    angles[3 * t] = Math.PI - second - third;
    angles[3 * t + 1] = second;
    angles[3 * t + 2] = third;
  }
  return { normals, angles };
};

/** Corners sorted by the place that they share: those of place g are `corners[start[g]]` to before `corners[start[g + 1]]`. */
const cornersOfPlaces = ({ groupOfCorner, groupCount }: Pick<Welded, 'groupOfCorner' | 'groupCount'>) => {
  const start = new Int32Array(groupCount + 1);
  for (let c = 0; c < groupOfCorner.length; c++) {
    const next = (groupOfCorner[c] as number) + 1;
    start[next] = (start[next] as number) + 1;
  }
  for (let g = 0; g < groupCount; g++) start[g + 1] = (start[g + 1] as number) + (start[g] as number);
  const filled = start.slice();
  const corners = new Int32Array(groupOfCorner.length);
  for (let c = 0; c < groupOfCorner.length; c++) {
    const g = groupOfCorner[c] as number;
    const at = filled[g] as number;
    corners[at] = c;
    filled[g] = at + 1;
  }
  return { start, corners };
};

/**
 * Corner normals of a soup of triangles: at each corner the mean, weighted by the angles there, of the faces at that
 * place that lie within the crease angle of the corner's own face (Thurmer and Wuthrich 1998, Computing vertex normals
 * from polygonal facets). So a curved surface looks curved, and an edge stays an edge.
 *
 * @param positions nine numbers a triangle, metres, corners counter-clockwise seen from outside
 * @param creaseRadians faces that meet at a greater angle keep an edge; 0 = all flat, pi = all smooth
 * @param places which corners share a place; left out, those within a micrometre do
 * @returns unit vectors, laid out like `positions`; never more than about 84 degrees from their own face. Corners of a
 * triangle without area take the mean of what meets there, or up
 */
export const creasedNormals = (
  positions: Float64Array,
  creaseRadians: number,
  places: Pick<Welded, 'groupOfCorner' | 'groupCount'> = weldCorners(positions, sameMetres),
): Float64Array => {
  const faces = facesOf(positions);
  const { start, corners } = cornersOfPlaces(places);
  const out = new Float64Array(positions.length);
  // a hair more than the angle, so that flat neighbours count at 0
  const least = Math.cos(Math.min(creaseRadians, Math.PI)) - 1e-9;
  for (let g = 0; g < places.groupCount; g++) {
    const [from, to] = [start[g] as number, start[g + 1] as number];
    if (to - from > manyFaces) fillByMean(out, faces, corners, from, to, least);
    else fillByNeighbours(out, faces, corners, from, to, least);
  }
  return out;
};

/** The same triangles, their normals pulled toward their faces where they lean too far, as on a ball pressed flat. */
export const heldToFaces = ({ positions, normals }: Mesh): Mesh => {
  const faces = facesOf(positions).normals;
  const out = new Float64Array(normals.length);
  for (let at = 0; at < normals.length; at += 3) {
    const f = 3 * Math.floor(at / 9);
    const [x, y, z] = [normals[at] as number, normals[at + 1] as number, normals[at + 2] as number];
    setUnit(out, at, x, y, z, faces[f] as number, faces[f + 1] as number, faces[f + 2] as number);
  }
  return { positions, normals: out };
};

/** Gives each corner of a place the mean of the faces there that lie within the crease angle of its own; of all where its own has no area. */
const fillByNeighbours = (
  out: Float64Array,
  { normals, angles }: Faces,
  corners: Int32Array,
  from: number,
  to: number,
  least: number,
): void => {
  for (let k = from; k < to; k++) {
    const corner = corners[k] as number;
    const f = corner - (corner % 3);
    const [x, y, z] = [normals[f] as number, normals[f + 1] as number, normals[f + 2] as number];
    const bound = x === 0 && y === 0 && z === 0 ? -2 : least;
    let [sx, sy, sz] = [0, 0, 0];
    for (let j = from; j < to; j++) {
      const other = corners[j] as number;
      const o = other - (other % 3);
      const [ox, oy, oz] = [normals[o] as number, normals[o + 1] as number, normals[o + 2] as number];
      if (ox * x + oy * y + oz * z < bound) continue;
      const weight = angles[other] as number;
      sx += weight * ox;
      sy += weight * oy;
      sz += weight * oz;
    }
    setUnit(out, corner * 3, sx, sy, sz, x, y, z);
  }
};

/** The same where very many faces meet: each is held against the mean of all. */
const fillByMean = (
  out: Float64Array,
  { normals, angles }: Faces,
  corners: Int32Array,
  from: number,
  to: number,
  least: number,
): void => {
  let [sx, sy, sz] = [0, 0, 0];
  for (let k = from; k < to; k++) {
    const corner = corners[k] as number;
    const f = corner - (corner % 3);
    const weight = angles[corner] as number;
    sx += weight * (normals[f] as number);
    sy += weight * (normals[f + 1] as number);
    sz += weight * (normals[f + 2] as number);
  }
  const length = Math.sqrt(sx * sx + sy * sy + sz * sz);
  for (let k = from; k < to; k++) {
    const corner = corners[k] as number;
    const f = corner - (corner % 3);
    const [x, y, z] = [normals[f] as number, normals[f + 1] as number, normals[f + 2] as number];
    const isWithin = (x === 0 && y === 0 && z === 0) || sx * x + sy * y + sz * z >= least * length;
    if (isWithin) setUnit(out, corner * 3, sx, sy, sz, x, y, z);
    else setUnit(out, corner * 3, x, y, z, x, y, z);
  }
};

/** Writes a direction at length 1, pulled toward its face where it leans from it too far. */
const setUnit = (
  out: Float64Array,
  at: number,
  vx: number,
  vy: number,
  vz: number,
  fx: number,
  fy: number,
  fz: number,
): void => {
  const length = Math.sqrt(vx * vx + vy * vy + vz * vz);
  const hasSum = length > 1e-12;
  let [x, y, z] = hasSum ? [vx / length, vy / length, vz / length] : [fx, fy, fz];
  const cosine = x * fx + y * fy + z * fz;
  const hasFace = fx !== 0 || fy !== 0 || fz !== 0;
  if (hasFace && cosine < leastCosine) {
    const pull = leastCosine - cosine;
    x += pull * fx;
    y += pull * fy;
    z += pull * fz;
  }
  const scale = Math.sqrt(x * x + y * y + z * z);
  out[at] = scale > 0 ? x / scale : 0;
  out[at + 1] = scale > 0 ? y / scale : 1;
  out[at + 2] = scale > 0 ? z / scale : 0;
};

import { type Welded, weldCorners } from './weld.ts';

/** Corners nearer than this are one place, metres. */
const sameMetres = 1e-6;

/** Beyond so many faces at one place, each is compared with their mean only, so that a fan of thousands takes no square of that. */
const manyFaces = 256;

/** A corner normal leans from its own face so far that this cosine is left, at most; farther would turn light off. */
const leastCosine = 0.1;

/** Unit normals of the faces, three numbers a triangle (zero where a triangle has no area), and the angle at each corner. */
const facesOf = (positions: Float64Array): { readonly normals: Float64Array; readonly angles: Float64Array } => {
  const count = positions.length / 9;
  const normals = new Float64Array(count * 3);
  const angles = new Float64Array(count * 3);
  const p = (i: number) => positions[i] as number;
  for (let t = 0; t < count; t++) {
    const i = 9 * t;
    const [ux, uy, uz] = [p(i + 3) - p(i), p(i + 4) - p(i + 1), p(i + 5) - p(i + 2)];
    const [vx, vy, vz] = [p(i + 6) - p(i), p(i + 7) - p(i + 1), p(i + 8) - p(i + 2)];
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
  const { normals: faces, angles } = facesOf(positions);
  const { start, corners } = cornersOfPlaces(places);
  const out = new Float64Array(positions.length);
  // a hair more than the angle, so that flat neighbours count at 0
  const least = Math.cos(Math.min(creaseRadians, Math.PI)) - 1e-9;
  const n = (i: number) => faces[i] as number;
  /** Adds up the faces of corners `from` to `to` that lie within the angle of one direction; of all where there is none. */
  const sum = new Float64Array(3);
  const gather = (from: number, to: number, x: number, y: number, z: number, bound: number) => {
    sum.fill(0);
    for (let k = from; k < to; k++) {
      const corner = corners[k] as number;
      const f = 3 * Math.floor(corner / 3);
      if (n(f) * x + n(f + 1) * y + n(f + 2) * z < bound) continue;
      const weight = angles[corner] as number;
      sum[0] = (sum[0] as number) + weight * n(f);
      sum[1] = (sum[1] as number) + weight * n(f + 1);
      sum[2] = (sum[2] as number) + weight * n(f + 2);
    }
  };
  for (let g = 0; g < places.groupCount; g++) {
    const [from, to] = [start[g] as number, start[g + 1] as number];
    const many = to - from > manyFaces;
    if (many) gather(from, to, 0, 0, 0, -1);
    const [mx, my, mz] = sum as unknown as [number, number, number];
    const meanLength = Math.hypot(mx, my, mz) || 1;
    for (let k = from; k < to; k++) {
      const corner = corners[k] as number;
      const f = 3 * Math.floor(corner / 3);
      const [x, y, z] = [n(f), n(f + 1), n(f + 2)];
      if (!many) gather(from, to, x, y, z, x === 0 && y === 0 && z === 0 ? -2 : least);
      else if ((mx * x + my * y + mz * z) / meanLength >= least) sum.set([mx, my, mz]);
      else sum.set([x, y, z]);
      setUnit(out, corner * 3, sum, x, y, z);
    }
  }
  return out;
};

/** Writes a direction at length 1, pulled toward its face where it leans from it too far. */
const setUnit = (out: Float64Array, at: number, v: Float64Array, fx: number, fy: number, fz: number): void => {
  let [x, y, z] = v as unknown as [number, number, number];
  const length = Math.sqrt(x * x + y * y + z * z);
  if (length > 1e-12) [x, y, z] = [x / length, y / length, z / length];
  else [x, y, z] = [fx, fy, fz];
  const cosine = x * fx + y * fy + z * fz;
  const hasFace = fx !== 0 || fy !== 0 || fz !== 0;
  if (hasFace && cosine < leastCosine) {
    const pull = leastCosine - cosine;
    [x, y, z] = [x + pull * fx, y + pull * fy, z + pull * fz];
  }
  const scale = Math.sqrt(x * x + y * y + z * z);
  if (scale > 0) {
    out[at] = x / scale;
    out[at + 1] = y / scale;
    out[at + 2] = z / scale;
  } else out[at + 1] = 1;
};

/** Vertices with more triangles round them than this stay flat: rounding them would take their square in time. */
const mostRound = 128;

/**
 * Unit normals of triangles, three numbers each (zero where a triangle has no area), and the angles at their corners in
 * radians.
 */
const facesOf = (positions: Float64Array, indices: Uint32Array) => {
  const normals = new Float64Array(indices.length);
  const angles = new Float64Array(indices.length);
  for (let t = 0; t < indices.length; t += 3) {
    const a = (indices[t] as number) * 3;
    const b = (indices[t + 1] as number) * 3;
    const c = (indices[t + 2] as number) * 3;
    const ux = (positions[b] as number) - (positions[a] as number);
    const uy = (positions[b + 1] as number) - (positions[a + 1] as number);
    const uz = (positions[b + 2] as number) - (positions[a + 2] as number);
    const vx = (positions[c] as number) - (positions[a] as number);
    const vy = (positions[c + 1] as number) - (positions[a + 1] as number);
    const vz = (positions[c + 2] as number) - (positions[a + 2] as number);
    const x = uy * vz - uz * vy;
    const y = uz * vx - ux * vz;
    const z = ux * vy - uy * vx;
    const twiceArea = Math.sqrt(x * x + y * y + z * z);
    if (twiceArea === 0) continue;
    normals[t] = x / twiceArea;
    normals[t + 1] = y / twiceArea;
    normals[t + 2] = z / twiceArea;
    const uu = ux * ux + uy * uy + uz * uz;
    const vv = vx * vx + vy * vy + vz * vz;
    const uv = ux * vx + uy * vy + uz * vz;
    angles[t] = Math.atan2(twiceArea, uv);
    angles[t + 1] = Math.atan2(twiceArea, uu - uv);
    angles[t + 2] = Math.atan2(twiceArea, vv - uv);
  }
  return { normals, angles };
};

/** Corners round each vertex: those of vertex v lie from `start[v]` to before `start[v + 1]`. */
const cornersRound = (indices: Uint32Array, vertexCount: number) => {
  const start = new Uint32Array(vertexCount + 1);
  for (const vertex of indices) start[vertex + 1] = (start[vertex + 1] as number) + 1;
  for (let v = 0; v < vertexCount; v++) start[v + 1] = (start[v + 1] as number) + (start[v] as number);
  const next = start.slice();
  const corners = new Uint32Array(indices.length);
  for (let corner = 0; corner < indices.length; corner++) {
    const vertex = indices[corner] as number;
    const slot = next[vertex] as number;
    corners[slot] = corner;
    next[vertex] = slot + 1;
  }
  return { start, corners };
};

/** Sums the normals of the faces of some corners, each by its angle, that lie within a cone about a direction; null = all. */
const sumOfFaces = (
  { normals, angles }: ReturnType<typeof facesOf>,
  corners: Uint32Array,
  about: { readonly face: number; readonly leastDot: number } | null,
  into: Float64Array,
): void => {
  into.fill(0);
  const ox = about ? (normals[about.face] as number) : 0;
  const oy = about ? (normals[about.face + 1] as number) : 0;
  const oz = about ? (normals[about.face + 2] as number) : 0;
  for (let i = 0; i < corners.length; i++) {
    const corner = corners[i] as number;
    const face = corner - (corner % 3);
    const x = normals[face] as number;
    const y = normals[face + 1] as number;
    const z = normals[face + 2] as number;
    if (about && x * ox + y * oy + z * oz < about.leastDot) continue;
    const weight = angles[corner] as number;
    into[0] = (into[0] as number) + x * weight;
    into[1] = (into[1] as number) + y * weight;
    into[2] = (into[2] as number) + z * weight;
  }
};

/** Makes a direction a unit vector; null where it is none. */
const toUnit = (direction: Float64Array): Float64Array | null => {
  const [x, y, z] = direction as unknown as [number, number, number];
  const length = Math.sqrt(x * x + y * y + z * z);
  if (!(length > 0)) return null;
  for (let k = 0; k < 3; k++) direction[k] = (direction[k] as number) / length;
  return direction;
};

/** Whether the faces of all corners lie within a cone about a direction. */
const allWithin = (normals: Float64Array, corners: Uint32Array, about: Float64Array, leastDot: number): boolean => {
  const [ox, oy, oz] = about as unknown as [number, number, number];
  for (let i = 0; i < corners.length; i++) {
    const corner = corners[i] as number;
    const face = corner - (corner % 3);
    const dot =
      (normals[face] as number) * ox + (normals[face + 1] as number) * oy + (normals[face + 2] as number) * oz;
    if (dot < leastDot) return false;
  }
  return true;
};

/**
 * Normals of a surface that is smooth but for its creases. At each corner of a triangle: the mean of the normals of the
 * triangles round that vertex which lie within the crease angle of its own, weighted by their angles there (Thürmer and
 * Wüthrich 1998, so that it does not matter how a face is cut into triangles).
 *
 * @param positions three numbers a vertex
 * @param indices three vertices a triangle, each triangle with an area
 * @param creaseRadians faces that differ by more than this meet in an edge, 0 to pi / 2
 * @returns unit normals, nine numbers a triangle
 */
export const creaseNormals = (positions: Float64Array, indices: Uint32Array, creaseRadians: number): Float64Array => {
  const vertexCount = positions.length / 3;
  const faces = facesOf(positions, indices);
  const { start, corners } = cornersRound(indices, vertexCount);
  const [leastDot, leastHalfDot] = [Math.cos(creaseRadians), Math.cos(creaseRadians / 2)];
  const normals = new Float64Array(indices.length * 3);
  const sum = new Float64Array(3);
  const put = (corner: number, normal: Float64Array | null) => {
    const face = corner - (corner % 3);
    for (let k = 0; k < 3; k++)
      normals[corner * 3 + k] = normal ? (normal[k] as number) : (faces.normals[face + k] as number);
  };
  for (let vertex = 0; vertex < vertexCount; vertex++) {
    const round = corners.subarray(start[vertex] as number, start[vertex + 1] as number);
    if (round.length > mostRound) {
      for (const corner of round) put(corner, null);
      continue;
    }
    sumOfFaces(faces, round, null, sum);
    const mean = toUnit(sum);
    // where all faces lie within half the angle of their mean, each pair lies within the whole: they share one normal
    const isSmooth = mean !== null && allWithin(faces.normals, round, mean, leastHalfDot);
    for (let i = 0; i < round.length; i++) {
      const corner = round[i] as number;
      if (!isSmooth) sumOfFaces(faces, round, { face: corner - (corner % 3), leastDot }, sum);
      put(corner, isSmooth ? mean : toUnit(sum));
    }
  }
  return normals;
};

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
  const { normals: faces, angles } = facesOf(positions, indices);
  const { start, corners } = cornersRound(indices, positions.length / 3);
  const leastDot = Math.cos(creaseRadians);
  const normals = new Float64Array(indices.length * 3);
  for (let own = 0; own < indices.length; own += 3) {
    const ox = faces[own] as number;
    const oy = faces[own + 1] as number;
    const oz = faces[own + 2] as number;
    for (let corner = own; corner < own + 3; corner++) {
      const vertex = indices[corner] as number;
      const from = start[vertex] as number;
      const to = start[vertex + 1] as number;
      let x = 0;
      let y = 0;
      let z = 0;
      for (let slot = from; slot < to && to - from <= mostRound; slot++) {
        const other = corners[slot] as number;
        const face = other - (other % 3);
        const fx = faces[face] as number;
        const fy = faces[face + 1] as number;
        const fz = faces[face + 2] as number;
        if (fx * ox + fy * oy + fz * oz < leastDot) continue;
        const weight = angles[other] as number;
        x += fx * weight;
        y += fy * weight;
        z += fz * weight;
      }
      const length = Math.sqrt(x * x + y * y + z * z);
      const at = corner * 3;
      normals[at] = length > 0 ? x / length : ox;
      normals[at + 1] = length > 0 ? y / length : oy;
      normals[at + 2] = length > 0 ? z / length : oz;
    }
  }
  return normals;
};

/** What the triangles of a mesh are one by one. */
export interface Faces {
  /** Unit normals, three numbers a triangle; zero where a triangle has no area. */
  readonly normals: Float64Array;
  /** The angle at each corner, radians. */
  readonly angles: Float64Array;
}

/**
 * Normals and corner angles of triangles that share places.
 *
 * @param places three numbers a place, metres
 * @param triangles three places a triangle, counter-clockwise seen from outside
 */
export const facesOf = (places: Float64Array, triangles: Uint32Array): Faces => {
  const normals = new Float64Array(triangles.length);
  const angles = new Float64Array(triangles.length);
  for (let t = 0; t < triangles.length; t += 3) {
    const a = 3 * (triangles[t] as number);
    const b = 3 * (triangles[t + 1] as number);
    const c = 3 * (triangles[t + 2] as number);
    const [ax, ay, az] = [places[a] as number, places[a + 1] as number, places[a + 2] as number];
    const [ux, uy, uz] = [(places[b] as number) - ax, (places[b + 1] as number) - ay, (places[b + 2] as number) - az];
    const [vx, vy, vz] = [(places[c] as number) - ax, (places[c + 1] as number) - ay, (places[c + 2] as number) - az];
    const [x, y, z] = [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
    const twiceArea = Math.sqrt(x * x + y * y + z * z);
    if (!(twiceArea > 0)) continue;
    normals[t] = x / twiceArea;
    normals[t + 1] = y / twiceArea;
    normals[t + 2] = z / twiceArea;
    // the angle at each corner from the sine (twice the area) and the cosine of the two edges that meet there
    const uu = ux * ux + uy * uy + uz * uz;
    const vv = vx * vx + vy * vy + vz * vz;
    const uv = ux * vx + uy * vy + uz * vz;
    angles[t] = Math.atan2(twiceArea, uv);
    angles[t + 1] = Math.atan2(twiceArea, uu - uv);
    angles[t + 2] = Math.atan2(twiceArea, vv - uv);
  }
  return { normals, angles };
};

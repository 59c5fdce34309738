/** A scan of a hill as a binary PLY: a grid of so many squares a side, two triangles each, 6 m wide. */
export const hillScan = (squares: number): Buffer => {
  const corners = squares + 1;
  const faces = 2 * squares * squares;
  const head = Buffer.from(
    `ply\nformat binary_little_endian 1.0\nelement vertex ${corners * corners}\nproperty float x\nproperty float y\nproperty float z\nelement face ${faces}\nproperty list uchar int vertex_indices\nend_header\n`,
  );
  const body = Buffer.alloc(corners * corners * 12 + faces * 13);
  let at = 0;
  for (let n = 0; n < corners; n++)
    for (let e = 0; e < corners; e++) {
      const [x, z] = [(6 * e) / squares - 3, (6 * n) / squares - 3];
      const height = Math.exp(-(x * x + z * z) / 3) + 0.05 * Math.sin(9 * x) * Math.cos(7 * z);
      for (const value of [x, height, z]) at = body.writeFloatLE(value, at);
    }
  for (let n = 0; n < squares; n++)
    for (let e = 0; e < squares; e++) {
      const a = n * corners + e;
      for (const face of [
        [a, a + corners, a + 1],
        [a + 1, a + corners, a + corners + 1],
      ]) {
        at = body.writeUInt8(3, at);
        for (const corner of face) at = body.writeInt32LE(corner, at);
      }
    }
  return Buffer.concat([head, body]);
};

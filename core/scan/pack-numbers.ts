/**
 * Numbers as bytes that deflate well: rows of `width` numbers are split into columns, and each column holds what a row
 * differs by from the row before, its sign in the lowest bit, high bytes before low ones.
 */
export const packColumns = (values: Uint16Array | Uint8Array, width: number): Uint8Array => {
  const rows = values.length / width;
  const bytesEach = values.BYTES_PER_ELEMENT;
  const [mask, unused] = bytesEach === 2 ? [0xffff, 16] : [0xff, 24];
  const packed = new Uint8Array(values.length * bytesEach);
  for (let column = 0; column < width; column++) {
    const high = column * bytesEach * rows;
    for (let row = 0, before = 0; row < rows; row++) {
      const value = values[row * width + column] as number;
      const difference = ((value - before) << unused) >> unused;
      before = value;
      const folded = ((difference << 1) ^ (difference >> 31)) & mask;
      if (bytesEach === 2) packed[high + row] = folded >> 8;
      packed[high + (bytesEach - 1) * rows + row] = folded & 255;
    }
  }
  return packed;
};

/** Undoes `packColumns` into an array of the right length. */
export const unpackColumns = (packed: Uint8Array, width: number, values: Uint16Array | Uint8Array): void => {
  const rows = values.length / width;
  const bytesEach = values.BYTES_PER_ELEMENT;
  for (let column = 0; column < width; column++) {
    const high = column * bytesEach * rows;
    for (let row = 0, before = 0; row < rows; row++) {
      const low = packed[high + (bytesEach - 1) * rows + row] as number;
      const folded = bytesEach === 2 ? ((packed[high + row] as number) << 8) | low : low;
      // the array cuts it to its own number of bits
      before += (folded >>> 1) ^ -(folded & 1);
      values[row * width + column] = before;
    }
  }
};

/** Most bytes that one index below this count takes. */
export const bytesOfIndex = (count: number): number => (count <= 0x80 ? 1 : count <= 0x4000 ? 2 : 3);

/**
 * Vertices of triangles as bytes, seven bits a byte. Each is written as how far it lies below the next vertex that
 * has not been named yet: 0 = that one. Vertices must be numbered in the order of their first naming, below 2^21.
 */
export const packIndices = (indices: Uint32Array): Uint8Array => {
  const packed = new Uint8Array(indices.length * 3);
  let [at, fresh] = [0, 0];
  for (const index of indices) {
    let below = fresh - index;
    if (below === 0) fresh++;
    while (below > 127) {
      packed[at++] = (below & 127) | 128;
      below >>>= 7;
    }
    packed[at++] = below;
  }
  return packed.slice(0, at);
};

/** Undoes `packIndices`; null where the bytes are not those of so many indices below `vertexCount`, all of them named. */
export const unpackIndices = (packed: Uint8Array, count: number, vertexCount: number): Uint32Array | null => {
  const indices = new Uint32Array(count);
  let [at, fresh] = [0, 0];
  for (let i = 0; i < count; i++) {
    let [below, shift, byte] = [0, 0, 128];
    while (byte > 127) {
      if (at >= packed.length || shift > 14) return null;
      byte = packed[at++] as number;
      below |= (byte & 127) << shift;
      shift += 7;
    }
    if (below > fresh || (below === 0 && fresh === vertexCount)) return null;
    indices[i] = fresh - below;
    if (below === 0) fresh++;
  }
  return at === packed.length && fresh === vertexCount ? indices : null;
};

/** Corners sorted into groups that share a place. */
export interface Welded {
  /** Group of each corner, counted from 0 in order of first appearance. */
  readonly groupOfCorner: Int32Array;
  readonly groupCount: number;
  /** First corner of each group. */
  readonly firstCorner: Int32Array;
}

/** A hash whose low bits hang on all bits of the three: cells of a regular grid may all be multiples of one power of two. */
const mixed = (x: number, y: number, z: number): number => {
  let hash = Math.imul(x, 0x9e3779b1);
  hash = Math.imul(hash ^ (hash >>> 15) ^ y, 0x85ebca6b);
  hash = Math.imul(hash ^ (hash >>> 15) ^ z, 0xc2b2ae35);
  return hash ^ (hash >>> 13);
};

/**
 * Finds corners that fall on the same place of a grid, by a hash table with open addressing. Places less than a cell
 * apart may still fall either side of a cell's edge; meshes here repeat corners exactly, so that does not matter.
 *
 * @param positions three numbers a corner, metres, within 2^31 cells of the origin
 */
export const weldCorners = (positions: Float64Array, cellMetres: number): Welded => {
  const count = positions.length / 3;
  const size = 2 ** Math.ceil(Math.log2(Math.max(2 * count, 2)));
  const table = new Int32Array(size).fill(-1);
  const cells = new Int32Array(positions.length);
  for (let i = 0; i < cells.length; i++) cells[i] = Math.round((positions[i] as number) / cellMetres);
  const groupOfCorner = new Int32Array(count);
  const firstCorner = new Int32Array(count);
  let groupCount = 0;
  for (let corner = 0; corner < count; corner++) {
    const [x, y, z] = [cells[corner * 3] as number, cells[corner * 3 + 1] as number, cells[corner * 3 + 2] as number];
    let slot = mixed(x, y, z) & (size - 1);
    for (;;) {
      const group = table[slot] as number;
      const first = group < 0 ? -1 : (firstCorner[group] as number) * 3;
      if (group < 0) {
        table[slot] = groupCount;
        firstCorner[groupCount] = corner;
        groupOfCorner[corner] = groupCount++;
        break;
      }
      if (cells[first] === x && cells[first + 1] === y && cells[first + 2] === z) {
        groupOfCorner[corner] = group;
        break;
      }
      slot = (slot + 1) & (size - 1);
    }
  }
  return { groupOfCorner, groupCount, firstCorner: firstCorner.slice(0, groupCount) };
};

import { deflateSync } from 'fflate';
import { weldCorners } from '../geometry/weld.ts';
import { decodeBase64, encodeBase64 } from './base64.ts';
import { inflateBounded } from './inflate-bounded.ts';
import { bytesOfIndex, packColumns, packIndices, unpackColumns, unpackIndices } from './pack-numbers.ts';
import { ScanDataError } from './scan-data-error.ts';
import { walkTriangles } from './walk-triangles.ts';

/** Triangles that share corners, standing on the ground with the middle of their box over the origin. */
export interface ScanTriangles {
  /** Corners in world axes (x east, y up, z south), metres, three numbers each. */
  readonly positions: Float64Array;
  /** Three corners a triangle, counter-clockwise seen from outside. */
  readonly indices: Uint32Array;
  /** sRGB, three bytes a triangle; null = no colours. */
  readonly colours: Uint8Array | null;
}

/** What the document keeps of a scan's triangles. */
export interface PackedScan {
  readonly triangleCount: number;
  readonly vertexCount: number;
  /** Size of the box: [east to west, north to south, height]. */
  readonly sizeMetres: readonly [number, number, number];
  readonly hasColour: boolean;
  /** Base64 of the deflated columns of corners, triangles and colours; see `pack-numbers.ts`. */
  readonly data: string;
}

/** Most steps across the box; corners lie on them. */
const steps = 65535;

/** World axes of the box: where it starts and how far it goes. */
const boxOf = ([east, north, up]: PackedScan['sizeMetres']) => ({
  low: [-east / 2, 0, -north / 2] as const,
  size: [east, up, north] as const,
});

/** Size of the box round corners in world axes, in the document's order: [east to west, north to south, height]. */
export const scanSizeMetres = (positions: Float64Array): [number, number, number] => {
  const low = [Infinity, Infinity, Infinity];
  const high = [-Infinity, -Infinity, -Infinity];
  for (let i = 0; i < positions.length; i++) {
    const value = positions[i] as number;
    const axis = i % 3;
    if (value < (low[axis] as number)) low[axis] = value;
    if (value > (high[axis] as number)) high[axis] = value;
  }
  const [x, y, z] = low.map((value, axis) => (high[axis] as number) - value) as [number, number, number];
  return [x, z, y];
};

/** Whether corners on the steps lie on one line; exact, as whole numbers under 2^34. */
const isLine = (places: Uint16Array, a: number, b: number, c: number): boolean => {
  const ux = (places[b * 3] as number) - (places[a * 3] as number);
  const uy = (places[b * 3 + 1] as number) - (places[a * 3 + 1] as number);
  const uz = (places[b * 3 + 2] as number) - (places[a * 3 + 2] as number);
  const vx = (places[c * 3] as number) - (places[a * 3] as number);
  const vy = (places[c * 3 + 1] as number) - (places[a * 3 + 1] as number);
  const vz = (places[c * 3 + 2] as number) - (places[a * 3 + 2] as number);
  return uy * vz === uz * vy && uz * vx === ux * vz && ux * vy === uy * vx;
};

/** Numbers for vertices in the order in which triangles name them, and who they were. */
const numberByUse = (named: Uint32Array, count: number): { indices: Uint32Array; vertices: Uint32Array } => {
  const numberOf = new Int32Array(count).fill(-1);
  const vertices = new Uint32Array(count);
  let used = 0;
  const indices = named.map((vertex) => {
    if ((numberOf[vertex] as number) < 0) {
      vertices[used] = vertex;
      numberOf[vertex] = used++;
    }
    return numberOf[vertex] as number;
  });
  return { indices, vertices: vertices.slice(0, used) };
};

/** Rows of three numbers, in another order. */
const gather = <T extends Uint8Array | Uint16Array | Uint32Array>(triples: T, rows: Uint32Array, into: T): T => {
  for (let i = 0; i < rows.length; i++) {
    const row = (rows[i] as number) * 3;
    for (let k = 0; k < 3; k++) into[i * 3 + k] = triples[row + k] as number;
  }
  return into;
};

/**
 * Packs a scan for the document. Corners are put on 65,536 steps across the box, so they move by half a step at most;
 * corners that meet are made one and triangles without area left out.
 *
 * @throws ScanDataError when no triangle is left
 */
export const encodeScan = ({ positions, indices, colours }: ScanTriangles): PackedScan => {
  const sizeMetres = scanSizeMetres(positions);
  const { low, size } = boxOf(sizeMetres);
  const onSteps = new Uint16Array(positions.length);
  for (let i = 0; i < positions.length; i++) {
    const extent = size[i % 3] as number;
    const share = extent > 0 ? ((positions[i] as number) - (low[i % 3] as number)) / extent : 0;
    onSteps[i] = Math.min(Math.max(Math.round(share * steps), 0), steps);
  }
  const { groupOfCorner, groupCount, firstCorner } = weldCorners(Float64Array.from(onSteps), 1);
  const places = gather(onSteps, Uint32Array.from(firstCorner), new Uint16Array(groupCount * 3));
  const welded = new Uint32Array(indices.length);
  for (let i = 0; i < indices.length; i++) welded[i] = groupOfCorner[indices[i] as number] as number;
  const kept = new Uint32Array(indices.length / 3);
  let count = 0;
  for (let t = 0; t < kept.length; t++)
    if (!isLine(places, welded[t * 3] as number, welded[t * 3 + 1] as number, welded[t * 3 + 2] as number))
      kept[count++] = t;
  if (count === 0) throw new ScanDataError('must hold a triangle with an area');
  const corners = gather(welded, kept.subarray(0, count), new Uint32Array(count * 3));
  const order = walkTriangles(corners);
  const byUse = numberByUse(
    order.map((corner) => corners[corner] as number),
    groupCount,
  );
  const vertexCount = byUse.vertices.length;
  const sections = [
    packColumns(gather(places, byUse.vertices, new Uint16Array(vertexCount * 3)), 3),
    packIndices(byUse.indices),
  ];
  if (colours) {
    const triangles = new Uint32Array(count);
    for (let t = 0; t < count; t++) triangles[t] = kept[Math.floor((order[t * 3] as number) / 3)] as number;
    sections.unshift(packColumns(gather(colours, triangles, new Uint8Array(triangles.length * 3)), 3));
  }
  const bytes = new Uint8Array(sections.reduce((sum, section) => sum + section.length, 0));
  let at = 0;
  for (const section of sections) {
    bytes.set(section, at);
    at += section.length;
  }
  return {
    triangleCount: count,
    vertexCount,
    sizeMetres,
    hasColour: colours !== null,
    data: encodeBase64(deflateSync(bytes, { level: 9 })),
  };
};

/** What the data holds, in numbers of the packed form. */
const unpack = ({ triangleCount, vertexCount, sizeMetres, hasColour, data }: PackedScan) => {
  const packed = decodeBase64(data);
  if (!packed) throw new ScanDataError('must be a text in base64');
  const colourBytes = hasColour ? triangleCount * 3 : 0;
  const cornerBytes = vertexCount * 6;
  const most = colourBytes + cornerBytes + triangleCount * 3 * bytesOfIndex(vertexCount);
  const bytes = inflateBounded(packed, most);
  if (bytes.length < colourBytes + cornerBytes)
    throw new ScanDataError('must hold as many corners and triangles as it says; it holds fewer');
  const indices = unpackIndices(bytes.subarray(colourBytes + cornerBytes), triangleCount * 3, vertexCount);
  if (!indices)
    throw new ScanDataError(`must hold ${triangleCount} triangles over ${vertexCount} corners; it holds others`);
  const places = new Uint16Array(vertexCount * 3);
  unpackColumns(bytes.subarray(colourBytes), 3, places);
  // where the box is flat all steps are one place
  const extents = boxOf(sizeMetres).size;
  if (extents.includes(0)) for (let i = 0; i < places.length; i++) if (extents[i % 3] === 0) places[i] = 0;
  for (let c = 0; c < indices.length; c += 3)
    if (isLine(places, indices[c] as number, indices[c + 1] as number, indices[c + 2] as number))
      throw new ScanDataError('must hold triangles with an area only');
  return { bytes, colourBytes, places, indices };
};

/**
 * Unpacks a scan: corners in world axes (x east, y up, z south), metres, within half a step (a 131,070th of the box)
 * of where they were packed; each triangle has an area on the steps. Takes memory in proportion to the counts that the scan
 * names, whatever the data holds.
 *
 * @throws ScanDataError saying what the data must be
 */
export const decodeScan = (scan: PackedScan): ScanTriangles => {
  const { bytes, colourBytes, places, indices } = unpack(scan);
  const { low, size } = boxOf(scan.sizeMetres);
  const positions = new Float64Array(places.length);
  for (let i = 0; i < places.length; i++)
    positions[i] = (low[i % 3] as number) + ((places[i] as number) / steps) * (size[i % 3] as number);
  const colours = scan.hasColour ? new Uint8Array(colourBytes) : null;
  if (colours) unpackColumns(bytes, 3, colours);
  return { positions, indices, colours };
};

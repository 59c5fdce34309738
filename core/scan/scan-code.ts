import { deflateSync } from 'fflate';
import { weldCorners } from '../geometry/weld.ts';
import { decodeBase64, encodeBase64 } from './base64.ts';
import { inflateBounded } from './inflate-bounded.ts';
import { bytesOfIndex, packColumns, packIndices, unpackColumns, unpackIndices } from './pack-numbers.ts';
import { ScanDataError } from './scan-data-error.ts';
import { isLine, joinFlatSteps, metresFromSteps, scanSizeMetres, stepsFromMetres } from './scan-steps.ts';
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
  const onSteps = stepsFromMetres(positions, sizeMetres);
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
  joinFlatSteps(places, sizeMetres);
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
  const colours = scan.hasColour ? new Uint8Array(colourBytes) : null;
  if (colours) unpackColumns(bytes, 3, colours);
  return { positions: metresFromSteps(places, scan.sizeMetres), indices, colours };
};

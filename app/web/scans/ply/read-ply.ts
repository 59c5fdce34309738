import { linearFromByte } from '../../../../core/scan/mesh-colours.ts';
import { coloursOfTriangles } from '../mesh/corner-colours.ts';
import { FaceList } from '../mesh/face-list.ts';
import { ScanError } from '../scan-error.ts';
import type { RawMesh } from '../scanned-mesh.ts';
import { type PlyNumbers, plyNumbers } from './ply-body.ts';
import { type PlyElement, type PlyProperty, readPlyHead } from './ply-head.ts';

const broken = (what: string) => new ScanError(`The file is broken: ${what}`);

/** What a property of a corner or face means to us: a place's axis, a colour's channel, or nothing. */
const axisOf = ({ name, listOf }: PlyProperty): number => (listOf ? -1 : ['x', 'y', 'z'].indexOf(name));
const channelOf = ({ name, listOf }: PlyProperty): number =>
  listOf
    ? -1
    : ['red', 'green', 'blue'].indexOf(name.replace(/^diffuse_/, '').replace(/^(r|g|b)$/, (c) => full[c] ?? c));
const full: Readonly<Record<string, string>> = { r: 'red', g: 'green', b: 'blue' };

/** Highest value of a colour's channel: 1 for fractions, else what the type holds. */
const fullOf = ({ type }: PlyProperty): number => (type.startsWith('float') ? 1 : type === 'uint16' ? 65535 : 255);

const hasColour = ({ properties }: PlyElement): boolean =>
  [0, 1, 2].every((channel) => properties.some((property) => channelOf(property) === channel));

/** sRGB value as a share of its highest, as a byte. */
const byteOf = (value: number, highest: number): number =>
  Math.round(Math.min(Math.max((value / highest) * 255, 0), 255)) || 0;

const skipProperty = (numbers: PlyNumbers, { type, listOf }: PlyProperty): void =>
  numbers.skip(type, listOf ? countOf(numbers.next(listOf)) : 1);

const countOf = (value: number): number => {
  if (!(Number.isInteger(value) && value >= 0)) throw broken('a list has no number of entries');
  return value;
};

const readCorners = (numbers: PlyNumbers, element: PlyElement) => {
  const positions = new Float64Array(element.count * 3);
  const colours = hasColour(element) ? new Uint8Array(element.count * 3) : null;
  for (const name of ['x', 'y', 'z'])
    if (!element.properties.some((property) => property.name === name && !property.listOf))
      throw broken(`its corners have no ${name}`);
  const plan = element.properties.map((property) => ({
    property,
    axis: axisOf(property),
    channel: colours ? channelOf(property) : -1,
    highest: fullOf(property),
  }));
  for (let row = 0; row < element.count; row++)
    for (const { property, axis, channel, highest } of plan)
      if (axis >= 0) positions[row * 3 + axis] = numbers.next(property.type);
      else if (channel >= 0 && colours) colours[row * 3 + channel] = byteOf(numbers.next(property.type), highest);
      else skipProperty(numbers, property);
  return { positions, colours };
};

/** Longest list of corners that is read; more can't be a face of a scan. */
const longestList = 1_000_000;

const readList = (numbers: PlyNumbers, { type, listOf }: PlyProperty, into: number[]): number => {
  const count = countOf(numbers.next(listOf ?? type));
  if (count > longestList) throw broken('a face has more than a million corners');
  for (let i = 0; i < count; i++) {
    const corner = numbers.next(type);
    into[i] = Number.isInteger(corner) && corner >= 0 ? corner : 0xffffffff;
  }
  return count;
};

const isCornerList = ({ name, listOf }: PlyProperty): boolean => listOf !== null && /^vertex_ind(ex|ices)$/.test(name);

const readFaces = (numbers: PlyNumbers, element: PlyElement) => {
  const faces = new FaceList();
  const colours = hasColour(element) ? new Uint8Array(element.count * 3) : null;
  const list: number[] = [];
  let kept = 0;
  for (let row = 0; row < element.count; row++) {
    let count = 0;
    for (const property of element.properties) {
      const channel = colours ? channelOf(property) : -1;
      if (isCornerList(property)) count = readList(numbers, property, list);
      else if (channel >= 0 && colours)
        colours[kept * 3 + channel] = byteOf(numbers.next(property.type), fullOf(property));
      else skipProperty(numbers, property);
    }
    faces.add(list, count);
    kept = faces.faceCount;
  }
  return { faces, colours };
};

/** Strips of triangles: each entry makes one with the two before it, turning to and fro; -1 begins anew. */
const readStrips = (numbers: PlyNumbers, element: PlyElement, faces: FaceList): void => {
  const list: number[] = [];
  for (let row = 0; row < element.count; row++)
    for (const property of element.properties) {
      if (!isCornerList(property)) {
        skipProperty(numbers, property);
        continue;
      }
      const count = readList(numbers, property, list);
      for (let i = 0, length = 0; i < count; i++) {
        length = list[i] === 0xffffffff ? 0 : length + 1;
        if (length < 3) continue;
        const [a, b, c] = [list[i - 2], list[i - 1], list[i]] as [number, number, number];
        faces.add(length % 2 ? [a, b, c] : [b, a, c], 3);
      }
    }
};

/** Each triangle in the colour of its face. */
const spread = (colours: Uint8Array, faces: Uint32Array): Uint8Array => {
  const each = new Uint8Array(faces.length * 3);
  for (let t = 0; t < faces.length; t++)
    for (let k = 0; k < 3; k++) each[t * 3 + k] = colours[(faces[t] as number) * 3 + k] as number;
  return each;
};

/**
 * Reads a PLY file (text, or binary of either byte order): corners, faces of any number of corners, strips, and colours
 * of corners or faces.
 *
 * @param leftOut takes sentences about what was not read
 * @throws ScanError when it is broken, or a cloud of points
 */
export const readPly = (bytes: Uint8Array, leftOut: string[]): RawMesh => {
  const head = readPlyHead(bytes);
  const numbers = plyNumbers(bytes, head);
  let corners: ReturnType<typeof readCorners> | null = null;
  let read: ReturnType<typeof readFaces> | null = null;
  for (const element of head.elements) {
    if (element.name === 'vertex' && !corners) corners = readCorners(numbers, element);
    else if (element.name === 'face' && !read) read = readFaces(numbers, element);
    else if (element.name === 'tristrips') {
      read ??= { faces: new FaceList(), colours: null };
      readStrips(numbers, element, read.faces);
    } else
      for (let row = 0; row < element.count; row++)
        for (const property of element.properties) skipProperty(numbers, property);
  }
  if (!corners || corners.positions.length === 0) throw new ScanError('It holds no corners and no faces');
  if (!read || read.faces.faceCount === 0)
    throw new ScanError('It is a cloud of points without faces; export it as a mesh');
  const { indices, faces } = read.faces.triangles(corners.positions, leftOut);
  if (read.colours) return { positions: corners.positions, indices, colours: spread(read.colours, faces) };
  const light = corners.colours && Float32Array.from(corners.colours, (byte) => linearFromByte[byte] as number);
  return { positions: corners.positions, indices, colours: light && coloursOfTriangles(light, indices) };
};

import { linearFromByte } from '../../../../core/scan/mesh-colours.ts';
import { counted, inWords, maxReadCorners } from '../limits.ts';
import { coloursOfTriangles } from '../mesh/corner-colours.ts';
import { FaceList } from '../mesh/face-list.ts';
import { GrowingNumbers } from '../mesh/growing-numbers.ts';
import { ScanError } from '../scan-error.ts';
import type { RawMesh } from '../scanned-mesh.ts';
import { ByteText } from './byte-text.ts';

/** What a reader gathers on its way. */
class ObjContent {
  readonly positions = new GrowingNumbers(Float64Array);
  /** Red, green, blue a corner as written, three noughts where it has none. */
  readonly colours = new GrowingNumbers(Float32Array);
  readonly faces = new FaceList();
  readonly corners: number[] = [];
  hasColour = false;
  materialFile = '';
  pointsAndLines = 0;
  curves = 0;
}

const readCorner = (text: ByteText, content: ObjContent): void => {
  const numbers: number[] = [];
  while (numbers.length < 7 && text.toNextWord()) numbers.push(text.number());
  for (let k = 0; k < 3; k++) content.positions.push(numbers[k] ?? Number.NaN);
  // x y z, x y z w, x y z r g b or x y z w r g b
  const colour = numbers.length >= 6 ? numbers.slice(-3) : [0, 0, 0];
  if (numbers.length >= 6) content.hasColour = true;
  for (const value of colour) content.colours.push(value);
  if (content.positions.length > 3 * maxReadCorners)
    throw new ScanError(`It has more than ${inWords(maxReadCorners)} corners, which is the most that is read`);
};

/** Longest face that is read; more can't be a face of a scan. */
const mostFaceCorners = 1_000_000;

const readFace = (text: ByteText, content: ObjContent): void => {
  const known = content.positions.length / 3;
  let count = 0;
  while (text.toNextWord()) {
    if (count === mostFaceCorners) throw new ScanError('The file is broken: a face has more than a million corners');
    const written = text.whole();
    // counted from 1, or back from the last one so far; a number that can't be read names no corner
    const corner = written > 0 ? written - 1 : written < 0 ? known + written : -1;
    content.corners[count++] = corner >= 0 && corner < 0xffffffff ? corner : 0xffffffff;
  }
  content.faces.add(content.corners, count);
};

const readLine = (text: ByteText, content: ObjContent): void => {
  if (text.isLetter('v')) readCorner(text, content);
  else if (text.isLetter('f')) readFace(text, content);
  else if (text.isLetter('p') || text.isLetter('l')) content.pointsAndLines++;
  else if (['#', 'vn', 'vt'].every((word) => !text.startsWith(word))) {
    const word = text.word();
    if (word === 'mtllib' && !content.materialFile) content.materialFile = text.rest();
    if (word === 'curv' || word === 'curv2' || word === 'surf') content.curves++;
  }
};

/** Light of corners from the numbers in the file: shares of 1 as sRGB, or of 255 where any is larger than 1. */
const lightOf = (colours: Float32Array): Float32Array => {
  const full = colours.some((value) => value > 1) ? 255 : 1;
  const light = new Float32Array(colours.length);
  for (let i = 0; i < light.length; i++) {
    const byte = Math.round(Math.min(Math.max(((colours[i] as number) / full) * 255, 0), 255));
    light[i] = linearFromByte[byte] ?? 0;
  }
  return light;
};

/**
 * Reads a Wavefront OBJ file: corners, their colours where they follow the places, and faces of any number of corners.
 * Materials lie in another file and are not read.
 *
 * @param leftOut takes sentences about what was not read
 * @throws ScanError when it holds no faces or too many
 */
export const readObj = (bytes: Uint8Array, leftOut: string[]): RawMesh => {
  const text = new ByteText(bytes, bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf ? 3 : 0);
  const content = new ObjContent();
  while (!text.isAtEnd) {
    if (text.toNextWord()) readLine(text, content);
    text.toNextLine();
  }
  const positions = content.positions.values();
  if (positions.length === 0) throw new ScanError('It holds no corners and no faces');
  if (content.faces.faceCount === 0)
    throw new ScanError('It holds points or lines only, no faces; export it as a mesh');
  const { indices } = content.faces.triangles(positions, leftOut);
  if (content.materialFile)
    leftOut.push(`Its materials lie in another file (${content.materialFile}), which was not read`);
  if (content.pointsAndLines > 0) leftOut.push(`${counted(content.pointsAndLines, 'point or line')} left out`);
  if (content.curves > 0) leftOut.push(`${counted(content.curves, 'curve')} left out`);
  const light = content.hasColour ? lightOf(content.colours.values()) : null;
  return { positions, indices, colours: light && coloursOfTriangles(light, indices) };
};

import { inWords, maxReadCorners, maxReadTriangles } from '../limits.ts';
import { ScanError } from '../scan-error.ts';

/** Numbers as PLY files name them. */
export type PlyType = 'int8' | 'uint8' | 'int16' | 'uint16' | 'int32' | 'uint32' | 'float32' | 'float64';

const types: Readonly<Record<string, PlyType>> = {
  char: 'int8',
  uchar: 'uint8',
  short: 'int16',
  ushort: 'uint16',
  int: 'int32',
  uint: 'uint32',
  float: 'float32',
  double: 'float64',
  int8: 'int8',
  uint8: 'uint8',
  int16: 'int16',
  uint16: 'uint16',
  int32: 'int32',
  uint32: 'uint32',
  float32: 'float32',
  float64: 'float64',
};

export const bytesOfType: Readonly<Record<PlyType, number>> = {
  int8: 1,
  uint8: 1,
  int16: 2,
  uint16: 2,
  int32: 4,
  uint32: 4,
  float32: 4,
  float64: 8,
};

export interface PlyProperty {
  readonly name: string;
  readonly type: PlyType;
  /** Type of the number of entries; null = one number. */
  readonly listOf: PlyType | null;
}

export interface PlyElement {
  readonly name: string;
  readonly count: number;
  readonly properties: readonly PlyProperty[];
}

export interface PlyHead {
  readonly format: 'ascii' | 'binary_little_endian' | 'binary_big_endian';
  readonly elements: readonly PlyElement[];
  /** Where the body begins, bytes. */
  readonly bodyStart: number;
}

/** Heads are short; what has no end within this is none. */
const longestHead = 100_000;
const broken = (what: string) => new ScanError(`Its PLY header is broken: ${what}`);

/** Lines of the head and where the body begins. Lines end with \n, \r\n or \r. */
const linesOf = (bytes: Uint8Array): { lines: string[]; bodyStart: number } => {
  const text = new TextDecoder('latin1').decode(bytes.subarray(0, longestHead));
  const end = /(^|[\r\n])end_header[ \t]*(\r\n|\n|\r)/.exec(text);
  if (!end) throw broken('it has no end');
  return { lines: text.slice(0, end.index).split(/\r\n|\n|\r/), bodyStart: end.index + end[0].length };
};

const typeOf = (word: string | undefined): PlyType => {
  const type = types[word ?? ''];
  if (!type) throw broken(`"${(word ?? '').slice(0, 20)}" is no type of numbers`);
  return type;
};

const propertyOf = (words: readonly string[]): PlyProperty =>
  words[1] === 'list'
    ? { name: words[4] ?? '', type: typeOf(words[3]), listOf: typeOf(words[2]) }
    : { name: words[2] ?? '', type: typeOf(words[1]), listOf: null };

/** Fewest bytes that one row of an element takes. */
export const leastRowBytes = ({ properties }: PlyElement, isText: boolean): number =>
  properties.reduce((sum, { type, listOf }) => sum + (isText ? 2 : bytesOfType[listOf ?? type]), 0);

/** Refuses counts that the rest of the file can't hold, before anything is made for them. */
const checkCounts = ({ format, elements, bodyStart }: PlyHead, length: number): void => {
  let needed = 0;
  for (const element of elements) {
    const { name, count } = element;
    if (!Number.isSafeInteger(count) || count < 0) throw broken(`the number of ${name.slice(0, 20)} is none`);
    const [most, things] = name === 'vertex' ? [maxReadCorners, 'corners'] : [maxReadTriangles, 'faces'];
    if ((name === 'vertex' || name === 'face') && count > most)
      throw new ScanError(`It has ${inWords(count)} ${things}; at most ${inWords(most)} are read`);
    if (count > 0 && element.properties.length === 0) throw broken(`${name.slice(0, 20)} has no properties`);
    needed += count * leastRowBytes(element, format === 'ascii');
  }
  // the last number of a text needs no blank behind it
  if (needed > length - bodyStart + 1) throw new ScanError('The file breaks off: it is shorter than its header says');
};

/**
 * Reads the head of a PLY file and checks that the file can hold what it promises.
 *
 * @throws ScanError when it is broken or promises too much
 */
export const readPlyHead = (bytes: Uint8Array): PlyHead => {
  const { lines, bodyStart } = linesOf(bytes);
  let format: string | undefined;
  const elements: { name: string; count: number; properties: PlyProperty[] }[] = [];
  for (const line of lines.slice(1)) {
    const words = line.trim().split(/\s+/);
    if (words[0] === 'format') format = words[1];
    if (words[0] === 'element')
      elements.push({
        name: words[1] ?? '',
        count: /^\d+$/.test(words[2] ?? '') ? Number(words[2]) : -1,
        properties: [],
      });
    if (words[0] === 'property') {
      if (elements.length === 0) throw broken('a property belongs to nothing');
      elements.at(-1)?.properties.push(propertyOf(words));
    }
  }
  if (format !== 'ascii' && format !== 'binary_little_endian' && format !== 'binary_big_endian')
    throw broken('it names no format that is read');
  const head: PlyHead = { format, elements, bodyStart };
  checkCounts(head, bytes.length);
  return head;
};

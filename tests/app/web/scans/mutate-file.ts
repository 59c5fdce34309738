import type { seededRandom } from '../../../../core/geometry/random.ts';

type Random = ReturnType<typeof seededRandom>;

const flip = (bytes: Uint8Array, random: Random, from = 0, to = bytes.length): void => {
  const at = from + Math.floor(random() * (to - from));
  bytes[at] = (bytes[at] ?? 0) ^ (1 << Math.floor(random() * 8));
};

/** Numbers that lengths, counts and offsets may be changed to. */
const wild = [0, 1, 2, 3, 255, 65535, 65536, 1e6, 2147483647, 2147483648, 4294967295, -1, 0.5, 1e300];

/** One number in a text becomes a wild one, a digit more or a letter. */
const changeNumber = (text: string, random: Random): string => {
  const found = [...text.matchAll(/-?\d+(\.\d+)?/g)];
  const one = found[Math.floor(random() * found.length)];
  if (!one) return text;
  const written = random() < 0.8 ? `${wild[Math.floor(random() * wild.length)]}` : random() < 0.5 ? `${one[0]}7` : 'x';
  return text.slice(0, one.index) + written + text.slice(one.index + one[0].length);
};

/** One line or member of a text is dropped or doubled. */
const changePiece = (text: string, random: Random, mark: string): string => {
  const pieces = text.split(mark);
  const at = Math.floor(random() * pieces.length);
  pieces.splice(at, 1, ...(random() < 0.5 ? [] : [pieces[at] ?? '', pieces[at] ?? '']));
  return pieces.join(mark);
};

/** A GLB with another JSON chunk of its own true length. */
const withJson = (bytes: Uint8Array, change: (text: string) => string): Uint8Array => {
  const length = new DataView(bytes.buffer, bytes.byteOffset).getUint32(12, true);
  const json = new TextEncoder().encode(change(new TextDecoder().decode(bytes.subarray(20, 20 + length))));
  const padded = new Uint8Array(Math.ceil(json.length / 4) * 4).fill(32);
  padded.set(json);
  const out = new Uint8Array(20 + padded.length + bytes.length - 20 - length);
  out.set(bytes.subarray(0, 20));
  out.set(padded, 20);
  out.set(bytes.subarray(20 + length), 20 + padded.length);
  const view = new DataView(out.buffer);
  view.setUint32(8, out.length, true);
  view.setUint32(12, padded.length, true);
  return out;
};

/** Breaks a file in one of several ways: bits, cuts, lengths, the head's or JSON's numbers and members. */
export const mutateFile = (source: Uint8Array, random: Random): Uint8Array => {
  const bytes = source.slice();
  const isGlb = bytes[0] === 0x67;
  const way = Math.floor(random() * 7);
  if (way === 0) for (let n = 0; n < 1 + random() * 8; n++) flip(bytes, random);
  if (way === 1) return bytes.subarray(0, Math.floor(random() * bytes.length));
  if (way === 2) {
    // a length field of four bytes anywhere, or in the heads of a GLB's file and chunks
    const at =
      isGlb && random() < 0.5
        ? ([4, 8, 12, 16][Math.floor(random() * 4)] ?? 8)
        : Math.floor(random() * (bytes.length - 4));
    new DataView(bytes.buffer).setUint32(at, wild[Math.floor(random() * wild.length)] ?? 0, random() < 0.5);
  }
  // bits of the last part: packed data, corners, indices
  if (way === 3) for (let n = 0; n < 1 + random() * 20; n++) flip(bytes, random, Math.floor(bytes.length / 2));
  if (way < 4) return bytes;
  const change = (text: string) =>
    way === 4
      ? changeNumber(text, random)
      : way === 5
        ? changeNumber(changeNumber(text, random), random)
        : changePiece(text, random, isGlb ? ',' : '\n');
  if (isGlb) return withJson(bytes, change);
  return new Uint8Array(Buffer.from(change(Buffer.from(bytes).toString('latin1')), 'latin1'));
};

/** What a file is by its first bytes, whatever it is called. */
export type PhotoKind = 'jpeg' | 'raw' | 'heic' | 'png' | 'webp' | 'unknown';

const ascii = (bytes: Uint8Array, from: number, to: number): string => String.fromCharCode(...bytes.subarray(from, to));

const heicBrands = ['heic', 'heix', 'hevc', 'heim', 'heis', 'mif1', 'msf1', 'avif', 'avis'];

export const photoKind = (bytes: Uint8Array): PhotoKind => {
  if (bytes[0] === 0xff && bytes[1] === 0xd8 && bytes[2] === 0xff) return 'jpeg';
  const head = ascii(bytes, 0, 4);
  // most makers' raw files are TIFF inside, or boxes of their own
  if (/^(II|MM)/.test(head)) return 'raw';
  if (ascii(bytes, 1, 4) === 'PNG') return 'png';
  if (head === 'RIFF' && ascii(bytes, 8, 12) === 'WEBP') return 'webp';
  if (ascii(bytes, 4, 8) === 'ftyp') return heicBrands.includes(ascii(bytes, 8, 12)) ? 'heic' : 'raw';
  return 'unknown';
};

/** Why a file of that kind is not read, and what to do. */
export const kindRefused: Readonly<Record<Exclude<PhotoKind, 'jpeg'>, string>> = {
  raw: 'It is a raw file. Raw files need a converter of their own for every camera, and Lampfall has none. Save a JPEG of it, in a neutral look, and open that',
  heic: 'It is a HEIC or AVIF picture. Save it as a JPEG and open that',
  png: 'It is a PNG, which says nothing of the exposure. Open the JPEG that the camera made',
  webp: 'It is a WebP picture. Open the JPEG that the camera made',
  unknown: 'It is not a photo that can be read here. Open the JPEG that the camera made',
};

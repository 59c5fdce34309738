/** Largest file that is read. */
export const maxFileBytes = 200_000_000;
/** Most triangles of a scan in a setup; meshes of more are thinned. */
export const maxKeptTriangles = 300_000;
/** Most triangles that are read from a file. */
export const maxReadTriangles = 5_000_000;
/** Most corners that are read from a file. */
export const maxReadCorners = 3 * maxReadTriangles;
/** Most bytes that the packed parts of a file may unpack to. */
export const maxUnpackedBytes = 1_000_000_000;
/** Most pixels of a picture that is read, and the longest side that is kept of it. */
export const maxPicturePixels = 100_000_000;
export const keptPictureSide = 4096;
/** How long reading may take. */
export const maxSeconds = 60;

/** A whole number as people write it: 1,200,000. */
export const inWords = (count: number): string => count.toLocaleString('en');

/** "1 animation", "2 animations". */
export const counted = (count: number, thing: string): string => `${inWords(count)} ${thing}${count === 1 ? '' : 's'}`;

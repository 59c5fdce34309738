import { Inflate } from 'fflate';
import { ScanDataError } from './scan-data-error.ts';

/** How many packed bytes are unpacked at a time; a thousandfold of them may come out. */
const sliceBytes = 32_768;

/**
 * Undoes deflate (RFC 1951) as long as not more comes out than can be right.
 *
 * @throws ScanDataError when the bytes are broken, break off or hold more than `mostBytes`
 */
export const inflateBounded = (packed: Uint8Array, mostBytes: number): Uint8Array => {
  const out = new Uint8Array(mostBytes);
  let length = 0;
  const inflate = new Inflate((chunk) => {
    if (length + chunk.length > mostBytes)
      throw new ScanDataError('must hold as many corners and triangles as it says; it holds more');
    out.set(chunk, length);
    length += chunk.length;
  });
  try {
    for (let at = 0; at < packed.length; at += sliceBytes)
      inflate.push(packed.subarray(at, at + sliceBytes), at + sliceBytes >= packed.length);
  } catch (error) {
    throw error instanceof ScanDataError ? error : new ScanDataError('must be whole; the packed data is broken');
  }
  return out.subarray(0, length);
};

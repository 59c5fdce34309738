import { savedBytes } from './saved-bytes.ts';
import type { Setup } from './schema/setup.ts';

/**
 * Largest setup text that is read, in bytes of UTF-8, without the data of its scans. As many parts as a setup may have take
 * 7 to 8 MB where each is a stone of a kit.
 */
export const maxSetupBytes = 12_000_000;

/** Largest file with its scans, in bytes. */
export const maxFileBytes = 40_000_000;

const scanData = /"data"\s*:\s*"[A-Za-z0-9+/]*={0,2}"/g;

const bytesOf = (text: string): number =>
  text.length > maxFileBytes ? text.length : new TextEncoder().encode(text).length;

const megabytes = (bytes: number): string => (bytes / 1e6).toFixed(1);

/** Why a file of so many bytes, of them so many in the data of scans, is too long; null = it is not. */
const faultOf = (bytes: number, ofScans: number): string | null => {
  if (bytes > maxFileBytes) return `the file has ${megabytes(bytes)} MB; at most ${maxFileBytes / 1e6} MB are read`;
  const rest = bytes - ofScans;
  if (rest <= maxSetupBytes) return null;
  const without = ofScans > 0 ? ' without its scans' : '';
  return `the file has ${megabytes(rest)} MB${without}; at most ${maxSetupBytes / 1e6} MB are read`;
};

/**
 * Why a setup text is too long to be read, or null. Looks at the letters only, so that nothing long is parsed in vain.
 *
 * @returns a sentence part: "the file has 13.0 MB; at most 12 MB are read"
 */
export const sizeFault = (text: string): string | null => {
  const bytes = bytesOf(text);
  if (bytes <= maxSetupBytes) return null;
  let ofScans = 0;
  if (bytes <= maxFileBytes) for (const [data] of text.matchAll(scanData)) ofScans += data.length;
  return faultOf(bytes, ofScans);
};

/** The same for the file that a setup would be saved as. Quick where setups share most of their objects, as edits leave them. */
export const savedSizeFault = (setup: Setup): string | null => {
  const { all, ofScanData } = savedBytes(setup);
  return faultOf(all, ofScanData);
};

import { decodeScan, type PackedScan, type ScanTriangles } from './scan-code.ts';

/** Triangles of scans that were checked and not asked for since. */
const checked = new WeakMap<PackedScan, ScanTriangles>();

/**
 * Checks that the data of a scan can be unpacked, to triangles that each have an area, and keeps them until they are asked
 * for. Takes memory in proportion to the counts that the scan names, whatever the data holds.
 *
 * @throws ScanDataError saying what the data must be
 */
export const checkScanData = (scan: PackedScan): void => {
  checked.set(scan, decodeScan(scan));
};

/**
 * Triangles of a scan: those that checking it has left, once, else unpacked now.
 *
 * @throws ScanDataError when the data is broken
 */
export const takeTriangles = (scan: PackedScan): ScanTriangles => {
  const kept = checked.get(scan);
  checked.delete(scan);
  return kept ?? decodeScan(scan);
};

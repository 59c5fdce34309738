/** Data of a scan that can't be unpacked. The message is a sentence part: "must …". */
export class ScanDataError extends Error {
  override readonly name = 'ScanDataError';
}

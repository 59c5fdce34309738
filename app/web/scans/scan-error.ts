/** A scan that can't be read. The message is one sentence without its full stop, fit for the screen. */
export class ScanError extends Error {
  override readonly name = 'ScanError';
}

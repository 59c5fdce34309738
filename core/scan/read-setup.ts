import { parseSetup } from '../setup/parse-setup.ts';
import type { Setup } from '../setup/schema/setup.ts';
import { SetupError } from '../setup/setup-error.ts';
import { checkScanData } from './checked-scans.ts';
import { ScanDataError } from './scan-data-error.ts';

/**
 * Reads a setup from JSON text like `parseSetup`, and sees that the data of its scans can be unpacked.
 *
 * @throws SetupError naming the line or field and what was expected; nothing else
 */
export const readSetup = (text: string): Setup => {
  const setup = parseSetup(text);
  setup.scans.forEach((scan, s) => {
    try {
      checkScanData(scan);
    } catch (error) {
      if (!(error instanceof ScanDataError)) throw error;
      throw new SetupError('field', `scans[${s}].data`, error.message);
    }
  });
  return setup;
};

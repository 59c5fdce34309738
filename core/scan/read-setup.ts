import { parseSetup, validateSetup } from '../setup/parse-setup.ts';
import type { Setup } from '../setup/schema/setup.ts';
import { SetupError } from '../setup/setup-error.ts';
import { checkScanData } from './checked-scans.ts';
import { ScanDataError } from './scan-data-error.ts';

/** Sees that the data of a setup's scans can be unpacked. */
const withScans = (setup: Setup): Setup => {
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

/**
 * Reads a setup from JSON text like `parseSetup`, and sees that the data of its scans can be unpacked.
 *
 * @throws SetupError naming the line or field and what was expected; nothing else
 */
export const readSetup = (text: string): Setup => withScans(parseSetup(text));

/** The same for a value that is already an object, such as one read from storage. */
export const readSetupValue = (value: unknown): Setup => withScans(validateSetup(value));

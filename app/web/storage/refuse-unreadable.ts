import { validateSetup } from '../../../core/setup/parse-setup.ts';
import { SetupError } from '../../../core/setup/setup-error.ts';
import type { PreparedWrite } from './prepare-write.ts';
import { StorageProblem } from './storage-problem.ts';

/** Stands in for the data of a scan, which no edit changes. */
const anyData = 'AAAA';

/**
 * Lets pass only what can be read back: what was kept before is better than what can't be opened.
 *
 * @throws StorageProblem "unreadable"
 */
export const refuseUnreadable = ({ text }: Pick<PreparedWrite, 'text'>): void => {
  try {
    const document = JSON.parse(text) as { scans: object[] };
    validateSetup({ ...document, scans: document.scans.map((scan) => ({ ...scan, data: anyData })) });
  } catch (error) {
    if (error instanceof SetupError) throw new StorageProblem('unreadable', error);
    throw error;
  }
};

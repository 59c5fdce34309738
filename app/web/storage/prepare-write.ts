import { savedBytes } from '../../../core/setup/saved-bytes.ts';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import type { SetupRecord, SetupSummary } from './records.ts';
import type { ScanKeys } from './scan-keys.ts';
import { setupText } from './setup-text.ts';

/** One write of a setup. */
export interface SetupWrite {
  readonly key: string;
  readonly setup: Setup;
  readonly scanKeys: ScanKeys;
  /** The revisions that this write follows on; none for a setup that was never written. */
  readonly follows: readonly string[];
  /** What the write is called from now on. */
  readonly revision: string;
  readonly sampleId: string | null;
  /** The small picture, where none is kept yet. */
  readonly thumbnail?: string | null;
  /** When, in milliseconds since 1970. */
  readonly changedAt: number;
}

/** The same as it goes to the store: plain data, which a worker can be sent. */
export interface PreparedWrite extends SetupRecord, Omit<SetupSummary, 'openedAt' | 'deletedAt'> {
  readonly follows: readonly string[];
  /** Data of scans by key, as far as it is not known to be kept. */
  readonly scans: ReadonlyMap<string, string>;
}

/** Writes the text of a setup. Quick where little was changed since the last. */
export const prepareWrite = ({ setup, scanKeys, thumbnail = null, ...write }: SetupWrite): PreparedWrite => {
  const keyed = setup.scans.map(({ data }) => [scanKeys.keyOf(data), data] as const);
  return {
    ...write,
    name: setup.name,
    bytes: savedBytes(setup).all,
    text: setupText(setup),
    thumbnail,
    scanKeys: keyed.map(([key]) => key),
    scans: new Map(keyed.filter(([key]) => !scanKeys.isKept(key))),
  };
};

import { savedBytes } from '../../../core/setup/saved-bytes.ts';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import { changeSetups, scansOf } from './change-setups.ts';
import type { Database } from './records.ts';
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
  readonly thumbnail?: string | null;
  /** When, in milliseconds since 1970. */
  readonly at: number;
}

/**
 * What became of a write: it is kept; it brought back a setup that was deleted meanwhile; or somebody else wrote since, and
 * nothing was written.
 */
export type WriteOutcome = 'kept' | 'brought back' | 'overtaken';

/**
 * Writes a setup, its summary and what is new of its scans, all or nothing. Whether somebody else wrote is looked at within
 * the same transaction.
 *
 * @throws what the browser throws
 */
export const writeSetup = (database: Database, write: SetupWrite): Promise<WriteOutcome> => {
  const { key, setup, scanKeys, follows, revision, sampleId, thumbnail = null, at } = write;
  const record = { text: setupText(setup), scanKeys: setup.scans.map(({ data }) => scanKeys.keyOf(data)) };
  const wanted = new Map(setup.scans.map(({ data }) => [scanKeys.keyOf(data), data]));
  const bytes = savedBytes(setup).all;
  return changeSetups(database, async (change) => {
    const [setups, summaries, scans] = [
      change.objectStore('setups'),
      change.objectStore('summaries'),
      change.objectStore('scans'),
    ];
    const [before, there] = await Promise.all([summaries.get(key), scans.getAllKeys(scansOf(key))]);
    if (before && !follows.includes(before.revision)) return 'overtaken';
    const kept = new Set(there.map(([, scan]) => scan));
    await Promise.all([
      setups.put(record, key),
      summaries.put({
        key,
        name: setup.name,
        sampleId,
        bytes,
        changedAt: at,
        openedAt: at,
        revision,
        deletedAt: null,
        thumbnail: before?.thumbnail ?? thumbnail,
      }),
      ...[...wanted].flatMap(([scan, data]) => (kept.has(scan) ? [] : [scans.put(data, [key, scan])])),
      ...[...kept].flatMap((scan) => (wanted.has(scan) ? [] : [scans.delete([key, scan])])),
    ]);
    const wasGone = before ? before.deletedAt !== null : follows.length > 0;
    return wasGone ? 'brought back' : 'kept';
  });
};

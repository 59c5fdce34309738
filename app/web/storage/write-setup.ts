import { changeSetups, scansOf } from './change-setups.ts';
import type { PreparedWrite } from './prepare-write.ts';
import type { Database } from './records.ts';

/**
 * What became of a write: it is kept; it brought back a setup that was deleted meanwhile; somebody else wrote since; or data
 * of scans that was taken to be kept is not. Nothing is written in the last two cases.
 */
export type WriteOutcome = 'kept' | 'brought back' | 'overtaken' | 'lacking';

/**
 * Writes a setup, its summary and what is new of its scans, all or nothing. Whether somebody else wrote is looked at within
 * the same transaction.
 *
 * @throws what the browser throws
 */
export const writeSetup = (database: Database, write: PreparedWrite): Promise<WriteOutcome> => {
  const { key, text, scanKeys, scans, follows, thumbnail, ...rest } = write;
  return changeSetups(database, async (change) => {
    const summaries = change.objectStore('summaries');
    const keptScans = change.objectStore('scans');
    const [before, there] = await Promise.all([summaries.get(key), keptScans.getAllKeys(scansOf(key))]);
    if (before && !follows.includes(before.revision)) return 'overtaken';
    const kept = new Set(there.map(([, scan]) => scan));
    if (scanKeys.some((scan) => !kept.has(scan) && !scans.has(scan))) return 'lacking';
    await Promise.all([
      change.objectStore('setups').put({ text, scanKeys }, key),
      summaries.put({
        ...rest,
        key,
        openedAt: rest.changedAt,
        deletedAt: null,
        thumbnail: before?.thumbnail ?? thumbnail,
      }),
      ...[...scans].flatMap(([scan, data]) => (kept.has(scan) ? [] : [keptScans.put(data, [key, scan])])),
      ...[...kept].flatMap((scan) => (scanKeys.includes(scan) ? [] : [keptScans.delete([key, scan])])),
    ]);
    const wasGone = before ? before.deletedAt !== null : follows.length > 0;
    return wasGone ? 'brought back' : 'kept';
  });
};

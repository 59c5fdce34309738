import type { Setup } from '../../../core/setup/schema/setup.ts';
import { SetupError } from '../../../core/setup/setup-error.ts';
import type { Database, SetupRecord, SetupSummary } from './records.ts';
import { ScanKeys } from './scan-keys.ts';

/** A kept setup; or the text of one that can't be used, and why. */
export type ReadSetup =
  | { readonly setup: Setup; readonly summary: SetupSummary; readonly scanKeys: ScanKeys }
  | { readonly text: string; readonly why: string; readonly summary: SetupSummary };

type Loose = Record<string, unknown>;

/** The document with the data of its scans put back. */
const whole = ({ text }: SetupRecord, scans: readonly string[]): Loose => {
  const document = JSON.parse(text) as Loose;
  const list = document['scans'];
  if (!Array.isArray(list)) return document;
  return { ...document, scans: list.map((scan: Loose, s) => ({ ...scan, data: scans[s] ?? '' })) };
};

/**
 * Reads a kept setup. What can't be used is handed out as it is, never thrown away.
 *
 * @returns null where there is none, or it is deleted
 * @throws what the browser throws
 */
export const readKeptSetup = async (database: Database, key: string): Promise<ReadSetup | null> => {
  // it comes while the store is read, and is waited for after: a transaction ends by itself where nothing is asked of it
  const reader = import('../../../core/scan/read-setup.ts');
  reader.catch(() => undefined);
  const tx = database.transaction(['setups', 'summaries', 'scans']);
  const [record, summary] = await Promise.all([
    tx.objectStore('setups').get(key),
    tx.objectStore('summaries').get(key),
  ]);
  if (!record || !summary || summary.deletedAt !== null) return null;
  const scans = await Promise.all(
    record.scanKeys.map(async (scan) => (await tx.objectStore('scans').get([key, scan])) ?? ''),
  );
  const { readSetupValue } = await reader;
  let { text } = record;
  try {
    const document = whole(record, scans);
    text = JSON.stringify(document);
    const setup = readSetupValue(document);
    return { setup, summary, scanKeys: new ScanKeys(scans.map((data, s) => [data, record.scanKeys[s] as string])) };
  } catch (error) {
    const why = error instanceof SetupError ? error.message : 'it is not the JSON of a setup';
    return { text, why, summary };
  }
};

import type { Setup } from '../../../core/setup/schema/setup.ts';
import { newKey } from '../storage/new-key.ts';
import { prepareWrite } from '../storage/prepare-write.ts';
import type { WriteOutcome } from '../storage/write-setup.ts';
import type { KeptDocument } from './kept-documents.ts';
import type { SetupWriter } from './setup-writer.ts';

interface Written {
  /** What it is kept under. */
  readonly key: string;
  readonly outcome: Exclude<WriteOutcome, 'lacking'>;
}

/**
 * Writes a setup of a document, with the data of its scans once more where the store lacks it. The document has key and
 * revision from before the answer on, as one that seems to fail may be kept after all; where it was overtaken nothing else
 * is noted in it.
 *
 * @throws StorageProblem
 */
export const writeDocument = async (writer: SetupWriter, document: KeptDocument, setup: Setup): Promise<Written> => {
  document.key ??= newKey();
  const { key, sampleId, scanKeys } = document;
  const [follows, revision] = [[...document.revisions], newKey()];
  // one that seemed to fail may be kept after all
  document.revisions.push(revision);
  const prepared = prepareWrite({ key, setup, scanKeys, follows, revision, sampleId, changedAt: Date.now() });
  const outcome = await writer(prepared);
  if (outcome === 'overtaken') return { key, outcome };
  if (outcome === 'lacking') {
    scanKeys.areKept([]);
    return writeDocument(writer, document, setup);
  }
  document.revisions = [revision];
  scanKeys.areKept(prepared.scanKeys);
  return { key, outcome };
};

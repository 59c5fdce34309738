import type { Setup } from '../../../core/setup/schema/setup.ts';
import { ScanKeys } from '../storage/scan-keys.ts';

/**
 * A line of setups that follow each other by edits: one document as it was taken up. Taken up again, a setup begins a line of
 * its own, so that a step back to an older line can't write over what was taken up since.
 */
export interface KeptDocument {
  /** What it is kept under; null until it is the user's own, which a sample is after its first change. */
  key: string | null;
  /** Revisions that this page has read or tried to write, from the last that is known to be kept. */
  revisions: string[];
  scanKeys: ScanKeys;
  /** The sample or lesson that it began as; null = none. */
  readonly sampleId: string | null;
}

/** A document that nothing is kept of yet. */
export const newDocument = (sampleId: string | null): KeptDocument => ({
  key: null,
  revisions: [],
  scanKeys: new ScanKeys(),
  sampleId,
});

/** Which document each setup belongs to that was ever on screen: the history may lead from one document to another. */
export class KeptDocuments {
  private readonly ofSetup = new WeakMap<Setup, KeptDocument>();

  /** Says that a setup, about to be taken up, begins this document. */
  begin(setup: Setup, document: KeptDocument): void {
    this.ofSetup.set(setup, document);
  }

  of(setup: Setup): KeptDocument | undefined {
    return this.ofSetup.get(setup);
  }
}

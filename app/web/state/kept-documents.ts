import type { Setup } from '../../../core/setup/schema/setup.ts';
import { ScanKeys } from '../storage/scan-keys.ts';

/**
 * A line of setups that follow each other by edits: one document as it was taken up. Taken up again, a setup goes on with its
 * line, unless another page wrote meanwhile: then it begins a line of its own, so that a step back to an older one can't
 * write over what the other wrote.
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
  /** Weak, since a document holds the data of its scans. */
  private known: WeakRef<KeptDocument>[] = [];

  /** Says that a setup, about to be taken up, begins this document. */
  begin(setup: Setup, document: KeptDocument): void {
    this.ofSetup.set(setup, document);
    const known = this.all();
    if (!known.includes(document)) this.known = [...known, document].map((each) => new WeakRef(each));
  }

  private all(): KeptDocument[] {
    return this.known.flatMap((each) => each.deref() ?? []);
  }

  /** Every line of a setup that is kept under a key. */
  under(key: string): KeptDocument[] {
    return this.all().filter((document) => document.key === key);
  }

  of(setup: Setup): KeptDocument | undefined {
    return this.ofSetup.get(setup);
  }
}

import type { Setup } from '../../../core/setup/schema/setup.ts';
import type { Autosave } from '../storage/autosave.ts';
import { newKey } from '../storage/new-key.ts';
import { ScanKeys } from '../storage/scan-keys.ts';
import { renameSetup } from './edits/setup-edits.ts';

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

/** Makes a document another one, kept beside what it was. */
export const setApart = (document: KeptDocument): void => {
  Object.assign(document, { key: newKey(), revisions: [], scanKeys: new ScanKeys() });
};

/**
 * Which document each setup belongs to that was ever on screen, and how each begins: the history may lead from one document to
 * another.
 */
export class KeptDocuments {
  private readonly ofSetup = new WeakMap<Setup, KeptDocument>();
  /** Weak, since a document holds the data of its scans. */
  private known: WeakRef<KeptDocument>[] = [];
  private readonly autosave: Autosave<KeptDocument, Setup>;

  constructor(autosave: Autosave<KeptDocument, Setup>) {
    this.autosave = autosave;
  }

  /** A setup about to be taken up is not the user's own until it is changed. */
  beginSample(setup: Setup, sampleId: string | null): void {
    this.beginKept(setup, newDocument(sampleId));
  }

  /** A setup about to be taken up is the user's own: it is kept at once. */
  beginOwn(setup: Setup): void {
    this.begin(setup, newDocument(null));
  }

  /** A setup about to be taken up needs no keeping as it is. */
  beginKept(setup: Setup, document: KeptDocument): void {
    this.begin(setup, document);
    this.autosave.isKeptAs(document, setup);
  }

  /** A setup just read from the store, about to be taken up: on its old line where nobody else wrote since. */
  beginRead(setup: Setup, document: KeptDocument & { readonly key: string }): void {
    const isSame = (line: KeptDocument) =>
      !this.autosave.isBehind(line) && document.revisions.every((each) => line.revisions.includes(each));
    this.beginKept(setup, this.under(document.key).find(isSame) ?? document);
  }

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
  private under(key: string): KeptDocument[] {
    return this.all().filter((document) => document.key === key);
  }

  of(setup: Setup): KeptDocument | undefined {
    return this.ofSetup.get(setup);
  }

  /** What is kept under the key was deleted: shown again, it is to be kept again. */
  forget(key: string): void {
    for (const document of this.under(key)) this.autosave.isNotKept(document);
  }

  /**
   * This page has given a kept setup another name: its lines have it, too, and go on from there. The answer gives it to a step
   * of the history.
   */
  tookName(key: string, before: string, revision: string, name: string): (setup: Setup) => Setup {
    const lines = this.under(key).filter(({ revisions }) => revisions.includes(before));
    for (const line of lines) line.revisions = [revision];
    return (setup) => {
      const line = this.of(setup);
      if (!line || !lines.includes(line)) return setup;
      const named = renameSetup(setup, name);
      if (this.autosave.isKept(line, setup)) this.beginKept(named, line);
      else this.begin(named, line);
      return named;
    };
  }
}

import type { Setup } from '../../../core/setup/schema/setup.ts';
import { askToPersist } from '../storage/ask-to-persist.ts';
import { Autosave } from '../storage/autosave.ts';
import { clearAll } from '../storage/change-summary.ts';
import type { Connection } from '../storage/connection.ts';
import { listSetups } from '../storage/list-setups.ts';
import { markOpen } from '../storage/open-mark.ts';
import { problemOf } from '../storage/storage-problem.ts';
import type { TabChannel, TabMessage } from '../storage/tab-channel.ts';
import { copyName } from './copy-name.ts';
import { renameSetup } from './edits/setup-edits.ts';
import { type KeptDocument, KeptDocuments, newDocument, setApart } from './kept-documents.ts';
import type { createSavingState } from './saving-state.ts';
import type { SetupWriter } from './setup-writer.ts';
import type { createAppStore } from './store.ts';
import { writeDocument } from './write-document.ts';

interface SavingOptions {
  readonly app: ReturnType<typeof createAppStore>;
  readonly state: ReturnType<typeof createSavingState>;
  readonly connection: Connection;
  /** Starts who writes. */
  readonly startWriter: () => SetupWriter;
  readonly openChannel: (hear: (message: TabMessage) => void) => TabChannel;
  /** The sample that the page begins on. */
  readonly sampleId: string;
}

/** Keeps the setup on screen while it is changed. One for each page. */
export class Saving {
  readonly app: SavingOptions['app'];
  readonly state: SavingOptions['state'];
  readonly connection: Connection;
  readonly autosave: Autosave<KeptDocument, Setup>;
  readonly documents: KeptDocuments;
  private readonly startWriter: SavingOptions['startWriter'];
  private readonly openChannel: SavingOptions['openChannel'];
  private readonly sampleId: string;
  private channel: TabChannel | null = null;
  private writer: SetupWriter = () => Promise.reject(new Error('not started'));
  private current: KeptDocument;
  private writes = 0;

  constructor({ app, state, connection, startWriter, openChannel, sampleId }: SavingOptions) {
    this.app = app;
    this.startWriter = startWriter;
    this.sampleId = sampleId;
    this.state = state;
    this.connection = connection;
    this.openChannel = openChannel;
    this.autosave = new Autosave({
      write: (document, setup) => this.write(document, setup),
      onRound: (failure) => this.endRound(failure),
    });
    this.documents = new KeptDocuments(this.autosave);
    this.current = newDocument(sampleId);
    this.documents.beginKept(app.getState().history.present, this.current);
  }

  /** This page has given a kept setup another name: its lines in the history have it, too. */
  tookName(key: string, before: string, revision: string, name: string): void {
    this.app.getState().rewrite(this.documents.tookName(key, before, revision, name));
  }

  /** From now on the page's setup is kept, and other tabs are heard. */
  start(): void {
    this.channel = this.openChannel((message) => this.hear(message));
    this.writer = this.startWriter();
    this.show(this.documents.of(this.app.getState().history.present) ?? this.current);
    this.app.subscribe(({ history: { present }, openings }, before) => {
      if (present === before.history.present && openings === before.openings) return;
      if (!this.documents.of(present)) {
        if (openings === before.openings) this.documents.begin(present, this.current);
        else this.documents.beginSample(present, null);
      }
      const document = this.documents.of(present) as KeptDocument;
      if (document !== this.current) this.show(document);
      this.autosave.note(document, present);
    });
  }

  private show(document: KeptDocument): void {
    if (document !== this.current) this.state.getState().takeKind('second copy');
    this.current = document;
    const { key, sampleId } = document;
    this.state.setState({ key, sampleId });
    this.state.getState().takeKind('changed elsewhere');
    this.state.getState().takeKind('deleted elsewhere');
    markOpen(key ?? (sampleId === null ? '' : `sample/${sampleId}`));
  }

  /** Reads from the store what nothing of this page is on its way to: again, where something was written meanwhile. */
  async readSettled<T>(read: () => Promise<T>): Promise<T> {
    for (;;) {
      await this.autosave.flush();
      const { writes } = this;
      const found = await read();
      const isBehind = this.autosave.isBehind(this.current) && this.state.getState().problem === null;
      if (writes === this.writes && !isBehind) return found;
    }
  }

  private async write(document: KeptDocument, setup: Setup): Promise<void> {
    const { outcome, key } = await writeDocument(this.writer, document, setup);
    if (outcome === 'overtaken') return this.writeSecondCopy(document, setup);
    this.writes++;
    if (outcome === 'brought back') this.tellBroughtBack(key, setup.name);
    if (document === this.current && this.state.getState().key !== key) this.show(document);
    this.tellTabs({ kind: 'kept', key });
    void askToPersist();
  }

  private tellBroughtBack(key: string, name: string): void {
    const { news, take, tell } = this.state.getState();
    for (const each of news) if (each.kind === 'deleted' && each.key === key) take(each);
    tell({ kind: 'brought back', name });
  }

  /** Another tab wrote since: what is here becomes a setup of its own. */
  private async writeSecondCopy(document: KeptDocument, setup: Setup): Promise<void> {
    const others = await this.connection.use(listSetups);
    const name = copyName(
      others.map((other) => other.name),
      setup.name,
    );
    setApart(document);
    if (document === this.current) {
      this.app.getState().edit((present) => renameSetup(present, name));
      this.show(document);
    }
    this.state.getState().tell({ kind: 'second copy', name: setup.name, copyName: name });
    await this.write(document, renameSetup(setup, name));
  }

  private endRound(failure: unknown): void {
    const { tell, takeKind } = this.state.getState();
    const before = this.state.getState().problem;
    const problem = failure === null ? null : problemOf(failure).kind;
    this.state.setState({ problem });
    if (problem === null) takeKind('problem');
    else if (problem !== before) tell({ kind: 'problem', problem });
    if (problem === null && !this.autosave.isBehind(this.current)) this.app.getState().markSaved();
  }

  private hear({ kind, key }: TabMessage): void {
    const { changed, tell, takeKind, news } = this.state.getState();
    changed();
    if (key !== this.current.key || this.autosave.isBehind(this.current)) return;
    takeKind('deleted elsewhere');
    const told = kind === 'deleted' ? 'deleted elsewhere' : 'changed elsewhere';
    if (kind === 'back' || news.some((each) => each.kind === told)) return;
    tell({ kind: told, key, name: this.app.getState().history.present.name });
  }

  /** Tells other tabs, and the list in this one, what became of a setup. */
  tellTabs(message: TabMessage): void {
    this.channel?.tell(message);
    this.state.getState().changed();
  }

  /** Whether closing the page now would lose something. */
  get wouldLose(): boolean {
    const isBehind = this.state.getState().problem !== null || this.autosave.isLate;
    return isBehind && this.app.getState().hasUnsaved;
  }

  /** For tests: empties the store; the setup given is the first sample without changes again. */
  async startOver(setup: Setup): Promise<void> {
    await this.autosave.flush();
    await this.connection.use(clearAll).catch(() => undefined);
    this.state.setState({ key: null, problem: null, news: [] });
    this.documents.beginSample(setup, this.sampleId);
  }
}

interface AutosaveOptions<D, S> {
  /** Keeps one state of a document; fails when it could not. */
  readonly write: (document: D, state: S) => Promise<void>;
  /** Told the last failure of a round, or null when all is kept. */
  readonly onRound: (failure: unknown) => void;
}

/** How far starts of writes are apart, and how far after a failure, in milliseconds. */
const apartMilliseconds = 400;
const afterFailureMilliseconds = 2000;

/**
 * Keeps documents while they are changed: the first change at once, then now and then as long as changes go on, never two
 * writes at a time. What failed is tried again with the next change.
 */
export class Autosave<D extends object, S> {
  private readonly options: AutosaveOptions<D, S>;
  /** What each document was when it was last kept. */
  private readonly kept = new WeakMap<D, S>();
  /** Documents that are behind, with what they are now. */
  private readonly behind = new Map<D, S>();
  private timer: ReturnType<typeof setTimeout> | null = null;
  private round: Promise<void> | null = null;
  private lastStart = Number.NEGATIVE_INFINITY;
  private hasFailed = false;
  private hasNews = false;
  /** Since when something is behind. */
  private behindSince: number | null = null;

  constructor(options: AutosaveOptions<D, S>) {
    this.options = options;
  }

  /** Says what a document is now. */
  note(document: D, state: S): void {
    if (this.kept.get(document) === state && !this.round) this.behind.delete(document);
    else this.behind.set(document, state);
    if (this.behind.size === 0) this.behindSince = null;
    else {
      this.behindSince ??= Date.now();
      this.hasNews = true;
      this.schedule();
    }
  }

  /** Says that a document is kept as it is: it was just read. */
  isKeptAs(document: D, state: S): void {
    this.kept.set(document, state);
  }

  /** Says that what was kept of a document is there no more: it is written again as soon as it is noted. */
  isNotKept(document: D): void {
    this.kept.delete(document);
  }

  /** Whether a state of a document is the one that is kept. */
  isKept(document: D, state: S): boolean {
    return this.kept.get(document) === state;
  }

  isBehind(document: D): boolean {
    return this.behind.has(document);
  }

  /** Whether something has waited longer than writes take. */
  get isLate(): boolean {
    return this.behindSince !== null && Date.now() - this.behindSince > 4 * apartMilliseconds;
  }

  private schedule(): void {
    if (this.round) return;
    const apart = this.hasFailed ? afterFailureMilliseconds : apartMilliseconds;
    const due = this.lastStart + apart - Date.now();
    // a page that is busy comes late to its timers
    if (due <= 0) void this.run();
    else this.timer ??= setTimeout(() => void this.run(), due);
  }

  private run(): Promise<void> {
    if (this.timer !== null) clearTimeout(this.timer);
    this.timer = null;
    this.round ??= this.writeAll().finally(() => {
      this.round = null;
      if (this.behind.size === 0) this.behindSince = null;
      else if (this.hasNews || !this.hasFailed) this.schedule();
    });
    return this.round;
  }

  private async writeAll(): Promise<void> {
    this.lastStart = Date.now();
    this.hasNews = false;
    let failure: unknown = null;
    for (const document of [...this.behind.keys()]) {
      const state = this.behind.get(document) as S;
      try {
        if (this.kept.get(document) !== state) await this.options.write(document, state);
        this.kept.set(document, state);
        if (this.behind.get(document) === state) this.behind.delete(document);
      } catch (error) {
        failure = error ?? new Error('unknown');
      }
    }
    this.hasFailed = failure !== null;
    this.options.onRound(failure);
  }

  /** Writes what is behind, now. The answer comes when that was tried. */
  async flush(): Promise<void> {
    const { round } = this;
    await round;
    if (round && this.hasFailed) return;
    while (this.behind.size > 0) {
      await this.run();
      if (this.hasFailed) return;
    }
  }
}

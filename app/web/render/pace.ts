export type JobKind = 'hits' | 'light';

/** Fewest texels that a job is cut to, so that the slowest card still gets on. */
const leastTexels = 2000;
/** A poll sees whole animation frames; a job seen done within this was short enough. */
const oneFrameMilliseconds = 25;

/**
 * Learns how many texels the card gets through within a time budget, from fences polled once a frame: grows while jobs
 * are done by the next frame, shrinks when they take longer. Nothing ever waits for the card.
 */
export class Pace {
  private readonly context: WebGL2RenderingContext;
  private fence: WebGLSync | null = null;
  private startedAt = 0;
  private kind: JobKind = 'light';
  private wasWhole = false;
  private readonly budgetMilliseconds: number;
  /** Texels that fit the budget, as far as is known. */
  readonly texels: Record<JobKind, number> = { hits: 40_000, light: 40_000 };

  constructor(context: WebGL2RenderingContext, budgetMilliseconds = 12) {
    this.context = context;
    this.budgetMilliseconds = budgetMilliseconds;
  }

  /** Marks a job just submitted; `filledBudget` when it had as many texels as the budget allows. */
  submitted(kind: JobKind, filledBudget: boolean, now: number): void {
    this.fence = this.context.fenceSync(this.context.SYNC_GPU_COMMANDS_COMPLETE, 0);
    this.context.flush();
    this.startedAt = now;
    this.kind = kind;
    this.wasWhole = filledBudget;
  }

  /** Whether the card is still at the last job; learns from it when it is not. */
  isBusy(now: number): boolean {
    if (!this.fence) return false;
    if (this.context.clientWaitSync(this.fence, 0, 0) === this.context.TIMEOUT_EXPIRED) return true;
    this.context.deleteSync(this.fence);
    this.fence = null;
    this.learn(now - this.startedAt);
    return false;
  }

  private learn(milliseconds: number): void {
    const known = this.texels[this.kind];
    if (milliseconds <= oneFrameMilliseconds) {
      if (this.wasWhole) this.texels[this.kind] = known * 1.5;
    } else {
      const share = Math.max(this.budgetMilliseconds / (milliseconds - oneFrameMilliseconds / 2), 0.25);
      if (share < 1) this.texels[this.kind] = Math.max(known * share, leastTexels);
    }
  }

  /** Forgets a job that will never end, after the context was lost. */
  reset(): void {
    this.fence = null;
  }
}

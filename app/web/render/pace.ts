export type JobKind = 'hits' | 'light' | 'bounce';

/** Fewest texels that a job is cut to, so that the slowest card still gets on. */
const leastTexels = 4000;
/** How much of what was learnt a new measurement replaces. */
const trust = 0.5;

/**
 * Learns how many texels the card gets through within a time budget, from fences polled a few milliseconds apart.
 * Nothing ever waits for the card.
 */
export class Pace {
  private readonly context: WebGL2RenderingContext;
  private readonly budgetMilliseconds: number;
  private job: { fence: WebGLSync; kind: JobKind; texels: number; startedAt: number } | null = null;
  /** Texels that fit the budget, as far as is known. */
  readonly texels: Record<JobKind, number> = { hits: 20_000, light: 20_000, bounce: 10_000 };

  constructor(context: WebGL2RenderingContext, budgetMilliseconds = 12) {
    this.context = context;
    this.budgetMilliseconds = budgetMilliseconds;
  }

  /** Marks a job just submitted. */
  submitted(kind: JobKind, texels: number, now: number): void {
    const fence = this.context.fenceSync(this.context.SYNC_GPU_COMMANDS_COMPLETE, 0);
    this.context.flush();
    this.job = fence && { fence, kind, texels, startedAt: now };
  }

  /** Whether the card is still at the last job; learns from it when it is not. A lost card is, until `reset`. */
  isBusy(now: number): boolean {
    const { job, context } = this;
    if (context.isContextLost()) return true;
    if (!job) return false;
    // not clientWaitSync: browsers may hold up the page until the card answers
    if (context.getSyncParameter(job.fence, context.SYNC_STATUS) !== context.SIGNALED) return true;
    context.deleteSync(job.fence);
    this.job = null;
    const fits = (job.texels * this.budgetMilliseconds) / Math.max(now - job.startedAt, 1);
    const known = this.texels[job.kind];
    // a short last band says little about speed: it may pull up, but not far
    const bounded = Math.min(Math.max(fits, known / 4), known * 2);
    this.texels[job.kind] = Math.max(known + trust * (bounded - known), leastTexels);
    return false;
  }

  /** Forgets a job that will never end, after the context was lost. */
  reset(): void {
    this.job = null;
  }
}

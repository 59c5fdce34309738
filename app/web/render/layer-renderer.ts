import type { WebGLRenderer } from 'three';
import type { Stage } from '../../../core/world/stage.ts';
import { coarseSize } from './coarse-size.ts';
import { type Job, LayerJobs } from './layer-jobs.ts';
import { LayerStore, type Size, type StoredLayer } from './layer-store.ts';
import { Pace } from './pace.ts';
import { countSample, freshCounters } from './trace-counters.ts';
import { Tracer } from './tracer.ts';
import { type WantedLayer, WantedLayers } from './wanted-layers.ts';

export interface LayerRendererOptions {
  /** Samples after which a layer counts as converged, until `want` says another number. */
  readonly maxSamples: number;
  /** Whether a quick coarse picture is traced first where the full one would not fit the time budget. */
  readonly coarseFirst: boolean;
}

/**
 * Keeps wanted layers traced: coarse first, then full, then refined sample by sample until converged; then it does
 * nothing. Work is cut into bands of rows that fit a time budget, one on the card at a time.
 */
export class LayerRenderer {
  counters = freshCounters();
  readonly pace: Pace;
  private readonly tracer: Tracer;
  private readonly store: LayerStore;
  private readonly coarseFirst: boolean;
  /** What is traced, and how far it is. */
  readonly wanted: WantedLayers;
  private readonly jobs: LayerJobs;
  private job: Job | null = null;

  constructor(gl: WebGLRenderer, options: LayerRendererOptions = { maxSamples: 64, coarseFirst: true }) {
    this.coarseFirst = options.coarseFirst;
    this.wanted = new WantedLayers(options.maxSamples);
    this.tracer = new Tracer(gl);
    this.store = new LayerStore(gl);
    this.jobs = new LayerJobs(this.tracer, this.store);
    this.pace = new Pace(gl.getContext() as WebGL2RenderingContext);
  }

  /**
   * Declares which layers are wanted from now on, at which size. Layers already traced are kept.
   *
   * @param maxSamples samples after which a layer counts as converged
   * @param shownOn traced layers that are not wanted but still on screen, and are not disposed of
   */
  want(
    stage: Stage,
    layers: readonly WantedLayer[],
    size: Size,
    maxSamples = this.wanted.maxSamples,
    shownOn: ReadonlySet<StoredLayer> = new Set(),
  ): StoredLayer[] {
    if (this.tracer.setStage(stage)) this.store.clear();
    const coarse = coarseSize(size, this.pace.texels.light);
    const stored = layers.map(({ label, view, source, bounces }) => {
      const shotKey = `${stage.key}|${size.width}x${size.height}|${JSON.stringify(view)}`;
      // a job under way may be reading the coarse first hits: they are not resized under it
      const shot = this.store.shot(shotKey, view, size, coarse, !this.job);
      const layer = this.store.layer(`${shotKey}|${bounces}|${JSON.stringify(source)}`, source, bounces, shot);
      return { layer, label };
    });
    this.wanted.set(stored, maxSamples);
    // with more shots than before first hits may have to make room: no job may be reading them
    if (this.wanted.shots.size > this.store.shotsWanted) this.dropJob();
    else this.dropUselessJob();
    this.store.trim(new Set(this.wanted.layers), shownOn);
    return stored.map(({ layer }) => layer);
  }

  /** Nothing is wanted any more; what was traced is kept as far as it fits. */
  wantNothing(): StoredLayer[] {
    this.dropJob();
    this.wanted.clear();
    this.store.trim(new Set(), new Set());
    return [];
  }

  /** First hits go on as long as their camera is wanted, light as long as its layer is. */
  private dropUselessJob(): void {
    const { job } = this;
    if (!job) return;
    const isUseful = job.kind === 'hits' ? this.wanted.shots.has(job.layer.shot) : this.wanted.has(job.layer);
    if (!isUseful) this.dropJob();
  }

  private dropJob(): void {
    if (this.job) this.jobs.drop(this.job);
    this.job = null;
  }

  /**
   * Gives the card one job that fits the time budget, if the card is free.
   *
   * @param now milliseconds
   * @returns whether a layer gained a sample, so that the picture should be mixed again
   */
  step(now: number): boolean {
    if (this.pace.isBusy(now)) return false;
    this.job ??= this.nextJob();
    const { job } = this;
    if (!job) return false;
    const rows = Math.max(Math.floor(this.pace.texels[job.kind] / job.target.width), 1);
    const before = job.row;
    this.runBand(job, rows);
    this.pace.submitted(job.kind, (Math.min(job.row, job.target.height) - before) * job.target.width, now);
    return this.finishJob(job);
  }

  /** Works without pause until every wanted layer has that many full samples; for tests and benches. */
  runTo(samples: number): void {
    for (;;) {
      const layer = this.wanted.layers.reduce((least, next) => (next.samples < least.samples ? next : least));
      if (layer.samples >= samples) return;
      this.job ??= this.jobs.full(layer);
      this.runBand(this.job, this.job.target.height);
      this.finishJob(this.job);
    }
  }

  private runBand(job: Job, rows: number): void {
    job.draw({ from: job.row, to: Math.min(job.row + rows, job.target.height) });
    job.row += rows;
  }

  private finishJob(job: Job): boolean {
    if (job.row < job.target.height) return false;
    job.done();
    this.job = null;
    countSample(this.counters, job.kind, this.wanted.labelOf(job.layer));
    return job.kind !== 'hits';
  }

  private nextJob(): Job | null {
    const bare = this.coarseFirst ? this.wanted.firstBare : undefined;
    if (bare) return this.jobs.coarse(bare);
    const { next } = this.wanted;
    return next && this.jobs.full(next);
  }

  forgetCounts(): void {
    this.counters = freshCounters();
  }

  /** Starts over after the card lost everything. */
  reset(): void {
    this.dropJob();
    this.jobs.clear();
    this.pace.reset();
    this.store.clear();
    this.wanted.clear();
  }

  dispose(): void {
    this.reset();
    this.tracer.dispose();
  }
}

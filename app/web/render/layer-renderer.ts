import type { WebGLRenderer, WebGLRenderTarget } from 'three';
import type { Stage } from '../../../core/world/stage.ts';
import { keptSamples, LayerStore, type Shot, type Size, type StoredLayer } from './layer-store.ts';
import { type JobKind, Pace } from './pace.ts';
import { type Band, type LightTask, Tracer } from './tracer.ts';

/** A source's light wanted over a camera's picture; `label` is what counters call it. */
export interface WantedLayer extends LightTask {
  readonly label: string;
}

/** What was traced since the start; tests hold the promises of design.md to these. */
export interface TraceCounters {
  /** Samples of first hits, coarse ones included. */
  hits: number;
  /** Samples of light by label, coarse ones included. */
  light: Record<string, number>;
}

interface Job {
  readonly kind: JobKind;
  readonly target: WebGLRenderTarget;
  readonly draw: (band: Band) => void;
  readonly done: () => void;
  readonly layer: StoredLayer;
  row: number;
}

/** How many samples bounced light gets for each of direct light: what comes through a door is seldom met by chance. */
const bouncedPerDirect = 4;

/** Samples in a layer, those of bounced light by the measure of direct light. */
const progressOf = ({ samples, bounces }: StoredLayer): number => (bounces > 0 ? samples / bouncedPerDirect : samples);

export interface LayerRendererOptions {
  /** Samples after which a layer counts as converged. */
  readonly maxSamples: number;
  /** Whether a quick coarse picture is traced first where the full one would not fit the time budget. */
  readonly coarseFirst: boolean;
}

/**
 * Keeps wanted layers traced: coarse first, then full, then refined sample by sample until converged; then it does
 * nothing. Work is cut into bands of rows that fit a time budget, one on the card at a time.
 */
export class LayerRenderer {
  readonly counters: TraceCounters = { hits: 0, light: {} };
  readonly pace: Pace;
  private readonly tracer: Tracer;
  private readonly store: LayerStore;
  private readonly options: LayerRendererOptions;
  private wanted: StoredLayer[] = [];
  private labels = new Map<StoredLayer, string>();
  private job: Job | null = null;
  private spare: WebGLRenderTarget | null = null;

  constructor(gl: WebGLRenderer, options: LayerRendererOptions = { maxSamples: 64, coarseFirst: true }) {
    this.options = options;
    this.tracer = new Tracer(gl);
    this.store = new LayerStore(gl);
    this.pace = new Pace(gl.getContext() as WebGL2RenderingContext);
  }

  /** Declares which layers are wanted from now on, at which size. Layers already traced are kept. */
  want(stage: Stage, layers: readonly WantedLayer[], size: Size): StoredLayer[] {
    if (this.tracer.setStage(stage)) this.store.clear();
    // a job under way may be reading the coarse first hits: they are not resized under it
    const coarseSize = this.job ? null : this.coarseSize(size);
    this.labels = new Map();
    this.wanted = layers.map(({ label, view, source, bounces }) => {
      const shotKey = `${stage.key}|${size.width}x${size.height}|${JSON.stringify(view)}`;
      const shot = this.store.shot(shotKey, view, size, coarseSize ?? this.coarseSize(size), coarseSize !== null);
      const layer = this.store.layer(`${shotKey}|${bounces}|${JSON.stringify(source)}`, source, bounces, shot);
      if (!this.labels.has(layer)) this.labels.set(layer, label);
      return layer;
    });
    this.dropUselessJob();
    this.store.trim(new Set(this.wanted));
    return this.wanted;
  }

  /** The full size, halved until one sample fits the time budget, at most three times. */
  private coarseSize(size: Size): Size {
    let [width, height] = [size.width, size.height];
    for (let halvings = 0; halvings < 3 && width * height > this.pace.texels.light; halvings++)
      [width, height] = [Math.ceil(width / 2), Math.ceil(height / 2)];
    return { width, height };
  }

  /** First hits go on as long as their camera is wanted, light as long as its layer is. */
  private dropUselessJob(): void {
    const { job } = this;
    if (!job) return;
    const useful =
      job.kind !== 'hits' ? this.labels.has(job.layer) : this.wanted.some(({ shot }) => shot === job.layer.shot);
    if (!useful) this.dropJob();
  }

  private dropJob(): void {
    const { job } = this;
    if (job && job.target !== job.layer.shot.scratchHits) job.target.dispose();
    this.job = null;
  }

  /** Whether all direct light can be shown, if only coarsely. Bounced light is not waited for. */
  get isShowable(): boolean {
    return this.wanted.every((layer) => layer.bounces > 0 || layer.full !== null || layer.coarse !== null);
  }

  /** Fewest samples in any wanted layer; bounced light counts by its own, larger measure. */
  get samples(): number {
    return this.wanted.length === 0 ? 0 : Math.min(...this.wanted.map((layer) => Math.floor(progressOf(layer))));
  }

  get isConverged(): boolean {
    return this.wanted.every((layer) => progressOf(layer) >= this.options.maxSamples);
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
      const layer = this.wanted.reduce((least, next) => (next.samples < least.samples ? next : least));
      if (layer.samples >= samples) return;
      this.job ??= this.fullJob(layer);
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
    return job.kind !== 'hits';
  }

  /** Coarse pictures of direct light first, then the layer with the fewest samples; direct light goes before bounced. */
  private nextJob(): Job | null {
    const isBare = (layer: StoredLayer) => layer.bounces === 0 && !layer.coarse && !layer.full;
    const bare = this.options.coarseFirst && this.wanted.find(isBare);
    if (bare && bare.shot.coarseSize.width < bare.shot.size.width) return this.coarseJob(bare);
    const least = this.wanted.reduce<StoredLayer | null>(
      (best, next) => (!best || progressOf(next) < progressOf(best) ? next : best),
      null,
    );
    return least && progressOf(least) < this.options.maxSamples ? this.fullJob(least) : null;
  }

  private coarseJob(layer: StoredLayer): Job {
    const { shot } = layer;
    if (!shot.coarseHits) {
      const target = this.store.makeRecord(shot.coarseSize);
      return this.hitsJob(layer, target, 0, () => {
        shot.coarseHits = target;
      });
    }
    const hits = shot.coarseHits;
    const target = this.store.makeFloat(hits);
    return this.lightJob(layer, hits, 0, null, target, () => {
      layer.coarse = target;
    });
  }

  private fullJob(layer: StoredLayer): Job {
    const { shot, samples: sample } = layer;
    const hits = shot.keptHits[sample] ?? (shot.scratchSample === sample ? shot.scratchHits : null);
    if (!hits) return this.fullHitsJob(layer, shot, sample);
    const { width, height } = shot.size;
    const fits = this.spare?.width === width && this.spare.height === height;
    const target = fits && this.spare ? this.spare : this.store.makeFloat(shot.size);
    if (fits) this.spare = null;
    return this.lightJob(layer, hits, sample, layer.full, target, () => {
      this.spare?.dispose();
      this.spare = layer.full;
      layer.full = target;
      layer.samples = sample + 1;
      layer.coarse?.dispose();
      layer.coarse = null;
    });
  }

  private fullHitsJob(layer: StoredLayer, shot: Shot, sample: number): Job {
    const keep = sample < keptSamples(shot.size) && shot.keptHits.length === sample;
    const target = keep ? this.store.makeRecord(shot.size) : (shot.scratchHits ?? this.store.makeRecord(shot.size));
    if (!keep) shot.scratchSample = -1;
    return this.hitsJob(layer, target, sample, () => {
      if (keep) shot.keptHits.push(target);
      else Object.assign(shot, { scratchHits: target, scratchSample: sample });
    });
  }

  private hitsJob(layer: StoredLayer, target: WebGLRenderTarget, sample: number, done: () => void): Job {
    const draw = (band: Band) => this.tracer.traceFirstHits(layer.shot.view, sample, target, band);
    const count = () => {
      done();
      this.counters.hits++;
    };
    return { kind: 'hits', target, draw, done: count, layer, row: 0 };
  }

  private lightJob(
    layer: StoredLayer,
    hits: WebGLRenderTarget,
    sample: number,
    before: WebGLRenderTarget | null,
    target: WebGLRenderTarget,
    done: () => void,
  ): Job {
    const draw = (band: Band) =>
      this.tracer.traceLight({ ...layer, view: layer.shot.view }, sample, hits, before, target, band);
    const count = () => {
      done();
      const label = this.labels.get(layer) ?? '';
      this.counters.light[label] = (this.counters.light[label] ?? 0) + 1;
    };
    return { kind: layer.bounces > 0 ? 'bounce' : 'light', target, draw, done: count, layer, row: 0 };
  }

  /** Starts over after the card lost everything. */
  reset(): void {
    this.dropJob();
    this.spare?.dispose();
    this.spare = null;
    this.pace.reset();
    this.store.clear();
    this.wanted = [];
  }

  dispose(): void {
    this.reset();
    this.tracer.dispose();
  }
}

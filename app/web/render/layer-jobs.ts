import type { WebGLRenderTarget } from 'three';
import { keptSamples, type LayerStore, type StoredLayer } from './layer-store.ts';
import type { JobKind } from './pace.ts';
import type { Band, Tracer } from './tracer.ts';

/** A picture of first hits or of light in the making, drawn band by band. */
export interface Job {
  readonly kind: JobKind;
  readonly target: WebGLRenderTarget;
  readonly draw: (band: Band) => void;
  /** Puts the finished target where it belongs. */
  readonly done: () => void;
  readonly layer: StoredLayer;
  /** First row that is not drawn yet. */
  row: number;
}

/** Makes the jobs that bring layers on, each with the first hits that it needs before it. */
export class LayerJobs {
  private readonly tracer: Tracer;
  private readonly store: LayerStore;
  private spare: WebGLRenderTarget | null = null;

  constructor(tracer: Tracer, store: LayerStore) {
    this.tracer = tracer;
    this.store = store;
  }

  /** The next job toward a layer's quick small picture. */
  coarse(layer: StoredLayer): Job {
    const { shot } = layer;
    if (!shot.coarseHits) {
      const target = this.store.makeRecord(shot.coarseSize);
      return this.hits(layer, target, 0, () => {
        shot.coarseHits = target;
      });
    }
    const hits = shot.coarseHits;
    const target = this.store.makeFloat(hits);
    return this.light(layer, hits, 0, null, target, () => {
      layer.coarse = target;
    });
  }

  /** The next job toward a layer's next full sample. */
  full(layer: StoredLayer): Job {
    const { shot, samples: sample } = layer;
    const hits = shot.keptHits[sample] ?? this.store.scratch.of(shot, sample);
    if (!hits) return this.fullHits(layer, sample);
    const { width, height } = shot.size;
    const fits = this.spare?.width === width && this.spare.height === height;
    const target = fits && this.spare ? this.spare : this.store.makeFloat(shot.size);
    if (fits) this.spare = null;
    return this.light(layer, hits, sample, layer.full, target, () => {
      this.spare?.dispose();
      this.spare = layer.full;
      layer.full = target;
      layer.samples = sample + 1;
      layer.coarse?.dispose();
      layer.coarse = null;
    });
  }

  private fullHits(layer: StoredLayer, sample: number): Job {
    const { store } = this;
    const { shot } = layer;
    const keep = sample < keptSamples(shot.size, store.shotsWanted) && shot.keptHits.length === sample;
    const target = keep ? store.makeRecord(shot.size) : store.scratch.take(shot.size);
    return this.hits(layer, target, sample, () => {
      if (keep) shot.keptHits.push(target);
      else store.scratch.fill(shot, sample);
    });
  }

  private hits(layer: StoredLayer, target: WebGLRenderTarget, sample: number, done: () => void): Job {
    const draw = (band: Band) => this.tracer.traceFirstHits(layer.shot.view, sample, target, band);
    return { kind: 'hits', target, draw, done, layer, row: 0 };
  }

  private light(
    layer: StoredLayer,
    hits: WebGLRenderTarget,
    sample: number,
    before: WebGLRenderTarget | null,
    target: WebGLRenderTarget,
    done: () => void,
  ): Job {
    const draw = (band: Band) =>
      this.tracer.traceLight({ ...layer, view: layer.shot.view }, sample, hits, before, target, band);
    return { kind: layer.bounces > 0 ? 'bounce' : 'light', target, draw, done, layer, row: 0 };
  }

  /** Lets go of an unfinished job's target. */
  drop({ target }: Job): void {
    if (!this.store.scratch.isTarget(target)) target.dispose();
  }

  clear(): void {
    this.spare?.dispose();
    this.spare = null;
  }
}

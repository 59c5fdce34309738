import type { Shot, StoredLayer } from './layer-store.ts';
import type { LightTask } from './tracer.ts';

/** A source's light wanted over a camera's picture; `label` is what counters call it. */
export interface WantedLayer extends LightTask {
  readonly label: string;
}

/** How many samples bounced light gets for each of direct light: what comes through a door is seldom met by chance. */
const bouncedPerDirect = 4;

/** Samples in a layer, those of bounced light by the measure of direct light. */
const progressOf = ({ samples, bounces }: StoredLayer): number => (bounces > 0 ? samples / bouncedPerDirect : samples);

/** The layers that are wanted now, in their order, and how far they are. */
export class WantedLayers {
  layers: readonly StoredLayer[] = [];
  shots: ReadonlySet<Shot> = new Set();
  /** Samples after which a layer counts as converged. */
  maxSamples: number;
  private labels = new Map<StoredLayer, string>();

  constructor(maxSamples: number) {
    this.maxSamples = maxSamples;
  }

  set(wanted: readonly { readonly layer: StoredLayer; readonly label: string }[], maxSamples: number): void {
    this.maxSamples = maxSamples;
    this.layers = wanted.map(({ layer }) => layer);
    this.shots = new Set(this.layers.map(({ shot }) => shot));
    this.labels = new Map();
    for (const { layer, label } of wanted) if (!this.labels.has(layer)) this.labels.set(layer, label);
  }

  clear(): void {
    this.set([], this.maxSamples);
  }

  has(layer: StoredLayer): boolean {
    return this.labels.has(layer);
  }

  /** What counters call a layer. */
  labelOf(layer: StoredLayer): string {
    return this.labels.get(layer) ?? '';
  }

  /** Whether all direct light can be shown, if only coarsely. Bounced light is not waited for. */
  get isShowable(): boolean {
    return this.layers.every((layer) => layer.bounces > 0 || layer.full !== null || layer.coarse !== null);
  }

  /** Fewest samples in any layer; bounced light counts by its own, larger measure. */
  get samples(): number {
    return this.layers.length === 0 ? 0 : Math.min(...this.layers.map((layer) => Math.floor(progressOf(layer))));
  }

  /** Share of all samples wanted that have been traced, 0 to 1. */
  get progress(): number {
    const most = this.maxSamples;
    const sum = this.layers.reduce((total, layer) => total + Math.min(progressOf(layer), most), 0);
    return this.layers.length === 0 ? 1 : sum / (most * this.layers.length);
  }

  get isConverged(): boolean {
    return this.layers.every((layer) => progressOf(layer) >= this.maxSamples);
  }

  /** The first direct light that has nothing to show yet and is worth a coarse picture. */
  get firstBare(): StoredLayer | undefined {
    const bare = this.layers.find((layer) => layer.bounces === 0 && !layer.coarse && !layer.full);
    return bare && bare.shot.coarseSize.width < bare.shot.size.width ? bare : undefined;
  }

  /** The layer with the fewest samples, direct light before bounced; null when all have theirs. */
  get next(): StoredLayer | null {
    const least = this.layers.reduce<StoredLayer | null>(
      (best, layer) => (!best || progressOf(layer) < progressOf(best) ? layer : best),
      null,
    );
    return least && progressOf(least) < this.maxSamples ? least : null;
  }
}

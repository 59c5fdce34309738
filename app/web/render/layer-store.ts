import type { WebGLRenderer, WebGLRenderTarget } from 'three';
import type { CameraView } from '../../../core/camera/camera-view.ts';
import type { Traced } from '../../../core/trace/mask.ts';
import type { World } from '../../../core/world/world.ts';
import { ScratchHits } from './scratch-hits.ts';
import { floatTarget, recordTarget, targetBytes } from './targets.ts';

/** A size in texels. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

/** One source's running mean over one camera's picture. */
export interface StoredLayer {
  readonly key: string;
  readonly source: Traced;
  /** 0 = direct light; else what came by way of that many other surfaces at most. */
  readonly bounces: World['bounces'];
  readonly shot: Shot;
  /** A quick small picture shown until the full one has its first sample. */
  coarse: WebGLRenderTarget | null;
  full: WebGLRenderTarget | null;
  /** Samples in `full`. */
  samples: number;
  /** Counts up with use; the smallest goes first when memory runs short. */
  lastUsed: number;
}

/** A camera over a stage at a size: what first hits are cached for. */
export interface Shot {
  readonly key: string;
  readonly view: CameraView;
  readonly size: Size;
  coarseSize: Size;
  coarseHits: WebGLRenderTarget | null;
  /** First hits of the first samples, kept. */
  readonly keptHits: WebGLRenderTarget[];
  lastUsed: number;
}

/** Memory for layers and first hits that are not on screen, in bytes. */
const spareBytes = 192e6;

/** Memory for the first hits that are kept of all shots on screen together, in bytes; one sample a shot is kept in any case. */
const keptHitsBytes = 96e6;

/** How many samples of first hits are kept for each shot wanted, so that moving a lamp need not trace them again. */
export const keptSamples = (size: Size, shotsWanted: number): number =>
  Math.max(1, Math.min(8, Math.floor(keptHitsBytes / Math.max(shotsWanted, 1) / targetBytes(size))));

const disposeAll = (targets: readonly (WebGLRenderTarget | null)[]) => {
  for (const target of targets) target?.dispose();
};

/** All layers and first hits that are in memory, by key. */
export class LayerStore {
  private readonly gl: WebGLRenderer;
  readonly layers = new Map<string, StoredLayer>();
  readonly shots = new Map<string, Shot>();
  readonly scratch = new ScratchHits();
  /** How many shots the layers wanted now are seen from. */
  shotsWanted = 0;
  private clock = 0;

  constructor(gl: WebGLRenderer) {
    this.gl = gl;
  }

  shot(key: string, view: CameraView, size: Size, coarseSize: Size, mayResize: boolean): Shot {
    let shot = this.shots.get(key);
    if (!shot) {
      shot = {
        key,
        view,
        size,
        coarseSize,
        coarseHits: null,
        keptHits: [],
        lastUsed: 0,
      };
      this.shots.set(key, shot);
    }
    const ratio = shot.coarseSize.width / coarseSize.width;
    // only a clear change of pace is worth new first hits
    if (mayResize && (ratio < 0.3 || ratio > 3)) {
      shot.coarseHits?.dispose();
      Object.assign(shot, { coarseSize, coarseHits: null });
    }
    shot.lastUsed = ++this.clock;
    return shot;
  }

  layer(key: string, source: Traced, bounces: World['bounces'], shot: Shot): StoredLayer {
    let layer = this.layers.get(key);
    if (!layer) {
      layer = { key, source, bounces, shot, coarse: null, full: null, samples: 0, lastUsed: 0 };
      this.layers.set(key, layer);
    }
    layer.lastUsed = ++this.clock;
    return layer;
  }

  makeFloat = (size: Size): WebGLRenderTarget => floatTarget(this.gl, size.width, size.height);
  makeRecord = (size: Size): WebGLRenderTarget => recordTarget(size.width, size.height);

  /**
   * Lets go of what was used longest ago, until what is not wanted now fits the spare memory.
   *
   * @param shownOn layers that are not wanted but still on screen: they stay
   */
  trim(wanted: ReadonlySet<StoredLayer>, shownOn: ReadonlySet<StoredLayer>): void {
    const shotsWanted = new Set([...wanted].map(({ shot }) => shot));
    this.shotsWanted = shotsWanted.size;
    for (const { keptHits, size } of shotsWanted) disposeAll(keptHits.splice(keptSamples(size, this.shotsWanted)));
    const spareLayers = [...this.layers.values()]
      .filter((layer) => !wanted.has(layer) && !shownOn.has(layer))
      .sort((a, b) => b.lastUsed - a.lastUsed);
    let bytes = 0;
    for (const layer of spareLayers) {
      bytes += layer.full ? targetBytes(layer.full) : 0;
      // a layer that was dragged through and never got a sample is not worth keeping
      if (bytes > spareBytes || layer.samples === 0) this.dropLayer(layer);
    }
    const shotsUsed = new Set([...this.layers.values()].map(({ shot }) => shot));
    for (const shot of this.shots.values()) {
      if (shotsWanted.has(shot)) continue;
      disposeAll([shot.coarseHits, ...shot.keptHits]);
      shot.coarseHits = null;
      shot.keptHits.length = 0;
      if (!shotsUsed.has(shot)) this.shots.delete(shot.key);
    }
  }

  private dropLayer(layer: StoredLayer): void {
    disposeAll([layer.coarse, layer.full]);
    this.layers.delete(layer.key);
  }

  clear(): void {
    for (const layer of [...this.layers.values()]) this.dropLayer(layer);
    for (const shot of this.shots.values()) disposeAll([shot.coarseHits, ...shot.keptHits]);
    this.shots.clear();
    this.scratch.clear();
  }
}

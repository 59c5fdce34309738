import type { WebGLRenderer } from 'three';
import { LayerRenderer, type TraceCounters } from './layer-renderer.ts';
import type { StoredLayer } from './layer-store.ts';
import { Mixer } from './mixer.ts';
import type { Scene, Tile } from './scene.ts';
import { layersOfScene, SceneLayers } from './scene-layers.ts';

export interface EngineState {
  readonly counters: TraceCounters;
  /** Pictures mixed and developed since the start. */
  readonly developed: number;
  /** Fewest samples in what is shown. */
  readonly samples: number;
  readonly isConverged: boolean;
  /** Share of the samples wanted that have been traced, 0 to 1. */
  readonly progress: number;
  /** Texels that fit one job's time budget, as learnt. */
  readonly texelsPerJob: Readonly<Record<string, number>>;
}

/** How long after giving the card a job it is asked whether it is done, in milliseconds. */
const pollMilliseconds = 3;

/**
 * Runs layers, mixing and developing for what is on the screen, a little at a time, and stops when done. Tracing goes on
 * between animation frames; the screen is drawn when the page asks, after `onStale` told it to.
 */
export class PictureEngine {
  private readonly gl: WebGLRenderer;
  private readonly layers: LayerRenderer;
  private readonly mixer: Mixer;
  private next: Scene | null = null;
  private scene: Scene | null = null;
  private readonly sceneLayers: SceneLayers;
  private isStale = false;
  private developed = 0;
  private timer: ReturnType<typeof setTimeout> | null = null;
  private readonly onStale: () => void;

  constructor(gl: WebGLRenderer, onStale: () => void, maxSamples = 64) {
    this.gl = gl;
    this.sceneLayers = new SceneLayers(maxSamples);
    this.onStale = onStale;
    this.layers = new LayerRenderer(gl, { maxSamples, coarseFirst: true });
    this.mixer = new Mixer(gl);
  }

  /** Asks for a scene; it is taken up as soon as the one before has something to show. */
  show(scene: Scene): void {
    this.next = scene;
    this.keepShowing(scene);
    this.schedule();
  }

  /** Until a scene of another layout can be drawn, the one before is drawn into its rectangles. */
  private keepShowing({ tiles }: Scene): void {
    const { scene } = this;
    if (!scene || scene.tiles.length !== tiles.length) return;
    const moved = scene.tiles.map((tile, i) => {
      const { x, y, width, height } = tiles[i] as Tile;
      return { ...tile, x, y, width, height };
    });
    const isSame = moved.every((tile, i) => {
      const { x, y, width, height } = scene.tiles[i] as Tile;
      return tile.x === x && tile.y === y && tile.width === width && tile.height === height;
    });
    if (isSame) return;
    this.scene = { ...scene, tiles: moved };
    this.isStale = true;
    if (this.layers.isShowable) this.onStale();
  }

  private schedule(): void {
    this.timer ??= setTimeout(() => {
      this.timer = null;
      this.work(performance.now());
    }, pollMilliseconds);
  }

  get state(): EngineState {
    const { counters, samples, isConverged, progress } = this.layers;
    return {
      counters,
      developed: this.developed,
      samples,
      progress,
      isConverged: isConverged && !this.next && !this.isStale,
      texelsPerJob: this.layers.pace.texels,
    };
  }

  /** Gives the card its next job, if it is free, and comes back while there is more to do. */
  private work(now: number): void {
    if (this.next && (!this.scene || this.layers.isShowable)) this.takeUp(this.next);
    if (this.layers.step(now)) this.isStale = true;
    if (this.isStale && this.layers.isShowable) this.onStale();
    if (this.next || !this.layers.isConverged) this.schedule();
  }

  /** Draws the screen if anything changed since it was last drawn. */
  draw(): void {
    if (this.isStale && this.scene && this.layers.isShowable) this.develop(this.scene);
  }

  private takeUp(scene: Scene): void {
    this.next = null;
    this.scene = scene;
    this.isStale = true;
    const stage = scene.tiles[0]?.world.stage;
    if (!stage) {
      this.sceneLayers.clear();
      return;
    }
    const wanted = layersOfScene(scene);
    const keys = [...wanted.keys()];
    const layers = this.layers.want(stage, [...wanted.values()], scene.size, this.sceneLayers.shownOn(keys));
    this.sceneLayers.set(new Map(keys.map((key, i) => [key, layers[i] as StoredLayer])));
  }

  private develop(scene: Scene): void {
    this.isStale = false;
    this.developed++;
    this.gl.setRenderTarget(null);
    this.gl.setScissorTest(false);
    this.gl.clear();
    for (const tile of scene.tiles) {
      const mixes = tile.frames.map(({ frame, weight }) => this.sceneLayers.frameMix(tile, frame, weight));
      const picture = this.mixer.mix(mixes, tile.mode, scene.size.width, scene.size.height);
      const response = tile.frames[0]?.frame.development.response ?? 'soft';
      this.mixer.develop(picture, tile, response, tile.marksFull);
    }
  }

  /** Starts over after a lost context. */
  restart(): void {
    this.layers.reset();
    this.sceneLayers.clear();
    if (this.scene && !this.next) this.next = this.scene;
    this.scene = null;
    this.schedule();
  }

  dispose(): void {
    if (this.timer) clearTimeout(this.timer);
    this.timer = null;
    this.layers.dispose();
    this.mixer.dispose();
  }
}

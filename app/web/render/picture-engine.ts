import type { WebGLRenderer } from 'three';
import type { Engine, EngineState } from './engine.ts';
import { LayerRenderer } from './layer-renderer.ts';
import type { StoredLayer } from './layer-store.ts';
import { layersOfScene, skiesOfScene } from './layers-of-scene.ts';
import { resizedFor } from './resized-for.ts';
import type { Scene } from './scene.ts';
import { SceneLayers } from './scene-layers.ts';
import type { Screens } from './screens.ts';
import type { SkyDrawer } from './sky-drawer.ts';
import { SkyPictures } from './sky-pictures.ts';
import { TileDrawer } from './tile-drawer.ts';

/** How long after giving the card a job it is asked whether it is done, in milliseconds. */
const pollMilliseconds = 3;

/**
 * Runs layers, mixing and developing for what is on the screens, a little at a time, and stops when done. Tracing goes on
 * between animation frames; the screens are drawn when the page asks, after `onStale` told it to.
 */
export class PictureEngine implements Engine {
  private readonly gl: WebGLRenderer;
  private readonly layers: LayerRenderer;
  private readonly skies = new SkyPictures(() => this.skyDrawn());
  private readonly sceneLayers = new SceneLayers(this.skies);
  private readonly drawer: TileDrawer;
  private next: Scene | null = null;
  private scene: Scene | null = null;
  private isStale = false;
  private isPaused = false;
  private isResting = false;
  private developed = 0;
  private layerCount = 0;
  private timer: ReturnType<typeof setTimeout> | null = null;
  private readonly onStale: () => void;

  constructor(gl: WebGLRenderer, screens: Screens, onStale: () => void) {
    this.gl = gl;
    this.onStale = onStale;
    this.layers = new LayerRenderer(gl);
    this.drawer = new TileDrawer(gl, screens, this.sceneLayers);
  }

  /** Asks for a scene; it is taken up as soon as the one before has something to show. */
  show(scene: Scene): void {
    this.next = scene;
    this.keepShowing(scene);
    this.schedule();
  }

  /** Until a scene of another layout can be drawn, the one before is drawn onto its screens. */
  private keepShowing(next: Scene): void {
    const resized = this.scene && resizedFor(this.scene, next);
    if (!resized) return;
    this.scene = resized;
    this.isStale = true;
    if (this.canDraw) this.onStale();
  }

  /** Has skies drawn by another from now on. */
  setSkyDrawer(drawer: SkyDrawer): void {
    this.skies.setDrawer(drawer);
  }

  private skyDrawn(): void {
    this.isStale = true;
    this.schedule();
  }

  private schedule(): void {
    this.timer ??= setTimeout(() => {
      this.timer = null;
      this.work(performance.now());
    }, pollMilliseconds);
  }

  /** Whether there is something to draw. */
  private get canDraw(): boolean {
    return this.scene !== null && (this.scene.showsEarly || this.layers.wanted.isShowable);
  }

  /** Whether the card is lost: what it is told then comes to nothing. It counts as lost until `restart`. */
  private get isLost(): boolean {
    return this.isPaused || this.gl.getContext().isContextLost();
  }

  /** Stops tracing and drawing, because the card was lost, until `restart`. */
  pause(): void {
    this.isPaused = true;
  }

  get state(): EngineState {
    const { samples, isConverged, progress } = this.layers.wanted;
    return {
      counters: this.layers.counters,
      layers: this.layerCount,
      developed: this.developed,
      samples,
      // nothing is taken up yet after a restart
      progress: this.next && !this.scene ? 0 : progress,
      isConverged: isConverged && this.skies.isSettled && !this.next && !this.isStale && !this.isLost,
      texelsPerJob: this.layers.pace.texels,
    };
  }

  /** Gives the card its next job, if it is free, and comes back while there is more to do. */
  private work(now: number): void {
    if (this.isLost || this.isResting) return;
    if (this.next && (!this.scene || this.canDraw)) this.takeUp(this.next);
    if (this.layers.step(now)) this.isStale = true;
    if (this.isStale && this.canDraw) this.onStale();
    if (this.next || !this.layers.wanted.isConverged) this.schedule();
  }

  setResting(isResting: boolean): void {
    this.isResting = isResting;
    if (!isResting) this.schedule();
  }

  /** Draws what there is once more, onto screens that were put up since. */
  refresh(): void {
    this.drawer.forget();
    this.isStale = this.scene !== null;
    if (this.canDraw) this.onStale();
  }

  /** Draws the screens if anything changed since they were last drawn. */
  draw(ratio: number): void {
    if (this.isStale && this.scene && this.canDraw && !this.isLost) this.develop(this.scene, ratio);
  }

  private takeUp(scene: Scene): void {
    this.next = null;
    this.scene = scene;
    this.drawer.forget();
    this.isStale = true;
    const stage = scene.tiles[0]?.world.stage;
    const wanted = layersOfScene(scene);
    const keys = [...wanted.keys()];
    const layers = stage
      ? this.layers.want(stage, [...wanted.values()], scene.size, scene.samples, this.sceneLayers.shownOn(keys))
      : this.layers.wantNothing();
    this.skies.want(skiesOfScene(scene));
    this.sceneLayers.set(new Map(keys.map((key, i) => [key, layers[i] as StoredLayer])), scene.samples);
    this.layerCount = new Set(layers).size;
  }

  private develop(scene: Scene, ratio: number): void {
    this.isStale = false;
    this.developed++;
    if (this.drawer.draw(scene, this.layers.wanted.samples, ratio)) this.skies.pictureShown();
  }

  /** Gives the card's canvas back; it grows again with what is drawn next. */
  shrink(): void {
    this.gl.setSize(1, 1, false);
  }

  /** Traces all anew, as after a lost context. */
  restart(): void {
    this.layers.reset();
    this.sceneLayers.clear();
    this.skies.clear();
    if (this.scene && !this.next) this.next = this.scene;
    this.scene = null;
    this.isPaused = false;
    this.schedule();
  }

  forgetCounts(): void {
    this.developed = 0;
    this.layers.forgetCounts();
  }
}

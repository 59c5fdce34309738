import { WebGLRenderer } from 'three';
import { type EngineState, PictureEngine } from './picture-engine.ts';
import type { Scene, Tile } from './scene.ts';
import { Screens } from './screens.ts';
import { plainSkyDrawer, type SkyDrawer } from './sky-drawer.ts';

declare global {
  interface Window {
    /** For tests and benches: what the renderer has done so far. */
    lampfallProbe?: () => EngineState;
    /** For tests: the one canvas that has the graphics card. */
    lampfallCard?: () => HTMLCanvasElement;
  }
}

/** Device pixels of a CSS pixel that pictures are drawn with. */
export const pixelRatio = (): number => Math.min(window.devicePixelRatio || 1, 1.5);

/** A scene printed apart from what is on the page. */
export interface PrintOrder {
  readonly scene: Scene;
  /** Told now and then how far it is, 0 to 1. */
  readonly onProgress: (share: number) => void;
  readonly signal: AbortSignal;
}

/** How often a print's progress is looked at, milliseconds. */
const lookMilliseconds = 60;

/**
 * The one place of the page that has the graphics card: all rooms show their pictures through it, so that they share
 * layers, and one room at a time says what is shown.
 */
export class Darkroom {
  private readonly screens = new Screens();
  private readonly engine: PictureEngine;
  private readonly listeners = new Set<(isLost: boolean) => void>();
  private scene: Scene | null = null;
  private prints = 0;
  private isAsked = false;
  isLost = false;

  constructor() {
    const gl = new WebGLRenderer({ antialias: false, alpha: false, powerPreference: 'high-performance' });
    gl.setPixelRatio(1);
    const card = gl.domElement;
    this.engine = new PictureEngine(gl, this.screens, () => this.ask());
    this.engine.setSkyDrawer(skyDrawer);
    card.addEventListener('webglcontextlost', (event) => {
      event.preventDefault();
      this.engine.pause();
      this.tell(true);
    });
    card.addEventListener('webglcontextrestored', () => {
      this.engine.restart();
      this.tell(false);
    });
    window.lampfallProbe = () => this.state;
    window.lampfallCard = () => card;
  }

  get state(): EngineState {
    return this.engine.state;
  }

  private tell(isLost: boolean): void {
    this.isLost = isLost;
    for (const listener of this.listeners) listener(isLost);
  }

  /** Tells when the card is lost and when it is back; the answer ends it. */
  onLost(listener: (isLost: boolean) => void): () => void {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  }

  /** Puts a canvas of the page up as a screen and fills it if there is something to show; the answer takes it down again. */
  addScreen(name: string, canvas: HTMLCanvasElement): () => void {
    const takeDown = this.screens.add(name, canvas);
    this.engine.refresh();
    return takeDown;
  }

  /** What a screen shows now; null = there is no such screen. */
  screen(name: string): HTMLCanvasElement | null {
    return this.screens.get(name);
  }

  private ask(): void {
    if (this.isAsked) return;
    this.isAsked = true;
    requestAnimationFrame(() => {
      this.isAsked = false;
      this.drawNow();
    });
  }

  /** Draws the screens without waiting for an animation frame: a hidden page has none. */
  drawNow(): void {
    this.engine.draw(pixelRatio());
  }

  /** Shows a scene, as soon as it can be. While something is printed it waits. */
  show(scene: Scene): void {
    this.scene = scene;
    if (this.prints === 0) this.engine.show(scene);
  }

  /** Nothing is to be seen, and nothing is worked on. */
  rest(): void {
    this.show({ tiles: [], size: { width: 1, height: 1 }, samples: 1, showsEarly: true });
  }

  /** Forgets all that was traced, and the counts of it. */
  startOver(): void {
    this.scene = null;
    this.rest();
    this.engine.restart();
    this.engine.forgetCounts();
  }

  /**
   * Develops a scene on canvases of its own, by screen; null when it was called off. While the card is lost it waits. What
   * was on the page comes back after.
   */
  async print({ scene, onProgress, signal }: PrintOrder): Promise<Map<string, HTMLCanvasElement> | null> {
    const sheets = new Map(scene.tiles.map(({ screen }) => [`print/${screen}`, document.createElement('canvas')]));
    const takeDown = [...sheets].map(([name, canvas]) => this.screens.add(name, canvas));
    const tiles = scene.tiles.map((tile): Tile => ({ ...tile, screen: `print/${tile.screen}` }));
    this.prints++;
    this.engine.show({ ...scene, tiles, showsEarly: true });
    try {
      for (;;) {
        await new Promise((resolve) => setTimeout(resolve, lookMilliseconds));
        if (signal.aborted) return null;
        this.drawNow();
        const { progress, isConverged } = this.engine.state;
        onProgress(progress);
        if (isConverged)
          return new Map(scene.tiles.map(({ screen }) => [screen, sheets.get(`print/${screen}`) as never]));
      }
    } finally {
      for (const end of takeDown) end();
      this.prints--;
      if (this.prints === 0) {
        this.engine.shrink();
        if (this.scene) this.engine.show(this.scene);
      }
    }
  }
}

let only: Darkroom | null = null;
let skyDrawer: SkyDrawer = plainSkyDrawer;

/** Who draws skies for the darkroom; to be told before it is set up. */
export const drawSkiesWith = (drawer: SkyDrawer): void => {
  skyDrawer = drawer;
};

/** The page's darkroom, set up when first asked for. Ask `canDrawPicture` before. */
export const theDarkroom = (): Darkroom => {
  only ??= new Darkroom();
  return only;
};

/** Forgets what the page's darkroom has traced, if there is one. */
export const startDarkroomOver = (): void => only?.startOver();

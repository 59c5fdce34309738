import type { EngineState } from './engine.ts';
import { type Drawers, Engines, type Light } from './engines.ts';
import { type PrintOrder, printScene } from './print-scene.ts';
import type { Scene } from './scene.ts';
import { Screens } from './screens.ts';

declare global {
  interface Window {
    /** For tests and benches: what the renderer has done so far. */
    lampfallProbe?: () => EngineState;
  }
}

/** Device pixels of a CSS pixel that pictures are drawn with. */
export const pixelRatio = (): number => Math.min(window.devicePixelRatio || 1, 1.5);

/**
 * The one place of the page that has the graphics card: all rooms show their pictures through it, so that they share
 * layers, and one room at a time says what is shown.
 */
export class Darkroom {
  private readonly screens = new Screens();
  private readonly engines: Engines;
  private scene: Scene | null = null;
  private prints = 0;
  private isAsked = false;

  constructor(drawers: Drawers) {
    this.engines = new Engines(this.screens, drawers, () => this.ask());
    window.lampfallProbe = () => this.state;
    document.addEventListener('visibilitychange', () => this.restIfHidden());
    this.restIfHidden();
  }

  /** Whether the card ever drew here; where it did not, none was lost. */
  get hasHadCard(): boolean {
    return this.engines.hasHadCard;
  }

  /** Who draws. */
  get light(): Light {
    return this.engines.light;
  }

  /** Tells when another draws; the answer ends it. */
  onLight(listener: () => void): () => void {
    return this.engines.onLight(listener);
  }

  /** Has the processor try once more. */
  tryAgain(): void {
    this.engines.tryAgain();
  }

  get state(): EngineState {
    return this.engines.current.state;
  }

  /** Pictures that nobody sees are not traced; what is printed is. */
  private restIfHidden(): void {
    this.engines.setResting(document.hidden && this.prints === 0);
  }

  /** Puts a canvas of the page up as a screen and fills it if there is something to show; the answer takes it down again. */
  addScreen(name: string, canvas: HTMLCanvasElement): () => void {
    const takeDown = this.screens.add(name, canvas);
    this.engines.current.refresh();
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
    this.engines.current.draw(pixelRatio());
  }

  /** Shows a scene, as soon as it can be. While something is printed it waits. */
  show(scene: Scene): void {
    this.scene = scene;
    if (this.prints === 0) this.engines.show(scene);
  }

  /** Nothing is to be seen, and nothing is worked on. */
  rest(): void {
    this.show({ tiles: [], size: { width: 1, height: 1 }, samples: 1, showsEarly: true });
  }

  /** Forgets all that was traced, and the counts of it. */
  startOver(): void {
    this.scene = null;
    this.rest();
    this.engines.current.restart();
    this.engines.current.forgetCounts();
  }

  /**
   * Develops a scene on canvases of its own, by screen; null when it was called off. While the card is lost it waits. What
   * was on the page comes back after.
   *
   * @throws where neither the card nor the processor can draw it
   */
  print(order: PrintOrder): Promise<Map<string, HTMLCanvasElement> | null> {
    const begin = (scene: Scene) => {
      this.prints++;
      this.restIfHidden();
      this.engines.show(scene);
    };
    const look = () => {
      // what could not draw before is tried anew
      if (this.engines.hasFailed) return null;
      this.drawNow();
      return this.state;
    };
    const end = () => {
      this.prints--;
      this.restIfHidden();
      if (this.prints > 0) return;
      this.engines.current.shrink();
      if (this.scene) this.engines.show(this.scene);
    };
    return printScene(order, { screens: this.screens, begin, look, end });
  }
}

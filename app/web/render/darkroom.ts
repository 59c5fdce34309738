import { graphicsCard } from './capability.ts';
import type { Engine, EngineState } from './engine.ts';
import { PictureEngine } from './picture-engine.ts';
import { type PrintOrder, printScene } from './print-scene.ts';
import type { Scene } from './scene.ts';
import { Screens } from './screens.ts';
import { plainSkyDrawer, type SkyDrawer } from './sky-drawer.ts';
import { type SlowDrawer, SlowEngine } from './slow-engine.ts';
import { takeCard } from './take-card.ts';

declare global {
  interface Window {
    /** For tests and benches: what the renderer has done so far. */
    lampfallProbe?: () => EngineState;
    /** For tests: the one canvas that has the graphics card. */
    lampfallCard?: () => HTMLCanvasElement;
    /** For tests: how long a lost card is waited for, milliseconds. */
    lampfallPatience?: number;
  }
}

/** Device pixels of a CSS pixel that pictures are drawn with. */
export const pixelRatio = (): number => Math.min(window.devicePixelRatio || 1, 1.5);

/** How long a lost card is waited for before the processor draws, milliseconds; tests wait less. */
const patienceMilliseconds = (): number => window.lampfallPatience ?? 8000;

/**
 * The one place of the page that has the graphics card: all rooms show their pictures through it, so that they share
 * layers, and one room at a time says what is shown.
 */
export class Darkroom {
  private readonly screens = new Screens();
  private readonly card: PictureEngine | null;
  private readonly slow = new SlowEngine(this.screens, slowDrawer, () => this.slowStale());
  private readonly listeners = new Set<() => void>();
  private scene: Scene | null = null;
  private prints = 0;
  private isAsked = false;
  private patience: ReturnType<typeof setTimeout> | null = null;
  /** Who draws: the card, nobody while it is lost, the processor in its place; none where that fails too. */
  light: 'card' | 'lost' | 'slow' | 'none';
  /** What is drawn just now, on the page or for a print. */
  private asked: Scene | null = null;

  constructor() {
    this.card = graphicsCard().hasFloats ? this.takeCard() : null;
    this.light = this.card ? 'card' : 'slow';
    window.lampfallProbe = () => this.state;
    document.addEventListener('visibilitychange', () => this.restIfHidden());
    this.restIfHidden();
  }

  /** Whether the card ever drew here; where it did not, none was lost. */
  get hasHadCard(): boolean {
    return this.card !== null;
  }

  private takeCard(): PictureEngine | null {
    const gl = takeCard({ onLost: () => this.lose(), onBack: () => this.comeBack() });
    if (!gl) return null;
    const card = new PictureEngine(gl, this.screens, () => this.ask());
    card.setSkyDrawer(skyDrawer);
    window.lampfallCard = () => gl.domElement;
    return card;
  }

  private lose(): void {
    this.card?.pause();
    this.change('lost');
    this.patience = setTimeout(() => this.goSlow(), patienceMilliseconds());
  }

  private comeBack(): void {
    if (this.patience) clearTimeout(this.patience);
    this.slow.end();
    if (this.asked) this.card?.show(this.asked);
    this.card?.restart();
    this.change('card');
  }

  private get engine(): Engine {
    return this.card && (this.light === 'card' || this.light === 'lost') ? this.card : this.slow;
  }

  /** The card does not come back: the processor takes over until it does. */
  private goSlow(): void {
    this.change('slow');
    if (this.asked) this.slow.show(this.asked);
  }

  /** Pictures that nobody sees are not traced; what is printed is. */
  private restIfHidden(): void {
    const isResting = document.hidden && this.prints === 0;
    for (const engine of [this.card, this.slow]) engine?.setResting(isResting);
  }

  private slowStale(): void {
    const light = this.slow.hasFailed ? 'none' : 'slow';
    if (light !== this.light) this.change(light);
    this.ask();
  }

  /** Has the processor try once more. */
  tryAgain(): void {
    this.change('slow');
    this.slow.restart();
  }

  private draw(scene: Scene): void {
    this.asked = scene;
    this.engine.show(scene);
  }

  get state(): EngineState {
    return this.engine.state;
  }

  private change(light: Darkroom['light']): void {
    this.light = light;
    for (const listener of this.listeners) listener();
  }

  /** Tells when another draws; the answer ends it. */
  onLight(listener: () => void): () => void {
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
    if (this.prints === 0) this.draw(scene);
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
   *
   * @throws where neither the card nor the processor can draw it
   */
  print(order: PrintOrder): Promise<Map<string, HTMLCanvasElement> | null> {
    const begin = (scene: Scene) => {
      this.prints++;
      this.restIfHidden();
      this.draw(scene);
    };
    const look = () => {
      // what could not draw before is tried anew
      if (this.light === 'none' && this.slow.hasFailed) return null;
      this.drawNow();
      return this.state;
    };
    const end = () => {
      this.prints--;
      this.restIfHidden();
      if (this.prints > 0) return;
      this.engine.shrink();
      if (this.scene) this.draw(this.scene);
    };
    return printScene(order, { screens: this.screens, begin, look, end });
  }
}

let only: Darkroom | null = null;
let skyDrawer: SkyDrawer = plainSkyDrawer;
let slowDrawer: SlowDrawer = {
  draw: (_order, _onStep, onFail) => onFail(),
  stop: () => undefined,
  end: () => undefined,
};

/** Who draws skies for the darkroom; to be told before it is set up. */
export const drawSkiesWith = (drawer: SkyDrawer): void => {
  skyDrawer = drawer;
};

/** Who draws pictures where the graphics card can’t; to be told before the darkroom is set up. */
export const drawSlowlyWith = (drawer: SlowDrawer): void => {
  slowDrawer = drawer;
};

/** The page's darkroom, set up when first asked for. */
export const theDarkroom = (): Darkroom => {
  only ??= new Darkroom();
  return only;
};

/** Forgets what the page's darkroom has traced, if there is one. */
export const startDarkroomOver = (): void => only?.startOver();

import { graphicsCard } from './capability.ts';
import type { Engine } from './engine.ts';
import { PictureEngine } from './picture-engine.ts';
import type { Scene } from './scene.ts';
import type { Screens } from './screens.ts';
import type { SkyDrawer } from './sky-drawer.ts';
import { type SlowDrawer, SlowEngine } from './slow-engine.ts';
import { takeCard } from './take-card.ts';

declare global {
  interface Window {
    /** For tests: the one canvas that has the graphics card. */
    lampfallCard?: () => HTMLCanvasElement;
    /** For tests: how long a lost card is waited for, milliseconds. */
    lampfallPatience?: number;
  }
}

/** Who draws: the card, nobody while it is lost, the processor in its place; none where that fails too. */
export type Light = 'card' | 'lost' | 'slow' | 'none';

/** Who draws for the engines, off the page’s own thread. */
export interface Drawers {
  readonly sky: SkyDrawer;
  readonly slow: SlowDrawer;
}

/** How long a lost card is waited for before the processor draws, milliseconds; tests wait less. */
const patienceMilliseconds = (): number => window.lampfallPatience ?? 8000;

/** The graphics card’s engine and the processor’s, which takes over where there is no card or it does not come back. */
export class Engines {
  light: Light;
  private readonly card: PictureEngine | null;
  private readonly slow: SlowEngine;
  private readonly listeners = new Set<() => void>();
  private patience: ReturnType<typeof setTimeout> | null = null;
  private readonly onStale: () => void;
  /** What is drawn just now, on the page or for a print. */
  private asked: Scene | null = null;

  /** @param onStale told when a screen could be drawn anew */
  constructor(screens: Screens, drawers: Drawers, onStale: () => void) {
    this.onStale = onStale;
    this.slow = new SlowEngine(screens, drawers.slow, () => this.slowStale());
    this.card = graphicsCard().hasFloats ? this.takeCard(screens, drawers.sky) : null;
    this.light = this.card ? 'card' : 'slow';
  }

  private takeCard(screens: Screens, sky: SkyDrawer): PictureEngine | null {
    const gl = takeCard({ onLost: () => this.lose(), onBack: () => this.comeBack() });
    if (!gl) return null;
    const card = new PictureEngine(gl, screens, this.onStale);
    card.setSkyDrawer(sky);
    window.lampfallCard = () => gl.domElement;
    return card;
  }

  /** Whether the card ever drew here; where it did not, none was lost. */
  get hasHadCard(): boolean {
    return this.card !== null;
  }

  /** The one that draws now, or will when its card is back. */
  get current(): Engine {
    return this.card && (this.light === 'card' || this.light === 'lost') ? this.card : this.slow;
  }

  /** Whether all who could draw have failed on the last scene. */
  get hasFailed(): boolean {
    return this.light === 'none' && this.slow.hasFailed;
  }

  show(scene: Scene): void {
    this.asked = scene;
    this.current.show(scene);
  }

  setResting(isResting: boolean): void {
    for (const engine of [this.card, this.slow]) engine?.setResting(isResting);
  }

  /** Has the processor try once more. */
  tryAgain(): void {
    this.change('slow');
    this.slow.restart();
  }

  /** Tells when another draws; the answer ends it. */
  onLight(listener: () => void): () => void {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  }

  private change(light: Light): void {
    this.light = light;
    for (const listener of this.listeners) listener();
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

  /** The card does not come back: the processor takes over until it does. */
  private goSlow(): void {
    this.change('slow');
    if (this.asked) this.slow.show(this.asked);
  }

  private slowStale(): void {
    const light = this.slow.hasFailed ? 'none' : 'slow';
    if (light !== this.light) this.change(light);
    this.onStale();
  }
}

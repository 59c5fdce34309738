import type {
  DrawnPicture,
  DrawnStep,
  OrderedPicture,
  PictureOrder,
  ShownFrames,
} from '../../../core/trace/picture-order.ts';
import type { Engine, EngineState } from './engine.ts';
import { pictureStands } from './first-picture.ts';
import type { Scene, Shown, Tile } from './scene.ts';
import type { Screens } from './screens.ts';
import { slowImage } from './slow-image.ts';

/** Draws pictures by the processor, somewhere off the page’s own thread. */
export interface SlowDrawer {
  draw(order: PictureOrder, onStep: (step: DrawnStep) => void, onFail: () => void): void;
  /** Nothing is wanted just now; what is kept for the next order stays. */
  stop(): void;
  /** Gives all back. */
  end(): void;
}

const framesOf = ({ frames, mode, world }: Shown): ShownFrames => ({ frames, mode, bounces: world.bounces });

const orderedOf = (tile: Tile): OrderedPicture => ({
  name: tile.screen,
  shown: framesOf(tile),
  against: tile.look === 'difference' && tile.against ? framesOf(tile.against) : null,
  isMap: tile.look !== 'picture',
  marksFull: tile.marksFull,
});

/** Shows scenes without the graphics card, by the reference estimator: the same light and colours, small first, and slowly. */
export class SlowEngine implements Engine {
  private readonly screens: Screens;
  private readonly drawer: SlowDrawer;
  private readonly onStale: () => void;
  private scene: Scene | null = null;
  private step: DrawnStep | null = null;
  private drawn = new Map<string, DrawnPicture>();
  private isStale = false;
  private isSettled = true;
  private isResting = false;
  private developed = 0;
  /** Whether even the processor could not draw the last scene. */
  hasFailed = false;

  constructor(screens: Screens, drawer: SlowDrawer, onStale: () => void) {
    this.screens = screens;
    this.drawer = drawer;
    this.onStale = onStale;
  }

  show(scene: Scene): void {
    this.scene = scene;
    this.step = null;
    this.hasFailed = false;
    const stage = scene.tiles[0]?.world.stage;
    this.isSettled = stage === undefined;
    if (!stage) this.stop();
    if (!stage || this.isResting) return;
    // what was drawn before stays until the next is there
    const { size, samples, tiles } = scene;
    this.drawer.draw(
      { stage, pictures: tiles.map(orderedOf), size, samples },
      (step) => this.take(step),
      () => this.fail(),
    );
  }

  /** The next room may want the same light: what is kept of it stays, but nothing is worked on. */
  private stop(): void {
    this.drawer.stop();
    this.drawn.clear();
    this.isStale = false;
  }

  setResting(isResting: boolean): void {
    if (isResting === this.isResting) return;
    this.isResting = isResting;
    if (isResting) this.drawer.end();
    else if (this.scene && !this.isSettled) this.show(this.scene);
  }

  private take(step: DrawnStep): void {
    this.step = step;
    this.isSettled = step.progress >= 1;
    this.drawn = new Map(step.pictures.map((picture) => [picture.name, picture]));
    this.isStale = true;
    this.onStale();
  }

  private fail(): void {
    this.hasFailed = true;
    this.isSettled = true;
    this.onStale();
  }

  draw(): void {
    if (!this.isStale || !this.scene) return;
    this.isStale = false;
    this.developed++;
    for (const tile of this.scene.tiles) {
      const picture = this.drawn.get(tile.screen);
      const image = picture && slowImage(picture);
      if (!image) continue;
      this.screens.paint(tile.screen, image, tile, tile.look === 'picture');
      pictureStands(picture.width < this.scene.size.width ? 0 : (this.step?.samples ?? 0));
    }
  }

  refresh(): void {
    this.isStale = this.drawn.size > 0;
    if (this.isStale) this.onStale();
  }

  restart(): void {
    this.drawn.clear();
    if (this.scene) this.show(this.scene);
  }

  /** Nothing is drawn any more, and nothing is held. */
  end(): void {
    this.drawer.end();
    [this.scene, this.step, this.isSettled] = [null, null, true];
    this.drawn.clear();
  }

  shrink(): void {
    // pictures are as large as they are drawn
  }

  forgetCounts(): void {
    this.developed = 0;
  }

  get state(): EngineState {
    return {
      counters: { hits: 0, light: {} },
      layers: 0,
      developed: this.developed,
      samples: this.step?.samples ?? 0,
      isConverged: this.isSettled && !this.isStale,
      progress: this.isSettled ? 1 : (this.step?.progress ?? 0),
      texelsPerJob: {},
    };
  }
}

import type { Texture } from 'three';
import { plainSkyDrawer, type SkyDrawer } from './sky-drawer.ts';
import { type SkyOrder, SkySlots } from './sky-slots.ts';

/** Failures in a row after which skies are drawn without the worker. */
const mostFailures = 1;

/** Keeps the skies that are wanted drawn, one after the other; each stays until the next for its slot is there. */
export class SkyPictures {
  private readonly slots = new SkySlots();
  private atWork = false;
  private failures = 0;
  private readonly onDrawn: () => void;
  private drawer: SkyDrawer = plainSkyDrawer;

  constructor(onDrawn: () => void) {
    this.onDrawn = onDrawn;
  }

  /** Has skies drawn by another from now on. */
  setDrawer(drawer: SkyDrawer): void {
    this.drawer = drawer;
    drawer.onMore(() => {
      if (this.drawer === drawer) this.drawAnew();
    });
    this.drawAnew();
  }

  private drawAnew(): void {
    this.slots.outdate();
    this.next();
    this.onDrawn();
  }

  /** Told when a picture is on a screen. */
  pictureShown(): void {
    if (!this.slots.isEmpty) this.drawer.pictureShown();
  }

  want(orders: readonly SkyOrder[]): void {
    this.slots.want(orders);
    this.next();
  }

  /** Whether everything that is wanted is there, stars and all. */
  get isSettled(): boolean {
    return this.slots.isEmpty || (!this.slots.waiting && this.drawer.isComplete);
  }

  private next(): void {
    const order = this.slots.waiting;
    if (this.atWork || !order) return;
    this.atWork = true;
    const key = this.slots.keyNow(order);
    this.drawer.draw(order).then(
      (values) => {
        this.atWork = false;
        this.failures = 0;
        this.slots.keep(order, key, values);
        this.next();
        this.onDrawn();
      },
      () => {
        this.atWork = false;
        this.failed(key);
      },
    );
  }

  /** What fails once is asked for once more, then drawn here without stars; where that fails too the small sky stays. */
  private failed(key: string): void {
    this.failures++;
    if (this.failures > mostFailures && this.drawer !== plainSkyDrawer) {
      this.setDrawer(plainSkyDrawer);
      return;
    }
    if (this.failures > mostFailures) {
      this.slots.settleWithout(key);
      this.onDrawn();
    }
    this.next();
  }

  of(slot: string): Texture | undefined {
    return this.slots.of(slot);
  }

  /** A number that changes when the sky of a slot does; 0 while there is none. */
  numberOf(slot: string): number {
    return this.slots.numberOf(slot);
  }

  /** Lets go of everything; what is wanted next is drawn anew. */
  clear(): void {
    this.slots.clear();
  }
}

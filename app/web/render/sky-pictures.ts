import { DataTexture, FloatType, NearestFilter, RGBAFormat, type Texture } from 'three';
import type { Size } from './layer-store.ts';
import { plainSkyDrawer, type SkyDrawer, type SkyView } from './sky-drawer.ts';

/** A sky that is wanted as a picture. */
export interface SkyOrder extends SkyView {
  /** What it is for: until it is there, the one before for the same purpose is shown. */
  readonly slot: string;
}

const keyOf = ({ view, sky, size }: SkyOrder): string => JSON.stringify([view, sky, size]);
const placeOf = ({ view, size }: SkyOrder): string => JSON.stringify([view, size]);

interface DrawnSky {
  readonly key: string;
  /** View and size: seen elsewhere it would lie in the wrong place. */
  readonly place: string;
  readonly texture: DataTexture;
  /** Grows with each sky drawn. */
  readonly number: number;
}

const textureOf = (values: Float32Array<ArrayBuffer>, { width, height }: Size): DataTexture => {
  const texture = new DataTexture(values, width, height, RGBAFormat, FloatType);
  texture.minFilter = NearestFilter;
  texture.magFilter = NearestFilter;
  texture.needsUpdate = true;
  return texture;
};

/** Keeps the skies that are wanted drawn, one after the other; each stays until the next for its slot is there. */
export class SkyPictures {
  /** What is wanted, by slot, and what is there for it: the very one, or one from before. */
  private slots = new Map<string, { readonly order: SkyOrder; shown: DrawnSky | null }>();
  private atWork = false;
  private count = 0;
  /** Counts up when all that was drawn is out of date. */
  private generation = 0;
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
    this.generation++;
    this.next();
    this.onDrawn();
  }

  /** Told when a picture is on a screen. */
  pictureShown(): void {
    if (this.slots.size > 0) this.drawer.pictureShown();
  }

  want(orders: readonly SkyOrder[]): void {
    const before = this.slots;
    const there = [...before.values()].flatMap(({ shown }) => shown ?? []);
    this.slots = new Map(
      orders.map((order) => {
        const [key, place] = [this.keyNow(order), placeOf(order)];
        const last = before.get(order.slot)?.shown;
        const shown = there.find((each) => each.key === key) ?? (last?.place === place ? last : null);
        return [order.slot, { order, shown }];
      }),
    );
    this.dropUnused(there);
    this.next();
  }

  private dropUnused(textures: readonly DrawnSky[]): void {
    const used = new Set([...this.slots.values()].map(({ shown }) => shown));
    for (const each of textures) if (!used.has(each)) each.texture.dispose();
  }

  private keyNow(order: SkyOrder): string {
    return `${this.generation}|${keyOf(order)}`;
  }

  private get waiting(): SkyOrder | undefined {
    return [...this.slots.values()].find(({ order, shown }) => shown?.key !== this.keyNow(order))?.order;
  }

  /** Whether everything that is wanted is there, stars and all. */
  get isSettled(): boolean {
    return this.slots.size === 0 || (!this.waiting && this.drawer.isComplete);
  }

  private next(): void {
    const order = this.waiting;
    if (this.atWork || !order) return;
    this.atWork = true;
    const key = this.keyNow(order);
    this.drawer.draw(order).then(
      (values) => {
        this.atWork = false;
        this.keep(order, key, values);
        this.next();
        this.onDrawn();
      },
      () => {
        this.atWork = false;
        // who can't draw is not asked again
        if (this.drawer !== plainSkyDrawer) this.setDrawer(plainSkyDrawer);
      },
    );
  }

  private keep(order: SkyOrder, key: string, values: Float32Array<ArrayBuffer>): void {
    const place = placeOf(order);
    const drawn = { key, place, texture: textureOf(values, order.size), number: ++this.count };
    const before: DrawnSky[] = [drawn];
    for (const slot of this.slots.values()) {
      const isIt = this.keyNow(slot.order) === key;
      const isNearer = slot.order.slot === order.slot && placeOf(slot.order) === place;
      if (!isIt && !isNearer) continue;
      if (slot.shown) before.push(slot.shown);
      slot.shown = drawn;
    }
    this.dropUnused(before);
  }

  of(slot: string): Texture | undefined {
    return this.slots.get(slot)?.shown?.texture;
  }

  /** A number that changes when the sky of a slot does; 0 while there is none. */
  numberOf(slot: string): number {
    return this.slots.get(slot)?.shown?.number ?? 0;
  }

  /** Lets go of everything; what is wanted next is drawn anew. */
  clear(): void {
    for (const { shown } of this.slots.values()) shown?.texture.dispose();
    this.slots.clear();
  }
}
